import type { Plan } from '../schema/plan';
import { withCautions } from './cautionsEntered';

/** Takes the note on a caution away. */
export function takeBackCautionNote(plan: Plan, { key }: { readonly key: string }): Plan {
  const before = plan.cautions?.notes ?? [];
  const notes = before.filter((each) => each.key !== key);
  return notes.length === before.length ? plan : withCautions(plan, { ...plan.cautions, notes });
}
