import { differencesOf } from '../../core/plan/merge/differences';
import { parsePlan } from '../../core/plan/parse';
import type { Plan } from '../../core/plan/schema/plan';
import { planStore } from '../planStore';
import { findVersions } from '../plans/versionShelf';

/** A state of the plan that a copy of it may have begun with. */
export interface Beginning {
  readonly id: string;
  /** When it was kept, milliseconds since 1970; null for the state with which this page began. */
  readonly at: number | null;
  /** Before what it was kept; empty for the page's own. */
  readonly reason: string;
  readonly plan: Plan;
}

/** The versions of a plan that are kept, and the open plan as this page began with it. */
export async function beginningsOf(planId: string): Promise<readonly Beginning[]> {
  const { plan, beganWith } = planStore.getState();
  const atFirst: readonly Beginning[] =
    plan === beganWith ? [] : [{ id: 'page', at: null, reason: '', plan: beganWith }];
  // A device that keeps nothing has no versions either.
  const versions = await findVersions(planId).catch(() => []);
  return [
    ...atFirst,
    ...versions.flatMap(({ at, reason, document }): readonly Beginning[] => {
      const read = parsePlan(document);
      return read.ok ? [{ id: String(at), at, reason, plan: read.value }] : [];
    }),
  ];
}

/**
 * What both most likely began with: the state that differs least from theirs, where it differs no more than the open plan
 * does; null for none. Where the two differ in as many things, both changed the same ones, which is asked about at the
 * worst. Whoever looks may say otherwise.
 */
export function likelyBeginning(
  beginnings: readonly Beginning[],
  mine: Plan,
  theirs: Plan,
): Beginning | null {
  let likely: Beginning | null = null;
  let least = differencesOf(mine, theirs).length;
  for (const beginning of beginnings) {
    const { length } = differencesOf(beginning.plan, theirs);
    if (likely ? length >= least : length > least) continue;
    likely = beginning;
    least = length;
  }
  return likely;
}
