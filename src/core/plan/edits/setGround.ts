import type { Ground, Plan } from '../schema/plan';
import { orSame } from './motion';

/** Says what the deck is covered with, and how wet it is. */
export function setGround(plan: Plan, { patch }: { readonly patch: Partial<Ground> }): Plan {
  const ground = orSame(plan.ground, { ...plan.ground, ...patch });
  return ground === plan.ground ? plan : { ...plan, ground };
}
