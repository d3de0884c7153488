import { isLamp } from '../../src/core/plan/cues';
import type { Before } from '../../src/core/plan/schema/before';
import type { Gear } from '../../src/core/plan/schema/gear';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { Draw } from './draw';

const someGel = (draw: Draw): Before => ({
  ...(draw.chance(0.5) && { mired: draw.between(-200, 200) }),
  ...(draw.chance(0.5) && { density: draw.between(0, 2) }),
});

/** Gel, diffusion and scrims as they may be before a head. */
export const someBefore = (draw: Draw): Before => ({
  ...someGel(draw),
  ...(draw.chance(0.3) && {
    diffusion: { transmission: draw.between(0.2, 1), spreadDegrees: draw.between(0, 120) },
  }),
  ...(draw.chance(0.3) && { doubles: draw.whole(0, 4) }),
  ...(draw.chance(0.3) && { singles: draw.whole(0, 4) }),
});

/** The plan with gel, diffusion and scrims before some of its lamps, and filters that take light before its cameras. */
export const withBefore = (plan: Plan, draw: Draw): Plan => ({
  ...plan,
  gear: plan.gear.map((gear): Gear => {
    if (!isLamp(gear) || draw.chance(0.7)) return gear;
    return gear.kind === 'head' ? { ...gear, before: someBefore(draw) } : { ...gear, before: someGel(draw) };
  }),
  setups: plan.setups.map((setup) =>
    draw.chance(0.3) ? { ...setup, filterLossStops: draw.between(0, 5) } : setup,
  ),
});
