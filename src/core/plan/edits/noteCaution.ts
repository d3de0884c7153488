import * as v from 'valibot';
import { cautions } from '../schema/cautions';
import type { Plan } from '../schema/plan';
import { withCautions } from './cautionsEntered';
import { MOST } from './limits';

/**
 * Writes a note on a caution, known by its key, in place of a note before it: what is done about it, or why it is
 * accepted. The caution stays, with the note. An empty note, one of more than 400 characters, and a key that is none
 * change nothing.
 */
export function noteCaution(
  plan: Plan,
  { key, note }: { readonly key: string; readonly note: string },
): Plan {
  const before = plan.cautions?.notes ?? [];
  const entry = { key, note: note.trim() };
  if (!v.is(cautions, { notes: [entry] })) return plan;
  const at = before.findIndex((each) => each.key === key);
  if (at < 0 && before.length >= MOST.cautionNotes) return plan;
  return withCautions(plan, {
    ...plan.cautions,
    notes: at < 0 ? [...before, entry] : before.with(at, entry),
  });
}
