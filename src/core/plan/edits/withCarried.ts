import type { Plan } from '../schema/plan';

/** Some ids with the stands that carry those things, and with all that these stands carry. */
export function withCarried(plan: Plan, ids: Iterable<string>): ReadonlySet<string> {
  const wanted = new Set(ids);
  const carried = plan.gear.flatMap((gear) =>
    'place' in gear && 'on' in gear.place ? [{ id: gear.id, on: gear.place.on }] : [],
  );
  for (const { id, on } of carried) if (wanted.has(id)) wanted.add(on);
  for (const { id, on } of carried) if (wanted.has(on)) wanted.add(id);
  return wanted;
}
