import type { Plan } from '../schema/plan';
import { editSetup } from './editRecord';

/** Gives a setup another name; its id stays. */
export function renameSetup(
  plan: Plan,
  { setupId, label }: { readonly setupId: string; readonly label: string },
): Plan {
  return editSetup(plan, setupId, (setup) => (setup.label === label ? setup : { ...setup, label }));
}
