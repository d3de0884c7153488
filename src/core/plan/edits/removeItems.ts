import type { Gear } from '../schema/gear';
import type { Plan } from '../schema/plan';
import { carrierOf } from './anchorOf';
import { applyMotion, landings } from './applyMotion';
import { withoutNotesOn } from './cautionsEntered';
import { dropPeople } from './dropPeople';
import { dropReferences } from './dropReferences';
import { entourageOf } from './entourage';
import { changed, translation } from './motion';
import { withPlug } from './plugCable';

/** A cable without the plugs whose gear is gone; its ends stay where they lie. */
function unplugged(gear: Gear, isGone: (id: string) => boolean): Gear {
  if (gear.kind !== 'cable' || !gear.plugs) return gear;
  const { from, to } = gear.plugs;
  const first = from !== undefined && isGone(from) ? withPlug(gear, 'from', null) : gear;
  return to !== undefined && isGone(to) ? withPlug(first, 'to', null) : first;
}

/** What stood on set pieces that go comes down onto what is below. */
function comeDown(plan: Plan, gone: ReadonlySet<string>): Plan {
  const levels = plan.pieces.filter(({ id }) => gone.has(id)).map(({ id }) => id);
  if (levels.length === 0) return plan;
  let landed = plan;
  for (const level of levels) {
    const { carriers, items } = entourageOf(landed, [level], { evenLocked: true, decks: true });
    const directly = [...carriers].flatMap(([id, by]) => (by === level && !gone.has(id) ? [id] : []));
    for (const id of directly) landed = fallen(landed, id, { items, gone });
  }
  return landed;
}

type Items = ReturnType<typeof entourageOf>['items'];

/** One thing, or one mark, and all that goes along with it, on what is below once others are gone. */
function fallen(
  plan: Plan,
  id: string,
  { items, gone }: { readonly items: Items; readonly gone: ReadonlySet<string> },
): Plan {
  const entourage = items.has(id)
    ? entourageOf(plan, [id], { evenLocked: true, decks: false })
    : { items, carriers: new Map([[id, null]]) };
  const still = translation([0, 0]);
  return applyMotion(plan, entourage, still, landings(plan, entourage, still, gone));
}

/**
 * Takes items out of the plan, locked or not, and with a stand all that it carries. Cables plugged into them are
 * pulled out, setups let go of removed performers and tracks (see `dropReferences`), passes and lines of removed
 * performers go and nobody turns to them (see `dropPeople`), and what stood on a removed set
 * piece comes down onto what is below. Notes on cautions about them go too. What the plan's kit holds stays.
 */
export function removeItems(plan: Plan, { ids }: { readonly ids: readonly string[] }): Plan {
  const chosen = new Set(ids);
  const isGone = (id: string): boolean => chosen.has(id) || chosen.has(carriers.get(id) ?? '');
  const carriers = new Map(plan.gear.flatMap(({ id }) => [[id, carrierOf(plan, id)] as const]));
  const performers = new Map(plan.cast.filter(({ id }) => chosen.has(id)).map((entry) => [entry.id, entry]));
  const pieces = plan.pieces.filter(({ id }) => !isGone(id));
  const gear = plan.gear.filter(({ id }) => !isGone(id));
  if (pieces.length === plan.pieces.length && gear.length === plan.gear.length && performers.size === 0)
    return plan;
  const landed = comeDown(plan, chosen);
  const left = <Entry extends { readonly id: string }>(list: Entry[]): Entry[] => {
    const kept = list.filter(({ id }) => !isGone(id));
    return kept.length === list.length ? list : kept;
  };
  const taken = {
    ...landed,
    pieces: left(landed.pieces),
    cast: left(landed.cast),
    gear: changed(left(landed.gear), (entry) => unplugged(entry, isGone)),
    setups: changed(landed.setups, (setup) => dropReferences(setup, { performers, tracks: chosen })),
  };
  const noted = withoutNotesOn(taken, isGone);
  return performers.size === 0 ? noted : dropPeople(noted, (id) => performers.has(id));
}
