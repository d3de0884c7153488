import { expect, test } from 'vitest';
import { modelsAtHand } from '../../../src/core/form/models/modelShelf';
import { removeItems } from '../../../src/core/plan/edits/removeItems';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { type Earlier, reportAgainSteps } from '../../../src/core/report/reportAgain';
import { setupReport } from '../../../src/core/report/setupReport';
import type { SetupReport } from '../../../src/core/report/types';
import { inOneGo } from '../../../src/core/units/steps';
import { crowdedPlan } from '../../plans/crowd';
import { type Draw, drawFrom } from '../../plans/draw';
import { cases } from '../../thorough';
import { movingPlan } from '../sight/movingPlans';

type Edit = (plan: Plan, draw: Draw) => Plan;

const withGear = (plan: Plan, draw: Draw, change: (gear: Gear) => Gear[]): Plan => {
  const chosen = draw.pick(plan.gear);
  return { ...plan, gear: plan.gear.flatMap((gear) => (gear === chosen ? change(gear) : [gear])) };
};
const moved = (gear: Gear, x: number, z: number): Gear =>
  'at' in gear ? { ...gear, at: [gear.at[0] + x, gear.at[1], gear.at[2] + z] } : gear;

/** Edits of what may be seen; after some of them a setup has to be read in full. */
const EDITS: readonly Edit[] = [
  (plan, draw) => withGear(plan, draw, (gear) => [moved(gear, draw.between(-1, 1), draw.between(-1, 1))]),
  (plan, draw) => withGear(plan, draw, (gear) => [moved(gear, draw.between(-0.05, 0.05), 0)]),
  (plan, draw) => withGear(plan, draw, (gear) => [moved(gear, draw.between(-30, 30), draw.between(-30, 30))]),
  (plan, draw) => removeItems(plan, { ids: [draw.pick(plan.gear).id] }),
  (plan, draw) =>
    withGear(plan, draw, (gear) => [gear, { ...moved(gear, draw.between(-6, 6), 1), id: `${gear.id}-too` }]),
  (plan, draw) => withGear(plan, draw, (gear) => [{ ...gear, label: `${gear.label} again` }]),
  (plan, draw) =>
    withGear(plan, draw, (gear) => [{ ...gear, wish: draw.pick(['keep out', 'must show', 'either']) }]),
  (plan, draw) =>
    withGear(plan, draw, (gear) => [
      { ...gear, shows: [{ setup: plan.setups[0].id, reason: 'it is meant to' }] },
    ]),
  (plan, draw) => ({ ...plan, gear: draw.chance(0.5) ? plan.gear.toReversed() : [...plan.gear] }),
  (plan) => ({ ...plan, title: `${plan.title}, again` }),
];

/** Edits after which what was read of a setup holds no longer, or not surely. */
const GREATER: readonly Edit[] = [
  (plan) => ({ ...plan, safety: { ...plan.safety, metres: plan.safety.metres + 0.5 } }),
  (plan) => ({
    ...plan,
    ground: { ...plan.ground, wetness: plan.ground.wetness === 'dry' ? 'puddled' : 'dry' },
  }),
  (plan, draw) => ({
    ...plan,
    setups: plan.setups.map((setup) => ({
      ...setup,
      move: {
        ...setup.move,
        keys: setup.move.keys.map((key) => ({ ...key, tiltDegrees: key.tiltDegrees + draw.between(-3, 3) })),
      },
    })),
  }),
  (plan, draw) => ({
    ...plan,
    cast: plan.cast.map((performer) => ({
      ...performer,
      marks: performer.marks.map((mark) => ({ ...mark, at: [mark.at[0] + draw.between(0, 1), mark.at[1]] })),
    })),
  }),
  (plan) => ({
    ...plan,
    beats: plan.beats.map((beat) => ({ ...beat, atSeconds: beat.atSeconds * 1.5 })),
  }),
];

const earlierOf = (plan: Plan, report: SetupReport): Earlier => ({ plan, models: modelsAtHand(), report });
const again = (plan: Plan, earlier: Earlier): SetupReport =>
  inOneGo(reportAgainSteps(plan, plan.setups[0], earlier));
/** How much of a report was taken over as it was. */
const takenOver = ({ items }: SetupReport, before: SetupReport): number =>
  items.filter((item) => before.items.includes(item)).length;

const isToTheLetter = (a: SetupReport, b: SetupReport): boolean => JSON.stringify(a) === JSON.stringify(b);

const PLANS = cases(15);

test.each([
  ['a small roof on which a camera travels', movingPlan],
  ['a crowd', (seed: number) => crowdedPlan(24, 1, seed, 1)],
])(
  '%s: a setup that is read again after an edit is reported to the letter as if it were new',
  (_, planOf) => {
    let spared = 0;
    for (let seed = 0; seed < PLANS; seed += 1) {
      const draw = drawFrom(seed + 77);
      let plan = planOf(seed);
      let earlier = earlierOf(plan, setupReport(plan, plan.setups[0]));
      const edits = [
        draw.pick(EDITS),
        draw.pick(EDITS),
        draw.chance(0.3) ? draw.pick(GREATER) : draw.pick(EDITS),
      ];
      for (const edit of edits) {
        plan = edit(plan, draw);
        const report = again(plan, earlier);
        expect(isToTheLetter(report, setupReport(plan, plan.setups[0])), `seed ${seed}, ${edit}`).toBe(true);
        if (takenOver(report, earlier.report) > 0) spared += 1;
        // Now and then the next is told by an older one, as where edits follow faster than they are read.
        if (draw.chance(0.7)) earlier = earlierOf(plan, report);
      }
    }
    expect(spared).toBeGreaterThan(PLANS / 2);
  },
);

test('what has changed nothing for a setup costs no look, whatever it changed for others', () => {
  const plan = crowdedPlan(24, 2, 3, 1);
  const report = setupReport(plan, plan.setups[0]);
  const [first, second] = plan.setups;
  const other = { ...plan, setups: [first, { ...second, label: 'Another' }], title: 'Another night' };
  expect(again(other, earlierOf(plan, report)).items).toBe(report.items);
});

test('models that came meanwhile have a setup read in full', () => {
  const plan = crowdedPlan(24, 1, 3, 1);
  const report = setupReport(plan, plan.setups[0]);
  const found = again(plan, { ...earlierOf(plan, report), models: {} });
  expect(takenOver(found, report)).toBe(0);
  expect(found).toEqual(report);
});
