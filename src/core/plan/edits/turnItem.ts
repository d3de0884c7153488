import { itemOf } from '../items';
import type { Plan } from '../schema/plan';
import { tidyHeading } from './tidy';
import { turnItems } from './turnItems';

/**
 * Turns an item on its place to a compass heading in degrees, locked or not, with what stands on it; what has no
 * heading of its own (runs, lines, heads, cast) stays.
 */
export function turnItem(
  plan: Plan,
  { id, headingDegrees }: { readonly id: string; readonly headingDegrees: number },
): Plan {
  const record = itemOf(plan, id)?.record;
  if (!record || !('headingDegrees' in record)) return plan;
  const byDegrees = tidyHeading(headingDegrees) - record.headingDegrees;
  return turnItems(plan, { ids: [id], byDegrees, evenLocked: true });
}
