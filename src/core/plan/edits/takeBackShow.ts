import type { Plan } from '../schema/plan';
import { type Common, editCommon } from './editCommon';
import { takenBack } from './shows';

/** Takes back that an item may be seen in a setup. */
export const takeBackShow = (
  plan: Plan,
  { id, setupId }: { readonly id: string; readonly setupId: string },
): Plan => editCommon(plan, [id], <Entry extends Common>(entry: Entry): Entry => takenBack(entry, setupId));
