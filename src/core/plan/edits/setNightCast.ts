import type { NightCast } from '../schema/night';
import type { Plan } from '../schema/plan';
import { type Patch, withEntry, withNight } from './nightRecord';

/** Sets from when a performer is in and by when they are out; undefined takes either away. */
export function setNightCast(
  plan: Plan,
  {
    performerId,
    patch,
  }: { readonly performerId: string; readonly patch: Patch<Omit<NightCast, 'performer'>> },
): Plan {
  if (!plan.cast.some(({ id }) => id === performerId)) return plan;
  const list = plan.night?.cast ?? [];
  const cast = withEntry<NightCast>(
    list,
    ({ performer }) => performer === performerId,
    { performer: performerId },
    patch,
  );
  return withNight(plan, { ...plan.night, cast });
}
