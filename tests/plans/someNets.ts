import type { Gear } from '../../src/core/plan/schema/gear';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { Draw } from './draw';

/** The plan with some of its flags made nets. */
export const withNets = (plan: Plan, draw: Draw): Plan => ({
  ...plan,
  gear: plan.gear.map(
    (gear): Gear =>
      gear.kind === 'flag' && draw.chance(0.5) ? { ...gear, transmission: draw.between(0, 0.95) } : gear,
  ),
});
