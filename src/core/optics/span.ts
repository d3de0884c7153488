import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';

/** The span of the action that a setup covers, [from, to] in seconds on the action's clock. */
export function spanOf(plan: Pick<Plan, 'beats'>, setup: Setup): readonly [number, number] {
  const timeOf = (id: string) => {
    const beat = plan.beats.find((entry) => entry.id === id);
    if (!beat)
      throw new Error(`spanOf: setup "${setup.id}" names the beat "${id}", which the plan does not have`);
    return beat.atSeconds;
  };
  return [timeOf(setup.span.from), timeOf(setup.span.to)];
}
