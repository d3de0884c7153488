import { parsePlan } from './parse';
import { planText } from './planText';
import type { Plan } from './schema/plan';

/**
 * The text of a plan file, keys in the schema's order, ending in a line feed. Strict on the way out too:
 * a plan that the schema would not read back is our own mistake and throws.
 */
export function serialisePlan(plan: Plan): string {
  const checked = parsePlan(plan);
  if (!checked.ok) throw new Error(`serialisePlan: ${checked.faults[0].sentence}`);
  return planText(checked.value);
}
