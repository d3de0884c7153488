import { type Item, itemsOf } from '../items';
import type { Mark, Performer } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { Plan } from '../schema/plan';
import { freeId } from './freeId';
import { freeLabel, stemOf } from './freeLabel';
import { MOST } from './limits';
import { changed } from './motion';
import { type Cable, withPlug } from './plugCable';
import { freed } from './setRides';
import { withCarried } from './withCarried';

/** A plan with copies in it, and the ids of the copies; the same plan and none where they did not fit. */
export interface Copied {
  readonly plan: Plan;
  readonly ids: readonly string[];
}

/** The word of a new group for each old one. */
function newGroups(plan: Plan, items: readonly Item[]): ReadonlyMap<string, string> {
  const taken = new Set(
    itemsOf(plan).flatMap(({ record }) => (record.group === undefined ? [] : [record.group])),
  );
  const groups = new Map<string, string>();
  for (const { record } of items) {
    if (record.group === undefined || groups.has(record.group)) continue;
    const group = freeId(
      [...taken].map((id) => ({ id })),
      'group',
    );
    taken.add(group);
    groups.set(record.group, group);
  }
  return groups;
}

/**
 * Copies of items, moved by a change that would move the items themselves, each with an id, a numbered name and a group of its own, not locked, after the others
 * of its section. Carried things are copied with their stand and a stand with what it carries; a copied cable is
 * plugged into the copies of its gear, and into nothing else; who is copied turns to the copy of whom they turned to. A
 * copy has no passes, lines and cheated marks yet: those are between people, or a setup's. Nothing is copied where a section would be too full.
 */
export function copyItems(
  plan: Plan,
  wanted: readonly string[],
  move: (plan: Plan, ids: readonly string[]) => Plan,
): Copied {
  const alongIds = withCarried(plan, wanted);
  const there = itemsOf(plan).filter(({ record }) => alongIds.has(record.id));
  const thereIds = there.map(({ record }) => record.id);
  const copied = new Set(thereIds);
  const moved = move({ ...plan, gear: plan.gear.map((gear) => pulledOut(gear, copied)) }, thereIds);
  const items = itemsOf(moved).filter(({ record }) => copied.has(record.id));
  const count = (section: Item['section']): number => items.filter((item) => item.section === section).length;
  if (
    items.length === 0 ||
    plan.pieces.length + count('piece') > MOST.pieces ||
    plan.cast.length + count('cast') > MOST.cast ||
    plan.gear.length + count('gear') > MOST.gear
  )
    return { plan, ids: [] };
  const taken = itemsOf(plan).map(({ record }) => ({ id: record.id }));
  const ids = new Map<string, string>();
  const labels = new Map<string, string>();
  for (const item of items) {
    const kind = item.section === 'cast' ? 'performer' : item.record.kind;
    const id = freeId(taken, kind.replaceAll(' ', '-'));
    taken.push({ id });
    ids.set(item.record.id, id);
    labels.set(item.record.id, freeLabel(plan, stemOf(item.record.label), labels.values()));
  }
  const groups = newGroups(plan, items);
  const copy = <Entry extends Item['record']>(record: Entry): Entry => {
    const { locked: _lock, shows: _accepted, ...rest } = record;
    const group = record.group === undefined ? undefined : groups.get(record.group);
    return {
      ...rest,
      id: ids.get(record.id) ?? record.id,
      label: labels.get(record.id) ?? record.label,
      ...(group !== undefined && { group }),
    } as Entry;
  };
  const copyGear = (gear: Gear): Gear => {
    const copied = copy(gear);
    if (copied.kind === 'cable') return replugged(copied, ids);
    // A camera rides on one dolly.
    if (copied.kind === 'dolly') return freed(copied);
    if ('place' in copied && 'on' in copied.place)
      return { ...copied, place: { on: ids.get(copied.place.on) ?? copied.place.on } };
    return copied;
  };
  const copyCast = (performer: Performer): Performer => turnedTo(copy(performer), (id) => ids.get(id) ?? id);
  return {
    plan: {
      ...plan,
      pieces: [
        ...plan.pieces,
        ...items.flatMap((item) => (item.section === 'piece' ? [copy(item.record)] : [])),
      ],
      cast: [
        ...plan.cast,
        ...items.flatMap((item) => (item.section === 'cast' ? [copyCast(item.record)] : [])),
      ],
      gear: [
        ...plan.gear,
        ...items.flatMap((item) => (item.section === 'gear' ? [copyGear(item.record)] : [])),
      ],
    },
    ids: [...ids.values()],
  };
}

const FIELDS = ['faces', 'looks', 'facesOnTheWay', 'looksOnTheWay'] as const;

/** A performer who turns to others than before, by what their ids become. */
export function turnedTo(performer: Performer, nowOf: (id: string) => string): Performer {
  const marks = changed(performer.marks, (mark) => {
    let turned: Mark = mark;
    for (const field of FIELDS) {
      const to = mark[field];
      if (!to || !('who' in to)) continue;
      const who = nowOf(to.who);
      if (who !== to.who) turned = { ...turned, [field]: { who } };
    }
    return turned;
  });
  return marks === performer.marks ? performer : { ...performer, marks };
}

/** A copied cable without plugs in what is not copied, so that it moves whole. */
function pulledOut(gear: Gear, copied: ReadonlySet<string>): Gear {
  if (gear.kind !== 'cable' || !gear.plugs || !copied.has(gear.id)) return gear;
  const { from, to } = gear.plugs;
  const first = from !== undefined && !copied.has(from) ? withPlug(gear, 'from', null) : gear;
  return to !== undefined && !copied.has(to) ? withPlug(first, 'to', null) : first;
}

/** A cable plugged into the copies of what it was plugged into. */
function replugged(cable: Cable, ids: ReadonlyMap<string, string>): Cable {
  const { from, to } = cable.plugs ?? {};
  const first = withPlug(cable, 'from', from === undefined ? null : (ids.get(from) ?? null));
  return withPlug(first, 'to', to === undefined ? null : (ids.get(to) ?? null));
}
