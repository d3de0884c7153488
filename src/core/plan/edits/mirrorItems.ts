import type { Plan } from '../schema/plan';
import { applyMotion, landings } from './applyMotion';
import { type Copied, copyItems } from './copies';
import { entourageOf } from './entourage';
import { type Axis, reflection } from './motion';

interface Mirroring {
  readonly ids: readonly string[];
  readonly axis: Axis;
  /** Whether the items stay and copies of them are mirrored. */
  readonly copy: boolean;
}

/** The plan with items mirrored, and what goes along with them. */
function mirrored(plan: Plan, ids: readonly string[], axis: Axis, evenLocked: boolean): Plan {
  const entourage = entourageOf(plan, ids, { evenLocked, decks: false });
  const motion = reflection(axis);
  return applyMotion(plan, entourage, motion, landings(plan, entourage, motion));
}

/**
 * Mirrors items at an upright plane through a place along a compass bearing: places, paths and their openings, holes,
 * marks, headings, arms, aims, the bend of tracks, the doors of stair houses. With `copy` the items stay and mirrored
 * copies come (see `copyItems`); else they move themselves, with all that goes along (see `moveItems`), and locked
 * ones stay. What is the same from both sides, such as a lit window or a scan, is only put elsewhere. Gives the plan,
 * and the ids of what lies mirrored in it.
 */
export function mirrorItems(plan: Plan, { ids, axis, copy }: Mirroring): Copied {
  return copy
    ? copyItems(plan, ids, (before, copied) => mirrored(before, copied, axis, true))
    : { plan: mirrored(plan, ids, axis, false), ids };
}
