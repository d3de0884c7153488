import type { Plan } from '../schema/plan';
import { type WhichCheats, withoutCheats } from './cheats';
import { editSetup } from './editRecord';

/** Has a setup play marks where the master has them: one mark, all of a performer's, or all. */
export const removeCheat = (
  plan: Plan,
  { setupId, ...which }: { readonly setupId: string } & WhichCheats,
): Plan => editSetup(plan, setupId, (setup) => withoutCheats(setup, which));
