import type { Plan } from './schema/plan';
import type { Setup } from './schema/setup';

/** The setups that look through a lens of the plan's kit. */
export const setupsWithLens = (plan: Plan, lensId: string): readonly Setup[] =>
  plan.setups.filter((setup) => setup.lens === lensId);

/** The setups that use a body of the plan's kit, or one mode of it. */
export const setupsWithBody = (plan: Plan, bodyId: string, modeId?: string): readonly Setup[] =>
  plan.setups.filter(({ body, mode }) => body === bodyId && (modeId === undefined || mode === modeId));
