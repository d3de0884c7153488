import { headClassOf } from '../../core/form/gear/references';
import { ROUND_FORMS } from '../../core/light/glowFace';
import type { Plan } from '../../core/plan/schema/plan';

/** What of the lamps' housings shows in their light, by their items. */
export interface Housings {
  /** Heads that wear barn doors. */
  readonly withDoors: ReadonlySet<string>;
  /** Lamps with a round face. */
  readonly round: ReadonlySet<string>;
}

const known = new WeakMap<Plan['gear'], Housings>();

/** The housings of a plan's lamps; the same for the same gear. */
export function housingsOf(plan: Plan): Housings {
  const found = known.get(plan.gear);
  if (found) return found;
  const withDoors = new Set<string>();
  const round = new Set<string>();
  for (const gear of plan.gear) {
    if (gear.kind !== 'head' && gear.kind !== 'practical' && gear.kind !== 'bulb string') continue;
    const modifier = gear.kind === 'head' ? gear.modifier : undefined;
    if (modifier === 'barn doors') withDoors.add(gear.id);
    if (modifier !== 'softbox' && ROUND_FORMS.includes(headClassOf(gear, plan).form)) round.add(gear.id);
  }
  const housings = { withDoors, round };
  known.set(plan.gear, housings);
  return housings;
}
