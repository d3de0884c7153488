import { calledBy } from './named';
import type { Performer } from './schema/cast';
import type { Gear } from './schema/gear';
import type { Piece } from './schema/pieces';
import type { Plan } from './schema/plan';
import type { Wish } from './schema/texts';

/** Which list of the plan an item stands in. */
export type Section = 'piece' | 'cast' | 'gear';
/** A record, and the list that it stands in. */
export type Item =
  | { readonly section: 'piece'; readonly record: Piece }
  | { readonly section: 'cast'; readonly record: Performer }
  | { readonly section: 'gear'; readonly record: Gear };

/** Every item in the plan's own order: set pieces, cast, gear. */
export function itemsOf(plan: Plan): Item[] {
  return [
    ...plan.pieces.map((record): Item => ({ section: 'piece', record })),
    ...plan.cast.map((record): Item => ({ section: 'cast', record })),
    ...plan.gear.map((record): Item => ({ section: 'gear', record })),
  ];
}

/** So often in a row one plan is asked before its items are put in order by id: for a few it is less to look. */
const OFTEN = 16;
/** The plan that was asked last, and how often. Of one alone, since a history has hundreds. */
let asked: { readonly plan: Plan; times: number; byId: ReadonlyMap<string, Item> | null } | null = null;

/** The item of that id, or null. */
export function itemOf(plan: Plan, id: string): Item | null {
  if (asked?.plan !== plan) asked = { plan, times: 0, byId: null };
  asked.times += 1;
  if (asked.times <= OFTEN) return lookedUp(plan, id);
  asked.byId ??= new Map(itemsOf(plan).map((item) => [item.record.id, item]));
  return asked.byId.get(id) ?? null;
}

function lookedUp(plan: Plan, id: string): Item | null {
  const gear = plan.gear.find((record) => record.id === id);
  if (gear) return { section: 'gear', record: gear };
  const piece = plan.pieces.find((record) => record.id === id);
  if (piece) return { section: 'piece', record: piece };
  const performer = plan.cast.find((record) => record.id === id);
  return performer ? { section: 'cast', record: performer } : null;
}

/** The word for what an item is: its kind, or `performer`. */
export function kindOf(item: Item): string {
  return item.section === 'cast' ? 'performer' : item.record.kind;
}

/** What an item is called: its name, or what it is where nothing can be seen of that. */
export const nameOf = (item: Item): string => calledBy(item.record.label, kindOf(item));

/** What the item should do in frame: its own wish, else keep out for what the crew brings, either for the rest.
 * Practicals and bulb strings belong to the picture, so they start as *either*. */
export function wishOf(item: Item): Wish {
  if (item.record.wish) return item.record.wish;
  if (item.section !== 'gear') return 'either';
  return item.record.kind === 'practical' || item.record.kind === 'bulb string' ? 'either' : 'keep out';
}
