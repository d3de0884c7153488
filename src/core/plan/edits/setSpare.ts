import type { Spare, Spared } from '../schema/night';
import type { Plan } from '../schema/plan';
import { withNight } from './nightRecord';

/** Has one spare taken for every so many of a thing, at least one; null for none. */
export function setSpare(
  plan: Plan,
  { of, oneFor }: { readonly of: Spared; readonly oneFor: number | null },
): Plan {
  const { spares: before = [], ...rest } = plan.night?.packing ?? {};
  const others = before.filter((rule) => rule.of !== of);
  const place = before.findIndex((rule) => rule.of === of);
  const rule: Spare[] = oneFor === null ? [] : [{ of, oneFor }];
  const spares = place < 0 ? [...others, ...rule] : others.toSpliced(place, 0, ...rule);
  return withNight(plan, { ...plan.night, packing: { ...rest, ...(spares.length > 0 && { spares }) } });
}
