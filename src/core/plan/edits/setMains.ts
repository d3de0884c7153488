import type { Plan } from '../schema/plan';

/** What the mains of the place swing with, hertz; null for what its time zone makes likely. */
export function setMains(plan: Plan, { hertz }: { readonly hertz: 50 | 60 | null }): Plan {
  const { mainsHertz: before, ...place } = plan.place;
  if ((before ?? null) === hertz) return plan;
  return { ...plan, place: hertz === null ? place : { ...place, mainsHertz: hertz } };
}
