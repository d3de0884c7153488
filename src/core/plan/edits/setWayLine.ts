import type { Way } from '../schema/cast';
import type { Plan } from '../schema/plan';
import { changedWay, type WayTo, wayOf } from './ways';

/** Joins the places of the way to a mark by straight lines, or by one smooth curve; without places it is straight. */
export const setWayLine = (plan: Plan, { line, ...to }: WayTo & { readonly line: Way['line'] }): Plan =>
  changedWay(plan, to, (through) => wayOf(through, line));
