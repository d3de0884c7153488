import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { changedWay, type WayTo, wayOf } from './ways';

/** Moves one place of the way to a mark to [x, z], metres. */
export const moveWayPoint = (
  plan: Plan,
  { index, to: spot, ...to }: WayTo & { readonly index: number; readonly to: Spot },
): Plan =>
  changedWay(plan, to, (through, line) => wayOf(through[index] ? through.with(index, spot) : through, line));
