import type { Plan } from '../../src/core/plan/schema/plan';
import type { Draw } from './draw';

/** The plan with what is entered for cautions: a forecast, the roof's word, ways out, notes, what cloths weigh; a third of the plans as they are. */
export function withCautionsEntered(plan: Plan, draw: Draw): Plan {
  if (draw.chance(1 / 3)) return plan;
  const metresPerSecond = draw.between(0, 20);
  const ways = draw.whole(0, 2);
  const noted = plan.gear.filter(({ kind }) => kind === 'stand').slice(0, draw.whole(0, 2));
  const isHeavy = draw.chance(0.5);
  const kilograms = draw.between(0.5, 20);
  return {
    ...plan,
    ...(isHeavy && {
      gear: plan.gear.map((each) =>
        each.kind === 'flag' || each.kind === 'frame' || each.kind === 'bounce'
          ? { ...each, kilograms }
          : each,
      ),
    }),
    cautions: {
      wind: { metresPerSecond, ...(draw.chance(0.5) && { gustMetresPerSecond: draw.between(0, 40) }) },
      ...(draw.chance(0.5) && { roofLoad: { kilonewtonsPerSquareMetre: draw.between(0.5, 5) } }),
      ...(draw.chance(0.5) && { wayOutMetres: draw.between(0.5, 1.5) }),
      ...(ways > 0 && {
        waysOut: Array.from({ length: ways }, (_, k) => ({
          id: `way-out-${k + 1}`,
          label: `Way out ${k + 1}`,
          at: [draw.between(-6, 6), 0, draw.between(-4, 4)],
        })),
      }),
      ...(noted.length > 0 && {
        notes: noted.map(({ id }) => ({ key: `wind/${id}`, note: 'Struck at nine.' })),
      }),
    },
  };
}
