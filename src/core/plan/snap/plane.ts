import { hypot } from '../../units/steadyMath';
import type { Spot } from '../schema/numbers';
import type { At } from './types';

/** Closer than this two places are one, metres. */
export const SAME_METRES = 1e-7;

export const apart = (a: At, b: At): number => hypot(a[0] - b[0], a[1] - b[1]);
/** How far `to` lies from `from` along a unit vector. */
export const alongOf = (from: At, way: At, to: At): number =>
  (to[0] - from[0]) * way[0] + (to[1] - from[1]) * way[1];
/** How far `to` lies to the side of a line, with its sign. */
export const asideOf = (from: At, way: At, to: At): number =>
  (to[0] - from[0]) * way[1] - (to[1] - from[1]) * way[0];
export const onLine = (from: At, way: At, metres: number): Spot => [
  from[0] + way[0] * metres,
  from[1] + way[1] * metres,
];
export const middleOf = (a: At, b: At): Spot => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** The unit vector from one place to another; null where they are one. */
export function wayOf(from: At, to: At): At | null {
  const metres = apart(from, to);
  return metres < SAME_METRES ? null : [(to[0] - from[0]) / metres, (to[1] - from[1]) / metres];
}

/** Where two lines meet, as the distance along the first; null where they run nearly the same way. */
export function meeting(from: At, way: At, otherFrom: At, otherWay: At): number | null {
  const turn = way[0] * otherWay[1] - way[1] * otherWay[0];
  // Under ten degrees a hand cannot mean the crossing: it wanders by six times what the hand does.
  if (Math.abs(turn) < 0.17) return null;
  return ((otherFrom[0] - from[0]) * otherWay[1] - (otherFrom[1] - from[1]) * otherWay[0]) / turn;
}
