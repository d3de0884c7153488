import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { Point } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { change } from '../../actions/doing';
import { ARROWS } from '../geometry/arrows';
import type { Spot } from '../geometry/spots';
import type { SheetView } from '../useSheetView';
import { type Held, pulledTo, takeHold, takes } from './held';

/** Metres for a press of an arrow. */
const STEP = { plain: 0.1, shift: 1, alt: 0.01 };

/** A mark that stands at a place of the roof by itself: a meter, a way out. */
interface Mark {
  readonly id: string;
  readonly label: string;
  readonly at: Point;
}

/** What is done with marks of one kind. */
interface Doings<Kind extends Mark> {
  /** The gesture of a dragged one is told from others by this id. */
  readonly gesture: string;
  readonly movedTo: (plan: Plan, mark: Kind, to: Spot) => Plan;
  readonly removed: (plan: Plan, mark: Kind) => Plan;
  readonly choose: (mark: Kind | null) => void;
}

/** A mark in the hand. */
interface HeldMark<Kind extends Mark> extends Held {
  readonly mark: Kind;
}

/** Handlers for marks that are chosen by a press, moved by a drag or the arrows, and taken away by Delete. */
export function useMarkHand<Kind extends Mark>(
  sheet: SheetView,
  svg: SVGSVGElement | null,
  doings: Doings<Kind>,
) {
  const { gesture: name, movedTo, removed, choose } = doings;
  const held = useRef<HeldMark<Kind> | null>(null);

  const down = (mark: Kind, event: PointerEvent<SVGGElement>): void => {
    if (!svg || !takes(event)) return;
    event.stopPropagation();
    held.current = { mark, ...takeHold(svg, event) };
    choose(mark);
  };
  const move = (event: PointerEvent<SVGGElement>): void => {
    const now = held.current;
    const spot = svg && now && pulledTo(svg, now, event, name);
    if (!spot) return;
    const [x, , z] = now.mark.at;
    const place = sheet.at([x, z]);
    const to = sheet.roofAt([place[0] + spot[0] - now.from[0], place[1] + spot[1] - now.from[1]]);
    liveStore.getState().moveGesture(movedTo(planStore.getState().plan, now.mark, to));
  };
  const end = (commits: boolean): void => {
    const now = held.current;
    held.current = null;
    const { gesture, commitGesture, dropGesture } = liveStore.getState();
    if (!now || gesture?.itemId !== name) return;
    if (commits) commitGesture(`move ${now.mark.label}`);
    else dropGesture();
  };
  const key = (mark: Kind, event: KeyboardEvent<SVGGElement>): void => {
    const way = ARROWS[event.key];
    if (way) {
      const step = event.shiftKey ? STEP.shift : event.altKey ? STEP.alt : STEP.plain;
      const [x, , z] = mark.at;
      change(`move ${mark.label}`, (before) => movedTo(before, mark, [x + way[0] * step, z + way[1] * step]));
    } else if (event.key === 'Enter' || event.key === ' ') choose(mark);
    else if (event.key === 'Delete' || event.key === 'Backspace')
      change(`take ${mark.label} away`, (before) => removed(before, mark));
    else if (event.key === 'Escape') {
      if (held.current?.moved) end(false);
      else choose(null);
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (mark: Kind) => ({
    onPointerDown: (event: PointerEvent<SVGGElement>) => down(mark, event),
    onPointerMove: move,
    onPointerUp: (event: PointerEvent<SVGGElement>) => {
      if (held.current?.pointerId !== event.pointerId) return;
      event.stopPropagation();
      end(true);
    },
    onPointerCancel: () => end(false),
    onKeyDown: (event: KeyboardEvent<SVGGElement>) => key(mark, event),
  });
}
