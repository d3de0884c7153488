import { addItem, type NeededKit } from '../../plan/edits/addItem';
import { freeId } from '../../plan/edits/freeId';
import { freeLabel } from '../../plan/edits/freeLabel';
import { MOST } from '../../plan/edits/limits';
import { plugCable, plugSpot } from '../../plan/edits/plugCable';
import { sameSpot, tidyHeading, tidySpot } from '../../plan/edits/tidy';
import { withBeats } from '../../plan/edits/withBeats';
import { type Item, itemOf, itemsOf } from '../../plan/items';
import { bearingOf, metresBetween } from '../../plan/runs';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { TAKES_A_PLUG } from '../plugged';
import { CAST_ENTRIES } from './cast';
import type { Making, MakingEntry, NewItem, PaletteEntry, Where } from './entry';
import { GRIP_ENTRIES } from './grip';
import { LAMP_ENTRIES } from './lamps';
import { PIECE_ENTRIES } from './pieces';
import { CAMERA_ENTRIES, POWER_ENTRIES } from './power';

/** A cable that starts or ends this near to gear is plugged into it, metres. Source: common practice, no source */
const PLUG_REACH_METRES = 0.6;

const ENTRIES: readonly MakingEntry[] = [
  ...PIECE_ENTRIES,
  ...CAST_ENTRIES,
  ...GRIP_ENTRIES,
  ...LAMP_ENTRIES,
  ...POWER_ENTRIES,
  ...CAMERA_ENTRIES,
];

type AddedItem = Item & { readonly kit?: NeededKit };

/** Everything that can be put on the roof, in the order in which it is laid out. */
export const PALETTE: readonly PaletteEntry[] = ENTRIES;

/** The entry of that id, or null. */
export const paletteEntryOf = (id: string): PaletteEntry | null =>
  ENTRIES.find((entry) => entry.id === id) ?? null;

/** The plan with something put into it: the item that one goes on with, and all that came with it. */
export interface Made {
  readonly plan: Plan;
  readonly id: string;
  readonly ids: readonly string[];
}

/**
 * Puts something from the palette on the roof: with common sizes, at the height of what one stands on there, its name
 * numbered, the classes that it needs copied into the plan's kit. Lamps and cloths go onto an empty stand at the place
 * or bring their own; the ends of cables near gear are plugged in; a plan without beats gets a first and a last with
 * its first performer. Null where the entry is unknown, too little was drawn, or the plan is full.
 */
export function makeItem(plan: Plan, entryId: string, where: Where): Made | null {
  const entry = ENTRIES.find(({ id }) => id === entryId);
  const making = makingOf(plan, where, entry?.how === 'outline');
  if (!entry || !making) return null;
  if ('cut' in entry) {
    const cut = entry.cut(making);
    return cut && { ...cut, ids: [cut.id] };
  }
  const begun = entry.section === 'cast' ? { ...making, plan: withBeats(plan) } : making;
  const items = entry.make(begun);
  if (!items) return null;
  let made = begun.plan;
  const ids: string[] = [];
  for (const item of items) {
    const id = freeId(
      itemsOf(made).map(({ record }) => record),
      (item.section === 'cast' ? 'performer' : item.record.kind).replaceAll(' ', '-'),
    );
    const after = addItem(made, named(made, item, id, ids.at(-1) ?? null));
    if (after === made) return null;
    made = after;
    ids.push(id);
  }
  const id = ids.at(-1);
  return id === undefined ? null : { plan: entry.kind === 'cable' ? plugged(made, id) : made, id, ids };
}

/** The drawn places tidied, one for each that lies apart from the one before it; null where there is none. */
function makingOf(plan: Plan, where: Where, isOutline: boolean): Making | null {
  const tidied = where.spots.map(tidySpot);
  const apart = tidied.filter((spot, index) => index === 0 || !sameSpot(spot, tidied[index - 1]));
  const [first, second] = apart;
  const last = apart.at(-1);
  if (!first || !last || apart.length > MOST.corners) return null;
  const isBack = apart.length > 2 && sameSpot(first, last);
  const heading = where.headingDegrees ?? (second ? bearingOf(first, second) : null);
  return {
    plan,
    spots: isBack ? apart.slice(0, -1) : apart,
    closed: isOutline || isBack || where.closed === true,
    headingDegrees: tidyHeading(heading ?? 0),
    headed: heading !== null,
  };
}

/** The new item with its id and its name, on the stand that carries it. */
function named(plan: Plan, item: NewItem, id: string, before: string | null): AddedItem {
  const common = { id, label: freeLabel(plan, item.stem) };
  if (item.section === 'piece') return { section: 'piece', record: { ...common, ...item.record } };
  if (item.section === 'cast') return { section: 'cast', record: { ...common, ...item.record } };
  const { record, onto, heads = [], stands = [] } = item;
  const standId = onto === 'item before' ? before : (onto?.standId ?? null);
  const kit = { heads, stands };
  if (standId === null || !('place' in record))
    return { section: 'gear', record: { ...common, ...record }, kit };
  return { section: 'gear', record: { ...common, ...record, place: { on: standId } }, kit };
}

/** All gear that a cable plugs into of itself, and where on the deck. */
export const plugPlaces = (
  plan: Plan,
): readonly { readonly id: string; readonly label: string; readonly at: Spot }[] =>
  plan.gear.flatMap((gear) => {
    const at = TAKES_A_PLUG.has(gear.kind) && !gear.hidden ? plugSpot(plan, gear.id) : null;
    return at ? [{ id: gear.id, label: gear.label, at }] : [];
  });

/** The gear nearest to a place that a cable may be plugged into, within reach; null where there is none. */
export function socketNear(plan: Plan, spot: Spot, reachMetres = PLUG_REACH_METRES): string | null {
  let found: string | null = null;
  let nearest = reachMetres;
  for (const gear of plan.gear) {
    const at = TAKES_A_PLUG.has(gear.kind) ? plugSpot(plan, gear.id) : null;
    if (!at || metresBetween(at, spot) > nearest) continue;
    nearest = metresBetween(at, spot);
    found = gear.id;
  }
  return found;
}

/** The plan with both ends of a cable plugged into what stands there. */
function plugged(plan: Plan, id: string): Plan {
  const record = itemOf(plan, id)?.record;
  if (!record || !('path' in record)) return plan;
  const from = socketNear(plan, record.path[0]);
  const to = socketNear(plan, record.path[record.path.length - 1]);
  const begun = from === null ? plan : plugCable(plan, { id, end: 'from', to: from });
  return to === null || to === from ? begun : plugCable(begun, { id, end: 'to', to });
}
