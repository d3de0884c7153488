import type { Plan } from '../schema/plan';
import { editCommon, marked } from './editCommon';

/** Leaves items out of the roof's drawings, or shows them again; the frame and the report have them all along. */
export const hideItems = (
  plan: Plan,
  { ids, hidden }: { readonly ids: readonly string[]; readonly hidden: boolean },
): Plan => editCommon(plan, ids, (entry) => marked(entry, 'hidden', hidden));
