import type { PaletteEntry } from '../../../core/kit/palette';
import { type Item, itemOf } from '../../../core/plan/items';
import { parsePlan } from '../../../core/plan/parse';
import type { Spot } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { drawnInto, spotsWithNext } from '../../../desk/tools/making';
import type { ToolState } from '../../../desk/tools/toolStore';
import { expectedSentence } from '../../parts/faultSentence';

/** What is being drawn, in the plan as it would be. */
export interface Draft {
  readonly plan: Plan;
  readonly item: Item;
}

/** A metre of run and a square metre of outline, to see what a thing is made of before it is drawn. */
const SAMPLE: readonly Spot[] = [
  [0, 0],
  [1, 0],
  [1, 1],
];

/**
 * The item that the tool would make where it points, else as it would come out of the palette; null where it makes no
 * item of its own, as a tape or an opening.
 */
export function draftOf(plan: Plan, state: ToolState, entry: PaletteEntry): Draft | null {
  const { stroke } = state;
  const spots = stroke ? spotsWithNext(stroke) : [];
  const sample = SAMPLE.slice(0, entry.how === 'spot' ? 1 : entry.how === 'outline' ? 3 : 2);
  const drawn =
    drawnInto(plan, state, spots, false) ?? drawnInto(plan, { ...state, stroke: null }, sample, false);
  if (!drawn || drawn.id === null || itemOf(plan, drawn.id)) return null;
  const item = itemOf(drawn.plan, drawn.id);
  return item && { plan: drawn.plan, item };
}

/** Fields of a record that another has with other values; `undefined` where it has them no more. */
export function changedFields(before: object, after: object): Readonly<Record<string, unknown>> {
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  const changed = [...keys].filter((key) => Reflect.get(before, key) !== Reflect.get(after, key));
  return Object.fromEntries(changed.map((key) => [key, Reflect.get(after, key) as unknown]));
}

/** What a change makes of a draft's own fields, or a sentence that says what would work. */
export function fieldsTyped(
  { plan, item }: Draft,
  change: (plan: Plan) => Plan,
): { readonly fields: Readonly<Record<string, unknown>> } | { readonly sentence: string | null } {
  const after = change(plan);
  const checked = parsePlan(after);
  if (!checked.ok) return { sentence: expectedSentence(checked.faults) };
  const record = itemOf(after, item.record.id)?.record;
  return record ? { fields: changedFields(item.record, record) } : { sentence: null };
}
