import { expect, test } from 'vitest';
import { setHeadLight } from '../../../src/core/plan/edits/setHeadLight';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Distribution } from '../../../src/core/plan/schema/distribution';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { DEMO, readPlan } from '../../plans/readPlan';

const demo = readPlan(DEMO);
const [head] = demo.kit.heads;

const TABLE: Distribution = {
  verticalDegrees: [0, 45, 90],
  horizontalDegrees: [0, 90],
  candela: [
    [900, 500, 0],
    [900, 400, 0],
  ],
  lumens: 2000,
  says: 'a lamp',
  source: 'lamp.ies',
};

const withLight = (light: object): unknown => ({
  ...demo,
  kit: { ...demo.kit, heads: [{ ...head, ...light }, ...demo.kit.heads.slice(1)] },
});

function sentencesOf(plan: unknown): string[] {
  const parsed = parsePlan(plan);
  return parsed.ok ? [] : parsed.faults.map(({ sentence }) => sentence);
}
const where = `Head class "${head.label}"`;

test('a plan with a table comes back from its file as it went', () => {
  const plan = setHeadLight(demo, { headId: head.id, light: { distribution: TABLE } });
  expect(plan.kit.heads[0].distribution).toEqual(TABLE);
  expect(JSON.parse(serialisePlan(plan))).toEqual(plan);
});

test.each<[string, object, string]>([
  [
    'rows that are too few',
    { distribution: { ...TABLE, candela: [[900, 500, 0]] } },
    `${where}, distribution.candela: found 1 rows, expected 2, one for each horizontal angle.`,
  ],
  [
    'a row that is too short',
    { distribution: { ...TABLE, candela: [[900, 500, 0], [900]] } },
    `${where}, distribution.candela[1]: found 1 values, expected 3, one for each vertical angle.`,
  ],
  [
    'angles that go back',
    { distribution: { ...TABLE, verticalDegrees: [0, 90, 45] } },
    `${where}, distribution.verticalDegrees[2]: found 45, expected more than 90: angles go up.`,
  ],
  [
    'a part of a turn',
    { distribution: { ...TABLE, horizontalDegrees: [0, 91] } },
    `${where}, distribution.horizontalDegrees: found 0 to 91, expected 0 alone, 0 to 90, 0 to 180, 90 to 270 or 0 to 360.`,
  ],
  [
    'no turn at all',
    { distribution: { ...TABLE, horizontalDegrees: [], candela: [] } },
    `${where}, distribution.horizontalDegrees: found none, expected 0 alone, 0 to 90, 0 to 180, 90 to 270 or 0 to 360.`,
  ],
  [
    'one angle',
    { distribution: { ...TABLE, verticalDegrees: [0], candela: [[9], [9]] } },
    `${where}, distribution.verticalDegrees: found 1, expected at least two angles.`,
  ],
  [
    'no light',
    {
      distribution: {
        ...TABLE,
        candela: [
          [0, 0, 0],
          [0, 0, 0],
        ],
      },
    },
    `${where}, distribution.candela: found nothing but 0, expected some light.`,
  ],
  [
    'less than none',
    {
      distribution: {
        ...TABLE,
        candela: [
          [900, -500, 0],
          [900, 400, 0],
        ],
      },
    },
    `kit.heads[0].distribution.candela[0] of "${head.label}": found a list of 3, expected at most 361 candela, each 0 to 100000000.`,
  ],
  [
    'a table and a reading',
    { distribution: TABLE, reading: { lux: 10, metres: 3 } },
    `${where}: found a distribution and a reading, expected one of the two: a table says how strong it is.`,
  ],
  [
    'a reading of a sun',
    { reading: { lux: 1e6, metres: 100 } },
    `${where}, reading: found 1000000 lux at 100 m, expected at most 100000000 candela.`,
  ],
  [
    'a reading of nothing',
    { reading: { lux: 0, metres: 3 } },
    `kit.heads[0].reading.lux of "${head.label}": found 0, expected 0.01 to 1000000 lux.`,
  ],
  [
    'a reading of less than nothing',
    { reading: { lux: -5, metres: 3 } },
    `kit.heads[0].reading.lux of "${head.label}": found -5, expected 0.01 to 1000000 lux.`,
  ],
  [
    'a reading at no distance',
    { reading: { lux: 10, metres: 0 } },
    `kit.heads[0].reading.metres of "${head.label}": found 0, expected 0.1 to 200 metres.`,
  ],
])('%s is a fault in words', (_, light, sentence) => {
  expect(sentencesOf(withLight(light))).toEqual([sentence]);
});

test('measured light takes the place of what was measured before, and goes out again', () => {
  const read = setHeadLight(demo, { headId: head.id, light: { reading: { lux: 1850, metres: 3 } } });
  const table = setHeadLight(read, { headId: head.id, light: { distribution: TABLE } });
  expect(table.kit.heads[0]).toEqual({ ...head, distribution: TABLE });
  expect(setHeadLight(table, { headId: head.id, light: { distribution: { ...TABLE } } })).toBe(table);
  expect(setHeadLight(table, { headId: head.id, light: null })).toEqual(demo);
  expect(setHeadLight(demo, { headId: head.id, light: null })).toBe(demo);
  expect(setHeadLight(demo, { headId: 'none', light: { distribution: TABLE } })).toBe(demo);
  expect(setHeadLight(demo, { headId: head.id, light: { reading: { lux: 1, metres: 0 } } })).toBe(demo);
});

test('a table of the largest size is checked before long', () => {
  const angles = (to: number): number[] => Array.from({ length: 361 }, (_, k) => (k * to) / 360);
  const candela = angles(360).map(() => angles(180).map((angle) => 200 - angle));
  const distribution = { ...TABLE, verticalDegrees: angles(180), horizontalDegrees: angles(360), candela };
  const begun = performance.now();
  expect(sentencesOf(withLight({ distribution }))).toEqual([]);
  expect(performance.now() - begun).toBeLessThan(300);
});
