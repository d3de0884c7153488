import * as v from 'valibot';
import { type Item, itemOf } from '../items';
import { type Mark, type Performer, performer } from '../schema/cast';
import { type Gear, gear } from '../schema/gear';
import { type Piece, piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { surfaceUnder, topAt } from '../surfaces';
import { applyMotion } from './applyMotion';
import { editRecord } from './editRecord';
import { entourageOf, type Foot, feetOf, footOfMark, markKey, ridersOf } from './entourage';
import { keysAlong } from './keysOnTrack';
import { orSame, translation } from './motion';
import { settlePlugs } from './plugCable';
import { tidyHeading } from './tidy';

/** Fields of an item of any kind, by their names in the plan; undefined takes out one that may be left out. */
export type Patch = Readonly<Record<string, unknown>>;

/** What other edits are for: what a thing is and is called, where it stands, what refers to others and has ids of its own. */
const NOT_OF_THE_SHAPE: ReadonlySet<string> = new Set([
  'id',
  'kind',
  'label',
  'wish',
  'group',
  'locked',
  'hidden',
  'shows',
  'blacked',
  'at',
  'place',
  'plugs',
  'rides',
  'path',
  'outline',
  'openings',
  'holes',
  'marks',
  'stand',
  'head',
]);

const isFields = (value: unknown): value is Patch =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A field's new value: of a field that has fields of its own only some may be said. */
function merged(before: unknown, value: unknown): unknown {
  if (isFields(before) && isFields(value)) return { ...before, ...value };
  return value;
}

/** The record with every field of the patch that its kind has and may have so; the others stay. */
function reshaped(record: object, patch: Patch, isRecord: (value: unknown) => boolean): object {
  let shape: Patch = { ...record };
  for (const [field, value] of Object.entries(patch)) {
    if (NOT_OF_THE_SHAPE.has(field)) continue;
    const { [field]: before, ...rest } = shape;
    const wanted = field === 'headingDegrees' && typeof value === 'number' ? tidyHeading(value) : value;
    const next = wanted === undefined ? rest : { ...shape, [field]: merged(before, wanted) };
    if (isRecord(next)) shape = next;
  }
  return shape;
}

/** The item with the patch, as its schema lets it. */
function reshapedItem(item: Item, patch: Patch): Item {
  if (item.section === 'piece') {
    const shape = reshaped(item.record, patch, (value) => v.is(piece, value));
    return v.is(piece, shape) ? { section: 'piece', record: orSame<Piece>(item.record, shape) } : item;
  }
  if (item.section === 'cast') {
    const shape = reshaped(item.record, patch, (value) => v.is(performer, value));
    return v.is(performer, shape) ? { section: 'cast', record: orSame<Performer>(item.record, shape) } : item;
  }
  const shape = reshaped(item.record, patch, (value) => v.is(gear, value));
  return v.is(gear, shape) ? { section: 'gear', record: orSame<Gear>(item.record, shape) } : item;
}

/** What stood on a set piece before it changed, on its top as it is now, or beside it on what is below. */
function onNewTop(plan: Plan, before: Piece, now: Piece, changed: Plan): Plan {
  const riders = ridersOf(plan, now.id, true);
  if (riders.length === 0) return changed;
  const found = entourageOf(plan, riders, { evenLocked: true, decks: false });
  const carriers = new Map([...riders.map((key): [string, null] => [key, null]), ...found.carriers]);
  const moving = new Set([...carriers.keys(), now.id]);
  const liftOf = ({ spot, metres }: Foot): number => {
    const below = (): number => surfaceUnder(changed, spot, { except: moving, belowMetres: metres }).metres;
    return (topAt(now, spot) ?? below()) - (topAt(before, spot) ?? metres);
  };
  const ofItem = (id: string): number => {
    const carrier = carriers.get(id) ?? null;
    if (carrier !== null) return ofItem(carrier);
    const item = found.items.get(id);
    const foot = item && item.section !== 'cast' ? feetOf(item.record)[0] : undefined;
    return foot ? liftOf(foot) : 0;
  };
  const ofMark = (performerId: string, mark: Mark): number => {
    const carrier = carriers.get(markKey(performerId, mark.id)) ?? null;
    return carrier === null ? liftOf(footOfMark(mark)) : ofItem(carrier);
  };
  return applyMotion(changed, { ...found, carriers }, translation([0, 0]), { ofItem, ofMark });
}

/**
 * Changes fields of an item by their names in the plan: sizes, heights, heading, choices of its kind. Of a field with
 * fields of its own (a door, a mesh, clothes) only those that are said. What the kind does not have, or may not have
 * so, stays as it is; so do what it is, its name, its place and what refers to others, which have edits of their own. What stands
 * on a set piece stays on its top.
 */
export function reshapeItem(plan: Plan, { id, patch }: { readonly id: string; readonly patch: Patch }): Plan {
  const item = itemOf(plan, id);
  if (!item) return plan;
  const next = reshapedItem(item, patch);
  const changed = editRecord(plan, id, {
    piece: (record) => (next.section === 'piece' ? next.record : record),
    cast: (record) => (next.section === 'cast' ? next.record : record),
    gear: (record) => (next.section === 'gear' ? next.record : record),
  });
  if (changed === plan) return plan;
  if (item.section !== 'piece' || next.section !== 'piece') return keysAlong(plan, settlePlugs(changed, id));
  return onNewTop(plan, item.record, next.record, changed);
}
