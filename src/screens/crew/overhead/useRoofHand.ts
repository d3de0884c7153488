import { type PointerEvent, useRef, useState } from 'react';
import type { Pane } from '../../overhead/geometry/sheet';
import { between, distance, type Spot } from '../../overhead/geometry/spots';
import { type Lying, moved } from './roofView';

/** A finger that goes no farther than this taps, pixels. */
const TAP_PIXELS = 10;
/** Two taps within this are one double tap, milliseconds. */
const DOUBLE_MS = 320;
const DOUBLE_FACTOR = 2;

interface Hand {
  readonly lying: Lying;
  readonly pane: Pane;
  readonly move: (to: Lying) => void;
  /** A tap; says whether there was something. */
  readonly tap: (at: Spot) => boolean;
}

/** One finger pans, two pinch, a tap chooses, a double tap beside everything comes nearer, a wheel zooms. */
export function useRoofHand({ lying, pane, move, tap }: Hand) {
  const down = useRef(new Map<number, Spot>());
  const way = useRef(0);
  const last = useRef<{ readonly at: Spot; readonly time: number } | null>(null);
  // Several fingers report within one frame: each goes on from where the one before left the roof.
  const now = useRef(lying);
  now.current = lying;
  const [isMoving, setMoving] = useState(false);
  const go = (to: Lying): void => {
    now.current = to;
    move(to);
  };
  const spotOf = (event: PointerEvent<SVGSVGElement>): Spot => {
    const box = event.currentTarget.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  const onPointerDown = (event: PointerEvent<SVGSVGElement>): void => {
    if (event.button !== 0) return;
    if (down.current.size === 0) way.current = 0;
    event.currentTarget.setPointerCapture(event.pointerId);
    down.current.set(event.pointerId, spotOf(event));
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>): void => {
    const from = down.current.get(event.pointerId);
    if (!from) return;
    const to = spotOf(event);
    way.current += distance(from, to);
    down.current.set(event.pointerId, to);
    const other = [...down.current].find(([id]) => id !== event.pointerId)?.[1];
    if (way.current <= TAP_PIXELS && !other) return;
    setMoving(true);
    if (!other) go(moved(now.current, pane, from, to, 1));
    else {
      way.current += TAP_PIXELS;
      const factor = distance(other, to) / Math.max(1, distance(other, from));
      go(moved(now.current, pane, between(other, from, 0.5), between(other, to, 0.5), factor));
    }
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>): void => {
    const at = down.current.get(event.pointerId);
    down.current.delete(event.pointerId);
    if (down.current.size === 0) setMoving(false);
    if (!at || down.current.size > 0 || way.current > TAP_PIXELS) return;
    const before = last.current;
    if (tap(at)) {
      last.current = null;
      return;
    }
    const isDouble =
      before && event.timeStamp - before.time < DOUBLE_MS && distance(before.at, at) < 3 * TAP_PIXELS;
    if (isDouble) go(moved(now.current, pane, at, at, DOUBLE_FACTOR));
    last.current = isDouble ? null : { at, time: event.timeStamp };
  };
  const onPointerCancel = (event: PointerEvent<SVGSVGElement>): void => {
    down.current.delete(event.pointerId);
    if (down.current.size === 0) setMoving(false);
  };
  return { isMoving, on: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel } };
}
