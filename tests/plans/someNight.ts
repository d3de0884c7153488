import { SPARED } from '../../src/core/plan/schema/night';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { Draw } from './draw';

const clock = (draw: Draw, from: number, to: number): string => {
  const minutes = draw.whole(from, to) % 1440;
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
};

/** The plan with a night of its own, its setups in any order, some with times and needs; a third of the plans as they are. */
export function withNight(plan: Plan, draw: Draw): Plan {
  if (draw.chance(1 / 3)) return plan;
  const chosen = plan.setups.filter(() => draw.chance(0.7));
  const order = plan.setups
    .map(({ id }) => ({ id, key: draw.between(0, 1) }))
    .toSorted((a, b) => a.key - b.key)
    .map(({ id }) => id);
  return {
    ...plan,
    night: {
      call: clock(draw, 15 * 60, 20 * 60),
      wrapBy: clock(draw, 23 * 60, 29 * 60),
      utcOffsetHours: draw.whole(-3, 3),
      ...(draw.chance(0.2) && { clockChange: { time: '02:00', utcOffsetHours: draw.whole(-3, 3) } }),
      meal: { afterHours: draw.whole(2, 6), minutes: draw.whole(0, 60) },
      ...(draw.chance(0.5) && { costs: { lens: draw.whole(0, 9), halfTurn: draw.whole(0, 40) } }),
      ...(draw.chance(0.3) && { wetOnce: true }),
      ...(chosen.length > 0 && {
        setups: chosen.map(({ id }) => ({
          setup: id,
          shoot: draw.whole(10, 90),
          ...(draw.chance(0.3) && { when: draw.pick(['before dark', 'after dark'] as const) }),
          ...(draw.chance(0.3) && { ground: draw.pick(['wet', 'dry'] as const) }),
          ...(draw.chance(0.3) && { lighting: draw.pick(['blue', 'amber']) }),
          ...(draw.chance(0.2) && { until: clock(draw, 18 * 60, 28 * 60) }),
        })),
      }),
      ...(order.length > 0 && draw.chance(0.5) && { order }),
      ...(draw.chance(0.5) && { packing: { spares: [{ of: draw.pick(SPARED), oneFor: draw.whole(1, 9) }] } }),
    },
  };
}
