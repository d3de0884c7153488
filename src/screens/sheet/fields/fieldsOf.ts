import type { Item } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import { castFields } from './castFields';
import { gearFields } from './gearFields';
import { pieceFields } from './pieceFields';
import type { FieldGroup } from './types';

/** The fields of an item's own kind under their headings, and of no other. */
export function fieldsOf(plan: Plan, item: Item, lengths: LengthSystem): FieldGroup[] {
  if (item.section === 'piece') return pieceFields(item.record, lengths);
  if (item.section === 'cast') return castFields(item.record);
  return gearFields(plan, item.record, lengths);
}
