import { polyline } from '../geometry/paths';
import type { Bounds, Spot } from '../geometry/spots';
import { textWidth } from '../measureText';
import type { Handle } from './types';

/** The drawing of each kind around its own middle, pixels. */
const DRAWN: Readonly<Record<Handle['kind'], string>> = {
  turn: 'M-6 0a6 6 0 1 0 12 0a6 6 0 1 0 -12 0Z',
  raise: 'M0 -13V13M-4 -9L0 -13L4 -9M-4 9L0 13L4 9',
  corner: 'M-4 -4H4V4H-4Z',
  insert: 'M-3 0a3 3 0 1 0 6 0a3 3 0 1 0 -6 0Z',
  slide: 'M-7 -4L-11 0L-7 4M7 -4L11 0L7 4M-4 -4H4V4H-4Z',
  width: 'M-3 -6V6M3 -6V6',
  aim: 'M-6 0a6 6 0 1 0 12 0a6 6 0 1 0 -12 0ZM-10 0H10M0 -10V10',
  arm: 'M-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0Z',
  length: 'M-4 -6V6M4 -6V6M-4 0H4',
  row: 'M-6 0a6 6 0 1 0 12 0a6 6 0 1 0 -12 0Z',
  mark: '',
  bend: 'M-8 4C-8 -6 8 -6 8 4',
  press: '',
};

/** A handle as it is drawn: the line that leads to it, its own sign with an ink point, the area that takes the press. */
export function Grip({
  kind,
  at,
  lead,
  reach,
}: {
  readonly kind: Handle['kind'];
  readonly at: Spot;
  readonly lead: Spot | null;
  readonly reach: number;
}) {
  return (
    <>
      {lead && <path className="handle-lead" d={polyline([lead, at])} />}
      <g transform={`translate(${at[0]} ${at[1]})`}>
        <circle className="handle-area" r={reach} />
        <path className={`handle-sign ${kind}`} d={DRAWN[kind]} />
        {(kind === 'turn' || kind === 'arm' || kind === 'row') && (
          <circle className="handle-point" r={1.75} />
        )}
      </g>
    </>
  );
}

/** Where a handle's figure stands beside it, pixels. */
export const figureAt = ([x, y]: Spot): Spot => [x + 14, y + 4];

/** The value that a handle stands for; a press on it is answered with a field. */
export function Figure({
  words,
  at,
  touch,
  button,
}: {
  readonly words: string;
  readonly at: Spot;
  readonly touch: boolean;
  /** Whether the words are what is pressed. */
  readonly button: boolean;
}) {
  const [x, y] = figureAt(at);
  const width = textWidth(words, 'strong', touch) + 8;
  const height = touch ? 48 : 32;
  return (
    <g className="handle-figure" data-figure="true">
      <rect
        className="handle-area"
        x={x - 4}
        y={y - height / 2 - 4}
        width={Math.max(width, height)}
        height={height}
      />
      {button && <rect className="button-box" x={x - 5} y={y - 14} width={width + 2} height={20} />}
      <text x={x} y={y}>
        {words}
      </text>
    </g>
  );
}

/** What the words of a handle that is pressed cover, pixels. */
export function buttonBounds(words: string, handle: Spot, touch: boolean): Bounds {
  const [x, y] = figureAt(handle);
  return [x - 6, y - 15, x + textWidth(words, 'strong', touch) + 6, y + 7];
}
