import type { Plan } from '../../src/core/plan/schema/plan';
import type { Draw } from './draw';

/** The plan with limits of its own of what passes for an upright, where it says what is lost in the dark. */
function withUprights(plan: Plan, draw: Draw): Plan {
  if (!plan.dark || draw.chance(0.5)) return plan;
  const uprights = {
    leanDegrees: draw.between(2, 15),
    leastHeight: draw.between(0.02, 0.2),
    likeWidth: draw.between(1.2, 3),
    likeStops: draw.between(0.3, 2),
    among: draw.whole(1, 4),
  };
  return { ...plan, dark: { ...plan.dark, uprights } };
}

/** The plan with some of its gear blacked or let show, mains of a frequency, and thresholds of what is lost in the dark. */
export const withBlack = (plan: Plan, draw: Draw): Plan => withUprights(blackedIn(plan, draw), draw);

const blackedIn = (plan: Plan, draw: Draw): Plan => ({
  ...plan,
  ...(draw.chance(0.5) && {
    dark: { contrastStops: draw.between(0.05, 0.5), stopsUnder: draw.between(2, 6) },
  }),
  place: { ...plan.place, ...(draw.chance(0.5) && { mainsHertz: draw.pick([50, 60] as const) }) },
  gear: plan.gear.map((gear) => ({
    ...gear,
    ...(draw.chance(0.1) && { blacked: true as const }),
    ...(draw.chance(0.1) &&
      plan.setups.length > 0 && {
        shows: [{ setup: draw.pick(plan.setups).id, reason: 'Reads as a street lamp' }],
      }),
  })),
});
