import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Target } from './targets';

/** A name within a sentence: small at the front, unless it begins with a short name in capitals. */
function inText(label: string): string {
  return /^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}

/** Items as the history calls them: one by its name, several by their number. */
export function namesInText(plan: Plan, ids: readonly string[]): string {
  if (ids.length !== 1) return `${ids.length} things`;
  const item = itemOf(plan, ids[0]);
  if (!item) return 'it';
  return item.section === 'cast' ? item.record.label : inText(item.record.label);
}

/** A surface as a readout calls it. */
export function surfaceInText(plan: Plan, id: string): string {
  return `the ${namesInText(plan, [id])}`;
}

/** What is pointed at, by its name. */
export function labelOfTarget(plan: Plan, target: Target): string {
  if (target.type === 'item') return itemOf(plan, target.id)?.record.label ?? '';
  if (target.type === 'camera') return plan.setups.find(({ id }) => id === target.setupId)?.label ?? '';
  const performer = plan.cast.find(({ id }) => id === target.performerId);
  const place = performer?.marks.findIndex(({ id }) => id === target.markId) ?? -1;
  return performer ? `${performer.label}, mark ${place + 1}` : '';
}
