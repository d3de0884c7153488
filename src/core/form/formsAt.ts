import { type Item, itemOf, kindOf, wishOf } from '../plan/items';
import type { Performer } from '../plan/schema/cast';
import type { Gear } from '../plan/schema/gear';
import type { Piece } from '../plan/schema/pieces';
import type { Ground, Plan } from '../plan/schema/plan';
import { figureParts } from './figure/figureParts';
import { gearParts, recordsOf } from './gear';
import { modelHeld, modelsAtHand } from './models/modelShelf';
import { pieceParts } from './pieces';
import { areasOver } from './pieces/making/wetParts';
import type { ItemForm, PlacedPart } from './types';

const formOfItem = (item: Item, parts: readonly PlacedPart[]): ItemForm => ({
  id: item.record.id,
  label: item.record.label,
  kind: kindOf(item),
  section: item.section,
  wish: wishOf(item),
  parts,
});

interface Kept {
  /** The records, and the words of them, that the form was made from. */
  readonly from: readonly unknown[];
  readonly form: ItemForm;
}

const isMadeFrom = (kept: Kept, from: readonly unknown[]): boolean =>
  kept.from.length === from.length && kept.from.every((record, k) => record === from[k]);

/** Forms by record. What is not in the plan any more is let go with its record. */
const keptForms = new WeakMap<object, Kept>();

function keptForm(record: object, from: readonly unknown[], make: () => ItemForm): ItemForm {
  const kept = keptForms.get(record);
  if (kept && isMadeFrom(kept, from)) return kept.form;
  const form = make();
  keptForms.set(record, { from, form });
  return form;
}

const MISSING = {};
/** Of the ground only what a deck shows of it: while an area's corner is dragged, nothing else is made anew. */
const madeWith = (record: Piece, ground: Ground): readonly unknown[] => {
  if (record.kind === 'model') return [modelHeld(record.asset.sha256) ?? MISSING];
  if (record.kind !== 'deck') return [];
  return [ground.surface, ground.wetness, ...areasOver(ground, record.outline)];
};

const pieceForm = (record: Piece, ground: Ground): ItemForm =>
  keptForm(record, madeWith(record, ground), () =>
    formOfItem({ section: 'piece', record }, pieceParts(record, ground)),
  );

const gearForm = (record: Gear, plan: Plan): ItemForm =>
  keptForm(record, recordsOf(record, plan), () =>
    formOfItem({ section: 'gear', record }, gearParts(record, plan)),
  );

/** Null for a performer without marks, who is nowhere. */
function castForm(record: Performer, plan: Plan, seconds: number): ItemForm | null {
  const parts = figureParts(record, plan, seconds);
  if (parts.length === 0) return null;
  return keptForm(record, [parts], () => formOfItem({ section: 'cast', record }, parts));
}

interface KeptList {
  readonly beside: object;
  readonly models: object;
  readonly forms: readonly ItemForm[];
}

/** Whole lists, so that a moment on the clock costs nothing for what does not move. */
const keptLists = new WeakMap<object, KeptList>();

function keptList(list: object, beside: object, make: () => readonly ItemForm[]): readonly ItemForm[] {
  const kept = keptLists.get(list);
  if (kept && kept.beside === beside && kept.models === modelsAtHand()) return kept.forms;
  const forms = make();
  keptLists.set(list, { beside, models: modelsAtHand(), forms });
  return forms;
}

/**
 * The form of every item at an instant of the action's clock, in the order of `itemsOf`: set pieces, cast, gear.
 * A performer without marks has none. What has not changed comes back as the same objects.
 */
export function formsAt(plan: Plan, seconds: number): readonly ItemForm[] {
  const pieces = keptList(plan.pieces, plan.ground, () =>
    plan.pieces.map((record) => pieceForm(record, plan.ground)),
  );
  const gear = keptList(plan.gear, plan.kit, () => plan.gear.map((record) => gearForm(record, plan)));
  const cast = plan.cast.flatMap((record) => castForm(record, plan, seconds) ?? []);
  return [...pieces, ...cast, ...gear];
}

/** The form of one item at an instant; null where the plan has none of that id, or a performer has no marks. */
export function formOf(plan: Plan, itemId: string, seconds: number): ItemForm | null {
  const item = itemOf(plan, itemId);
  if (!item) return null;
  switch (item.section) {
    case 'piece':
      return pieceForm(item.record, plan.ground);
    case 'cast':
      return castForm(item.record, plan, seconds);
    case 'gear':
      return gearForm(item.record, plan);
  }
}
