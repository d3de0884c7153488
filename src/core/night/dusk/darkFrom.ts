import type { ItemReads } from '../../light/readsInTheDark';
import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { readsOver } from '../../report/light/readsOver';
import { setupReportSteps } from '../../report/setupReport';
import type { SetupReport } from '../../report/types';
import { inOneGo } from '../../units/steps';
import { type NightClock, nightClock, wallTime } from '../times/nightClock';
import { duskSpan } from './lightThroughDusk';
import { planAt } from './planAt';

/** From when something that should keep out of a setup and shows in it is lost in the dark there. */
export interface DarkFrom {
  readonly setupId: string;
  readonly itemId: string;
  /** Minute of the night; null for what reads all night. */
  readonly minutes: number | null;
  /** Whether it is lost from sunset on already. */
  readonly isFromSunset: boolean;
}

/** Between two looks back from the end of dusk, minutes: what reads for less between two is missed. */
const LOOK_MINUTES = 10;
/** How much of the work of a setup is seeing, the rest reading: an estimate. */
const SEEING_SHARE = 0.6;

/** The light report's word on what shows, at whole minutes of the night, each worked out once. */
class Reading {
  private readonly known = new Map<number, ReadonlyMap<string, ItemReads['verdict']>>();

  constructor(
    private readonly plan: Plan,
    private readonly clock: NightClock,
    private readonly setup: Setup,
    private readonly seen: SetupReport,
  ) {}

  at(minutes: number): ReadonlyMap<string, ItemReads['verdict']> {
    const known = this.known.get(minutes);
    if (known) return known;
    const reads = inOneGo(readsOver(planAt(this.plan, this.clock, minutes), this.setup, this.seen));
    const found = new Map(reads.map(({ itemId, verdict }) => [itemId, verdict]));
    this.known.set(minutes, found);
    return found;
  }

  isLost(itemId: string, minutes: number): boolean {
    return this.at(minutes).get(itemId) === 'lost in the dark';
  }
}

/** The first minute of a dusk from which on an item is lost; null where it still reads at its end. */
function firstLost(reading: Reading, itemId: string, from: number, until: number): number | null {
  if (!reading.isLost(itemId, until)) return null;
  let lost = until;
  for (let at = Math.max(from, until - LOOK_MINUTES); ; at = Math.max(from, at - LOOK_MINUTES)) {
    if (reading.isLost(itemId, at)) {
      lost = at;
      if (at === from) return from;
      continue;
    }
    let reads = at;
    while (lost - reads > 1) {
      const middle = Math.floor((lost + reads) / 2);
      if (reading.isLost(itemId, middle)) lost = middle;
      else reads = middle;
    }
    return lost;
  }
}

/**
 * From when, as dusk goes, each thing that should keep out and shows is lost in the dark, by the light report at times of
 * the dusk: looked for backwards from its end, then halved to the minute. The lamps are taken to burn as in the plan all
 * along. Empty where the sun does not set, and in a plan without a lamp that is lit, which says nothing of its light.
 * Yields the done share, 0..1.
 */
export function* darkFromSteps(plan: Plan): Generator<number, readonly DarkFrom[], void> {
  const clock = nightClock(plan);
  const dusk = duskSpan(plan, clock);
  const found: DarkFrom[] = [];
  if (!dusk) return found;
  const count = plan.setups.length;
  for (const [k, setup] of plan.setups.entries()) {
    const done = (share: number): number => (k + share) / count;
    const seeing = setupReportSteps(plan, setup);
    let step = seeing.next();
    for (; !step.done; step = seeing.next()) yield done(step.value * SEEING_SHARE);
    const items = step.value.items.filter(
      ({ verdict, wish, kind }) => verdict === 'showing' && wish === 'keep out' && kind !== 'performer',
    );
    const reading = new Reading(plan, clock, setup, { ...step.value, items });
    const asked = items.filter(({ id }) => reading.at(dusk.until).has(id));
    for (const [place, { id }] of asked.entries()) {
      const minutes = firstLost(reading, id, dusk.from, dusk.until);
      found.push({ setupId: setup.id, itemId: id, minutes, isFromSunset: minutes === dusk.from });
      yield done(SEEING_SHARE + ((place + 1) / asked.length) * (1 - SEEING_SHARE));
    }
  }
  return found;
}

/** One of them in a sentence. */
export function darkFromSentence(plan: Plan, { setupId, itemId, minutes, isFromSunset }: DarkFrom): string {
  const label = named(plan.setups.find(({ id }) => id === setupId)?.label ?? 'a setup');
  const item = named([...plan.gear, ...plan.pieces].find(({ id }) => id === itemId)?.label ?? 'Something');
  if (minutes === null) return `${item} shows in ${label} and reads however dark it gets.`;
  const from = isFromSunset ? 'sunset' : wallTime(nightClock(plan), minutes);
  return `${item} shows in ${label} and is lost in the dark from ${from} on.`;
}
