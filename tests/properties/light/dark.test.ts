import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isLostAt, readsInTheDark } from '../../../src/core/light/readsInTheDark';
import { highlightsAt } from '../../../src/core/light/wetFloor';
import { spanOf } from '../../../src/core/optics/span';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { keyedFace, keyOn } from '../../plans/keyedFace';
import { DEMO, readPlan } from '../../plans/readPlan';
import { cases } from '../../thorough';

const place = fc.tuple(
  fc.double({ min: -4, max: 4, noNaN: true }),
  fc.double({ min: -6, max: -2, noNaN: true }),
);

/** Lamps behind, a camera in front that looks down a little, all of it at the other side for −1. */
function roof(lamps: readonly Spot[], dims: readonly number[], side: 1 | -1 = 1, tiltDegrees = -10): Plan {
  const plan = keyedFace({
    gear: lamps.flatMap(([x, z], k) => keyOn(`lamp-${k}`, [side * x, z], [0, 1], dims[k], 2 + 0.4 * k)),
    cameras: [{ id: 'wide', label: 'Wide', at: [side * 1.5, 6], headingDegrees: side * -10, lens: 'wide' }],
  });
  const aside = plan.cast.map((each) => ({
    ...each,
    marks: each.marks.map((mark) => ({ ...mark, at: [side * -6, 6] as Spot })),
  }));
  const setups = plan.setups.map((setup) => ({
    ...setup,
    move: { ...setup.move, keys: setup.move.keys.map((key) => ({ ...key, tiltDegrees })) },
  }));
  return { ...plan, cast: aside, setups };
}

test('mirroring the plan mirrors its highlights, and leaves them as bright', () => {
  let met = 0;
  fc.assert(
    fc.property(fc.array(place, { minLength: 1, maxLength: 3 }), (lamps) => {
      const dims = lamps.map(() => 0.3);
      const [one, other] = ([1, -1] as const).map((side) => {
        const plan = roof(lamps, dims, side);
        return highlightsAt(plan, plan.setups[0], 0).toSorted((a, b) => (a.lampId < b.lampId ? -1 : 1));
      });
      for (const highlight of one) {
        const mirrored = other.find(({ lampId }) => lampId === highlight.lampId);
        // What is half in the way of another stand's leg may fall to one side or the other.
        if (!mirrored || Math.abs(mirrored.seen - highlight.seen) > 1e-6) continue;
        met += 1;
        expect(mirrored.frame[0]).toBeCloseTo(1 - highlight.frame[0], 6);
        expect(mirrored.frame[1]).toBeCloseTo(highlight.frame[1], 6);
        expect(mirrored.luminance / highlight.luminance).toBeCloseTo(1, 6);
        expect(mirrored.lengthMetres).toBeCloseTo(highlight.lengthMetres, 6);
      }
    }),
    { numRuns: 16 },
  );
  expect(met).toBeGreaterThan(5);
});

test('more light makes nothing less bright', () => {
  fc.assert(
    fc.property(
      place,
      place,
      fc.double({ min: 0.01, max: 0.5, noNaN: true }),
      fc.double({ min: 1, max: 2, noNaN: true }),
      (first, second, dim, more) => {
        const reads = (dims: readonly number[]) => {
          const plan = roof([first, second], dims, 1, 0);
          return readsInTheDark(plan, plan.setups[0], 0, ['lamp-0-stand', 'lamp-1-stand', 'fence']);
        };
        const [before, after] = [reads([dim, 0]), reads([dim * more, dim])];
        expect(after.map(({ itemId }) => itemId)).toEqual(before.map(({ itemId }) => itemId));
        before.forEach(({ parts }, item) => {
          for (const part of parts) {
            const now = after[item].parts.find(({ name }) => name === part.name);
            expect(now?.luminance ?? 0).toBeGreaterThanOrEqual(part.luminance * (1 - 1e-9));
          }
        });
      },
    ),
    { numRuns: 5 },
  );
});

test('what is lost is lost in the pixels round it as in the whole picture', () => {
  const counted = { true: 0, false: 0, null: 0 };
  const agree = (plan: Plan, ids: readonly string[], setup = plan.setups[0], seconds = 0): void => {
    const whole = readsInTheDark(plan, setup, seconds, ids);
    for (const id of ids) {
      const found = whole.find(({ itemId }) => itemId === id);
      const isLost = isLostAt(plan, setup, seconds, id);
      expect(isLost, `${id} in ${setup.id}`).toBe(found ? found.verdict === 'lost in the dark' : null);
      counted[`${isLost}`] += 1;
    }
  };
  fc.assert(
    fc.property(place, place, fc.double({ min: 0, max: 0.02, noNaN: true }), (first, second, dim) => {
      const plan = roof([first, second], [dim, 0], 1, 0);
      agree(plan, ['lamp-0-stand', 'lamp-1-stand', 'lamp-0', 'fence']);
    }),
    { numRuns: 12 },
  );
  const demo = readPlan(DEMO);
  const gear = demo.gear.map(({ id }) => id);
  for (const setup of demo.setups.slice(0, cases(4))) agree(demo, gear, setup, spanOf(demo, setup)[0]);
  expect(Math.min(counted.true, counted.false, counted.null)).toBeGreaterThan(0);
});
