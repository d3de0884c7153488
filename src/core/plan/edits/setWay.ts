import type { Way } from '../schema/cast';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { changedWay, type WayTo, wayOf } from './ways';

/** The whole way to a mark: the places that it passes, in straight lines or on a curve; straight there without any. */
export const setWay = (
  plan: Plan,
  { through, line, ...to }: WayTo & { readonly through: readonly Spot[]; readonly line: Way['line'] },
): Plan => changedWay(plan, to, () => wayOf(through, line));
