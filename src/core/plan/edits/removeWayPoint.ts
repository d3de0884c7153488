import type { Plan } from '../schema/plan';
import { changedWay, type WayTo, wayOf } from './ways';

/** Takes one place out of the way to a mark; it is straight again after the last. */
export const removeWayPoint = (plan: Plan, { index, ...to }: WayTo & { readonly index: number }): Plan =>
  changedWay(plan, to, (through, line) =>
    wayOf(
      through.filter((_, k) => k !== index),
      line,
    ),
  );
