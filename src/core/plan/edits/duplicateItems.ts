import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { type Copied, copyItems } from './copies';
import { moveItems } from './moveItems';

/** Copies items (see `copyItems`) so many metres away, [x, z]; the copies land as what is moved does. */
export const duplicateItems = (
  plan: Plan,
  { ids, by }: { readonly ids: readonly string[]; readonly by: Spot },
): Copied =>
  copyItems(plan, ids, (before, copied) => moveItems(before, { ids: copied, by, evenLocked: true }));
