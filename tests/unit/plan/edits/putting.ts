import { makeItem } from '../../../../src/core/kit/palette';
import type { Spot } from '../../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../../src/core/plan/schema/plan';

/** Puts something from the palette, which has to be possible. */
export function put(plan: Plan, entryId: string, ...spots: readonly Spot[]): Plan {
  const made = makeItem(plan, entryId, { spots });
  if (!made) throw new Error(`${entryId} was not made`);
  return made.plan;
}
