import { type Copied, copyItems, turnedTo } from './edits/copies';
import { withoutTurning } from './edits/dropPeople';
import { freeId } from './edits/freeId';
import { moveItems } from './edits/moveItems';
import { unaccepted } from './edits/shows';
import { withCarried } from './edits/withCarried';
import { itemsOf } from './items';
import type { Spot } from './schema/numbers';
import type { Plan } from './schema/plan';

const withMissing = <Entry extends { readonly id: string }>(
  list: Entry[],
  more: readonly Entry[],
): Entry[] => {
  const missing = more.filter(({ id }) => !list.some((each) => each.id === id));
  return missing.length === 0 ? list : [...list, ...missing];
};

/**
 * A plan that holds nothing but some items of another, with the classes and the beats that they need: what is copied
 * is a plan file itself, so that it is checked like any other when it comes back. Whom the copied turn to comes along
 * where they are copied too; passes, lines and cheated marks are the plan's and stay behind. Null where no such item is.
 */
export function clippingOf(plan: Plan, ids: readonly string[]): Plan | null {
  const wanted = withCarried(plan, ids);
  const pieces = plan.pieces.filter(({ id }) => wanted.has(id)).map(unaccepted);
  const cast = plan.cast
    .filter(({ id }) => wanted.has(id))
    .map(unaccepted)
    .map((performer) => withoutTurning(performer, (id) => !wanted.has(id)));
  const taken = plan.gear.filter(({ id }) => wanted.has(id)).map(unaccepted);
  if (pieces.length + cast.length + taken.length === 0) return null;
  const there = new Set(taken.map(({ id }) => id));
  const gear = taken.map((entry) => {
    if (entry.kind !== 'cable' || !entry.plugs) return entry;
    const { plugs, ...cable } = entry;
    const ends = Object.entries(plugs).filter(([, id]) => id !== undefined && there.has(id));
    return ends.length === 0 ? cable : { ...cable, plugs: Object.fromEntries(ends) };
  });
  const beats = new Set(cast.flatMap(({ marks }) => marks.map(({ beat }) => beat)));
  const heads = new Set(gear.flatMap((entry) => ('head' in entry ? [entry.head] : [])));
  const stands = new Set(gear.flatMap((entry) => ('stand' in entry ? [entry.stand] : [])));
  return {
    standclear: plan.standclear,
    title: plan.title,
    notes: '',
    place: plan.place,
    ground: plan.ground,
    safety: plan.safety,
    kit: {
      bodies: [],
      lenses: [],
      heads: plan.kit.heads.filter(({ id }) => heads.has(id)),
      stands: plan.kit.stands.filter(({ id }) => stands.has(id)),
    },
    pieces,
    beats: plan.beats.filter(({ id }) => beats.has(id)),
    cast,
    gear,
    setups: [],
  };
}

/**
 * Puts the items of a clipping into a plan, moved by [x, z], metres, with ids, names and groups of their own (see
 * `copyItems`), and the classes and beats that the plan lacks. Gives the plan and the ids of what came in.
 */
export function pasteClipping(plan: Plan, clipping: Plan, by: Spot): Copied {
  const taken = [...itemsOf(plan), ...itemsOf(clipping)].map(({ record }) => ({ id: record.id }));
  const guests = new Map<string, string>();
  for (const { record } of itemsOf(clipping)) {
    const id = freeId(taken, 'guest');
    taken.push({ id });
    guests.set(record.id, id);
  }
  const guest = <Entry extends { readonly id: string }>(entry: Entry): Entry => ({
    ...entry,
    id: guests.get(entry.id) ?? entry.id,
  });
  const cast = clipping.cast.map((performer) => turnedTo(guest(performer), (id) => guests.get(id) ?? id));
  const gear = clipping.gear.map((entry) => {
    const own = guest(entry);
    if (own.kind === 'cable' && own.plugs) {
      const ends = Object.entries(own.plugs).map(([end, id]) => [end, id && guests.get(id)]);
      return { ...own, plugs: Object.fromEntries(ends) };
    }
    if ('place' in own && 'on' in own.place)
      return { ...own, place: { on: guests.get(own.place.on) ?? own.place.on } };
    return own;
  });
  const host: Plan = {
    ...plan,
    kit: {
      ...plan.kit,
      heads: withMissing(plan.kit.heads, clipping.kit.heads),
      stands: withMissing(plan.kit.stands, clipping.kit.stands),
    },
    beats: clipping.cast.length === 0 ? plan.beats : withMissing(plan.beats, clipping.beats),
    pieces: [...plan.pieces, ...clipping.pieces.map(guest)],
    cast: [...plan.cast, ...cast],
    gear: [...plan.gear, ...gear],
  };
  const copied = copyItems(host, [...guests.values()], (before, ids) =>
    moveItems(before, { ids, by, evenLocked: true }),
  );
  if (copied.ids.length === 0) return { plan, ids: [] };
  const isGuest = new Set(guests.values());
  const stays = ({ id }: { readonly id: string }): boolean => !isGuest.has(id);
  return {
    plan: {
      ...copied.plan,
      pieces: copied.plan.pieces.filter(stays),
      cast: copied.plan.cast.filter(stays),
      gear: copied.plan.gear.filter(stays),
    },
    ids: copied.ids,
  };
}
