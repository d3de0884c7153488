import type { Plan } from '../schema/plan';
import { editCommon, marked } from './editCommon';

/** Locks items where they are, or lets them go. A locked item stays under a hand; its fields may still be typed. */
export const lockItems = (
  plan: Plan,
  { ids, locked }: { readonly ids: readonly string[]; readonly locked: boolean },
): Plan => editCommon(plan, ids, (entry) => marked(entry, 'locked', locked));
