import type { Plan } from '../schema/plan';
import { removeItems } from './removeItems';

/** Takes one item out of the plan; see `removeItems`. */
export const removeItem = (plan: Plan, { id }: { readonly id: string }): Plan =>
  removeItems(plan, { ids: [id] });
