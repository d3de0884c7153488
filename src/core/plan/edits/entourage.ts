import { hypot } from '../../units/steadyMath';
import { type Item, itemsOf, kindOf } from '../items';
import type { Mark } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { STANDING_METRES, surfaceOfFoot, topAt } from '../surfaces';

/** A sandbag this far above or below a stand's foot still lies over its legs, metres. */
const BAG_METRES = 0.6;
/** What takes along what stands on it. */
const CARRYING: ReadonlySet<string> = new Set(['riser', 'box', 'stair house', 'shed']);

/** One place where an item touches what is under it. */
export interface Foot {
  readonly spot: Spot;
  readonly metres: number;
}

/** The feet of a set piece or a piece of gear; none of what hangs, of a deck, and of what a stand carries. */
export function feetOf(record: Piece | Gear): readonly Foot[] {
  if ('at' in record) return [{ spot: [record.at[0], record.at[2]], metres: record.at[1] }];
  if ('path' in record) return record.path.map((spot) => ({ spot, metres: record.baseMetres }));
  if ('place' in record && 'at' in record.place) {
    const [x, metres, z] = record.place.at;
    return [{ spot: [x, z], metres }];
  }
  return [];
}

export const footOfMark = ({ at, floorMetres = 0 }: Mark): Foot => ({ spot: at, metres: floorMetres });

/** Key of a mark among ids of items. */
export const markKey = (performerId: string, markId: string): string => `${performerId} ${markId}`;

/** What moves, by id, and of what it is a passenger: what it stands on, or lies over the legs of. Null for none. */
export interface Entourage {
  /** Items, and by `markKey` the marks that go along though their performer does not. */
  readonly carriers: ReadonlyMap<string, string | null>;
  readonly items: ReadonlyMap<string, Item>;
}

interface Options {
  readonly evenLocked: boolean;
  /** What stands on a deck goes along too. */
  readonly decks: boolean;
}

/**
 * Everything that goes along with some items: the stand of what a stand carries, all that a stand carries, sandbags
 * over its legs, and what stands on a box, a riser or a roof. What is locked stays, and what only it would take.
 */
export function entourageOf(plan: Plan, ids: readonly string[], options: Options): Entourage {
  const items = new Map(itemsOf(plan).map((item) => [item.record.id, item]));
  const carriers = new Map<string, string | null>();
  const waiting: { readonly id: string; readonly by: string | null; readonly isCarried?: true }[] = ids.map(
    (id) => ({ id, by: null }),
  );
  const isFree = (item: Item): boolean => options.evenLocked || item.record.locked !== true;
  for (let next = waiting.shift(); next; next = waiting.shift()) {
    const item = items.get(next.id);
    // A lock does not hold back what hangs on a stand that goes: its cables would come out.
    if (!item || !(next.isCarried || isFree(item))) continue;
    if (carriers.has(next.id)) {
      // Chosen by itself, but it stands on something that goes too.
      if (next.by !== null && carriers.get(next.id) === null) carriers.set(next.id, next.by);
      continue;
    }
    const { record } = item;
    if (item.section === 'gear' && 'place' in item.record && 'on' in item.record.place) {
      const stand = items.get(item.record.place.on);
      if (!stand || !isFree(stand)) continue;
      waiting.push({ id: stand.record.id, by: null });
    }
    carriers.set(next.id, next.by);
    if (item.section === 'gear' && item.record.kind === 'stand') {
      for (const gear of plan.gear)
        if ('place' in gear && 'on' in gear.place && gear.place.on === record.id)
          waiting.push({ id: gear.id, by: null, isCarried: true });
      for (const bag of bagsOver(plan, record.id)) waiting.push({ id: bag, by: record.id });
    }
    if (CARRYING.has(kindOf(item)) || (options.decks && kindOf(item) === 'deck'))
      for (const id of ridersOf(plan, record.id, options.evenLocked)) {
        if (items.has(id)) waiting.push({ id, by: record.id });
        else if (!carriers.has(id)) carriers.set(id, record.id);
      }
  }
  return { carriers, items };
}

/** Radius of the circle through a stand's feet, metres. */
function footRadius(plan: Plan, stand: Extract<Gear, { readonly kind: 'stand' }>): number {
  const standClass = plan.kit.stands.find(({ id }) => id === stand.stand);
  return (stand.spreadMetres ?? standClass?.footprintMetres ?? 0) / 2;
}

/** The sandbags that lie within a stand's foot circle, and not nearer to the foot of another stand. */
export function bagsOver(plan: Plan, standId: string): readonly string[] {
  const stands = plan.gear.flatMap((gear) => (gear.kind === 'stand' ? [gear] : []));
  const asked = stands.find(({ id }) => id === standId);
  if (!asked) return [];
  return plan.gear.flatMap((bag) => {
    if (bag.kind !== 'sandbag') return [];
    /** How far it is from a stand's foot, metres; null where it does not lie over its legs. */
    const awayFrom = (stand: (typeof stands)[number]): number | null => {
      const away = hypot(bag.at[0] - stand.at[0], bag.at[2] - stand.at[2]);
      const isOver = Math.abs(bag.at[1] - stand.at[1]) <= BAG_METRES && away <= footRadius(plan, stand);
      return isOver ? away : null;
    };
    // Most bags lie elsewhere: that costs one question, not one for each stand.
    const away = awayFrom(asked);
    if (away === null) return [];
    // Of two as near the first in the plan has it.
    const at = stands.indexOf(asked);
    const hasNearer = stands.some((stand, place) => {
      const other = awayFrom(stand);
      return other !== null && (other < away || (other === away && place < at));
    });
    return hasNearer ? [] : [bag.id];
  });
}

/** Ids of the items that stand on a set piece with every foot, and keys of the marks that do. */
export function ridersOf(plan: Plan, levelId: string, evenLocked: boolean): readonly string[] {
  const level = plan.pieces.find(({ id }) => id === levelId);
  if (!level) return [];
  const isOn = (except: string) => (foot: Foot) => {
    // Most things stand elsewhere: that costs one question, not one for each set piece.
    const top = topAt(level, foot.spot);
    if (top === null || Math.abs(top - foot.metres) > STANDING_METRES) return false;
    return surfaceOfFoot(plan, foot.spot, foot.metres, new Set([except]))?.id === levelId;
  };
  const records = [...plan.pieces, ...plan.gear].filter((record) => {
    const feet = feetOf(record);
    return record.id !== levelId && feet.length > 0 && feet.every(isOn(record.id));
  });
  const marks = plan.cast.flatMap((performer) =>
    performer.locked === true && !evenLocked
      ? []
      : performer.marks
          .filter((mark) => isOn('')(footOfMark(mark)))
          .map((mark) => markKey(performer.id, mark.id)),
  );
  return [...records.map(({ id }) => id), ...marks];
}
