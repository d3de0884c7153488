import type { Stand } from '../../form/gear/references';
import { setBags } from '../../plan/edits/setBags';
import type { Plan } from '../../plan/schema/plan';
import { pressureOf } from './drag';
import { gustOf, SAFETY } from './gust';
import { type OnStands, onStandsOf, standingOf } from './standingOf';
import { ballastNeeded } from './tipping';

/** A bag of ballast where the stand has none, kg. Source: common practice, no source */
export const BAG_KILOGRAMS = 10;
/** Bags that are filled so, kg: the next is tried where as many as lie on a stand are too light. Source: common practice, no source */
const BAGS_KILOGRAMS = [BAG_KILOGRAMS, 15, 20, 25] as const;
/** As many bags as a plan lets lie on a stand. */
const MOST_BAGS = 20;
/** More ballast than this on one stand is not offered: it is lowered or struck. Source: common practice, no source */
export const MOST_BALLAST_KILOGRAMS = 100;

/** Bags over the legs of a stand that hold it, all of them. */
export interface HoldingBags {
  readonly count: number;
  /** Of each, kg. */
  readonly kilograms: number;
  /** How many of them are new: fewer than all where those that lie there stay. */
  readonly added: number;
}

/** What a pressure of wind lacks of ballast with such bags on a stand, kg over the middle of its feet. */
function lacks(plan: Plan, stand: Stand, on: OnStands, pressure: number, bags: Stand['bags']): number {
  // Of all the plan only the stand is changed: the rest need not be looked through for each number of bags.
  const [changed] = setBags({ ...plan, gear: [stand] }, { id: stand.id, bags: bags ?? null }).gear;
  return changed.kind === 'stand' ? ballastNeeded(standingOf(plan, changed, on), pressure, SAFETY) : 0;
}

/**
 * The fewest bags over the legs of a stand with which it stands in the gust that is forecast, with the safety; those that
 * lie there stay where more of them do. Null without a forecast, where it holds as it is, and where it would take more
 * than is offered. Bags lie on one leg after the other, so they may be one or two more than their weight alone asks for.
 */
export function bagsThatHold(plan: Plan, stand: Stand, on = onStandsOf(plan)): HoldingBags | null {
  const gust = gustOf(plan);
  if (gust === null) return null;
  const pressure = pressureOf(gust);
  const lacking = lacks(plan, stand, on, pressure, stand.bags);
  if (lacking <= 0 || lacking > MOST_BALLAST_KILOGRAMS) return null;
  const own = stand.bags ?? { count: 0, kilograms: BAG_KILOGRAMS };
  const heavier = BAGS_KILOGRAMS.filter((kilograms) => kilograms > own.kilograms);
  for (const kilograms of [own.kilograms, ...heavier]) {
    const least = kilograms === own.kilograms ? own.count + 1 : 1;
    for (let count = least; count <= MOST_BAGS; count += 1)
      if (lacks(plan, stand, on, pressure, { count, kilograms }) <= 1e-9)
        return { count, kilograms, added: count - least + 1 };
  }
  return null;
}
