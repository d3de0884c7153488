import type { Plan } from '../plan/schema/plan';
import { edgeCautions } from './edges/edges';
import { exhaustCautions } from './exhaust';
import { heatCautions } from './heat';
import { ladderCautions } from './ladders';
import { loadCautions } from './load';
import { CAUTION_KINDS, CAUTION_STANDINGS, type Caution } from './types';
import { wayOutCautions } from './ways/wayOut';
import { wetCautions } from './wet';
import { windCautions } from './wind/wind';

const kept = new WeakMap<Plan, readonly Caution[]>();

/**
 * All cautions of a plan, what breaks first, then by what they are about, each with the note that the plan has on it.
 * None is left out for its note. The same list for the same plan.
 */
export function cautionsOf(plan: Plan): readonly Caution[] {
  const known = kept.get(plan);
  if (known) return known;
  const notes = new Map((plan.cautions?.notes ?? []).map(({ key, note }) => [key, note]));
  const found = [
    ...edgeCautions(plan),
    ...windCautions(plan),
    ...wetCautions(plan),
    ...exhaustCautions(plan),
    ...wayOutCautions(plan),
    ...loadCautions(plan),
    ...ladderCautions(plan),
    ...heatCautions(plan),
  ].map((each): Caution => {
    const note = notes.get(each.id);
    return note === undefined ? each : { ...each, note };
  });
  const rank = ({ standing, kind }: Caution): number =>
    CAUTION_STANDINGS.indexOf(standing) * CAUTION_KINDS.length + CAUTION_KINDS.indexOf(kind);
  const sorted = found.toSorted((a, b) => rank(a) - rank(b));
  kept.set(plan, sorted);
  return sorted;
}
