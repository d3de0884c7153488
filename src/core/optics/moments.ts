import type { Plan } from '../plan/schema/plan';

/** Something that happens at a moment: on the action's clock, or that long after the beat that it names. */
interface Momentary {
  readonly atSeconds: number;
  readonly beat?: string | undefined;
}

/**
 * When something happens on the action's clock, seconds.
 * @throws an error for a beat that the plan does not have, which a parsed plan cannot name
 */
export function momentOf(plan: Pick<Plan, 'beats'>, { atSeconds, beat }: Momentary): number {
  if (beat === undefined) return atSeconds;
  const found = plan.beats.find(({ id }) => id === beat);
  if (!found) throw new Error(`momentOf: the plan has no beat "${beat}"`);
  return found.atSeconds + atSeconds;
}
