import { type PointerEvent, useRef } from 'react';
import { setFrameLine } from '../../core/plan/edits/setFrameLine';
import type { FrameLine } from '../../core/plan/schema/drawing';
import { livePlan, liveStore } from '../../desk/liveStore';
import { toastStore } from '../../desk/toastStore';
import { type Box, rectIn } from './pictureBox';

/** How near to a side a hand has hold of it, pixels: half of what a finger needs. */
const REACH = 16;
const LEAST = 0.01;

interface Hold {
  readonly line: FrameLine;
  readonly at: readonly [number, number];
  /** Which sides go along: left, top, right, bottom. */
  readonly sides: readonly [boolean, boolean, boolean, boolean];
}

/** The sides that lie under the hand; away from all of them, the whole line. */
export function sidesUnder({ left, top, width, height }: Box, x: number, y: number): Hold['sides'] {
  const near = (side: number, value: number): boolean => Math.abs(value - side) <= REACH;
  const [atLeft, atRight] = [near(left, x), near(left + width, x)];
  const [atTop, atBottom] = [near(top, y), near(top + height, y)];
  const any = atLeft || atRight || atTop || atBottom;
  return any ? [atLeft, atTop, atRight && !atLeft, atBottom && !atTop] : [true, true, true, true];
}

/** A line's rectangle after its held sides went along, kept in the frame and the right way round. */
export function dragged({ line, sides }: Hold, [dx, dy]: readonly [number, number]): FrameLine['rect'] {
  const [left, top, right, bottom] = line.rect;
  if (sides.every(Boolean)) {
    const x = Math.min(1 - right, Math.max(-left, dx));
    const y = Math.min(1 - bottom, Math.max(-top, dy));
    return [left + x, top + y, right + x, bottom + y];
  }
  return [
    sides[0] ? Math.min(right - LEAST, Math.max(0, left + dx)) : left,
    sides[1] ? Math.min(bottom - LEAST, Math.max(0, top + dy)) : top,
    sides[2] ? Math.max(left + LEAST, Math.min(1, right + dx)) : right,
    sides[3] ? Math.max(top + LEAST, Math.min(1, bottom + dy)) : bottom,
  ];
}

/** Frame lines of somebody's own; a hand takes hold of a side or a corner. By keys they are typed in the setup's panel. */
export function OwnLines({ lines, box }: { readonly lines: readonly FrameLine[]; readonly box: Box }) {
  const hold = useRef<Hold | null>(null);
  const down = (event: PointerEvent<SVGElement>, line: FrameLine): void => {
    const frame = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
    if (!frame || event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const at = [event.clientX - frame.left, event.clientY - frame.top] as const;
    hold.current = {
      line,
      at: [event.clientX, event.clientY],
      sides: sidesUnder(rectIn(box, line.rect), ...at),
    };
    liveStore.getState().beginGesture(line.id);
  };
  const move = (event: PointerEvent<SVGElement>): void => {
    const held = hold.current;
    if (!held) return;
    const by = [(event.clientX - held.at[0]) / box.width, (event.clientY - held.at[1]) / box.height] as const;
    const line = { ...held.line, rect: dragged(held, by) };
    liveStore.getState().moveGesture(setFrameLine(livePlan(), { line }));
  };
  const up = (): void => {
    if (!hold.current) return;
    hold.current = null;
    const [fault] = liveStore.getState().commitGesture('move the frame line');
    if (fault) toastStore.getState().say(fault.sentence, { tone: 'warn' });
  };
  const cancel = (): void => {
    hold.current = null;
    liveStore.getState().dropGesture();
  };
  return (
    <g className="frame-lines own-lines">
      {lines.map((line) => {
        const { left, top, width, height } = rectIn(box, line.rect);
        const d = `M${left} ${top}h${width}v${height}h${-width}Z`;
        return (
          <g key={line.id} className="own-line" data-line={line.id}>
            <path className="halo" d={d} />
            <path className="drawn" d={d} />
            <text x={left + width - 4} y={top + 12} textAnchor="end">
              {line.label}
            </text>
            <path
              className="hold"
              d={d}
              onPointerDown={(event) => down(event, line)}
              onPointerMove={move}
              onPointerUp={up}
              onPointerCancel={cancel}
            />
          </g>
        );
      })}
    </g>
  );
}
