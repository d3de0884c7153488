import { describe, expect, test } from 'vitest';
import { figureParts, measuresOf, whereabouts } from '../../../src/core/form/figure';
import { acted, boxOf, MAN, named, WOMAN } from '../../unit/form/figure/people';

/**
 * Percentiles (5, 50, 95) in millimetres, computed from the public data of the 2012 survey, 4,082 men and 1,986 women.
 * A person of median stature should be of median measures; the tails only roughly, for measures do not go together.
 * Source: [ansur-ii]
 */
const TABLE = {
  male: {
    stature: [1648, 1755, 1870],
    acromialMetres: [1339, 1439, 1546],
    biacromialMetres: [384, 415, 447],
    sittingMetres: [860, 918, 977],
    waistMetres: [972, 1055, 1145],
    crotchMetres: [771, 845, 925],
    kneeMetres: [443, 487, 536],
    spanMetres: [1680, 1812, 1957],
    headBreadthMetres: [146, 154, 163],
    headLengthMetres: [188, 200, 211],
    bideltoidMetres: [459, 509, 567],
    suprasternaleMetres: [1341, 1437, 1540],
  },
  female: {
    stature: [1525, 1626, 1740],
    acromialMetres: [1242, 1332, 1434],
    biacromialMetres: [335, 365, 396],
    sittingMetres: [803, 857, 912],
    waistMetres: [900, 978, 1064],
    crotchMetres: [712, 780, 857],
    kneeMetres: [408, 448, 493],
    spanMetres: [1529, 1657, 1803],
    headBreadthMetres: [140, 147, 156],
    headLengthMetres: [178, 190, 202],
    bideltoidMetres: [406, 450, 499],
    suprasternaleMetres: [1236, 1326, 1428],
  },
} as const;

type Measure = Exclude<keyof (typeof TABLE)['male'], 'stature'>;

describe.each(['male', 'female'] as const)('%s', (figure) => {
  const { stature, ...rows } = TABLE[figure];
  test.each(Object.entries(rows) as [Measure, readonly number[]][])(
    '%s of the median person within 5 mm',
    (measure, [, median]) => {
      const found = measuresOf({ figure, statureMetres: stature[1] / 1000, build: 'medium' })[measure];
      expect(Math.abs(found * 1000 - median)).toBeLessThanOrEqual(5);
    },
  );

  test.each(['acromialMetres', 'suprasternaleMetres', 'waistMetres', 'crotchMetres', 'kneeMetres'] as const)(
    '%s of tall and short people within 4 %',
    (measure) => {
      for (const k of [0, 2]) {
        const found = measuresOf({ figure, statureMetres: stature[k] / 1000, build: 'medium' })[measure];
        expect(Math.abs((found * 1000) / rows[measure][k] - 1)).toBeLessThan(0.04);
      }
    },
  );
});

/**
 * Standing eye height in millimetres. Men of the survey: stature less sitting height plus sitting eye height, 5, 50, 95.
 * British adults: the middle of the table.
 * Source: [ansur-ii], [bodyspace-eye-height]
 */
const EYES = [
  { who: MAN, stature: 1648, eyes: 1536 },
  { who: MAN, stature: 1755, eyes: 1640 },
  { who: MAN, stature: 1870, eyes: 1753 },
  { who: MAN, stature: 1740, eyes: 1630 },
  { who: WOMAN, stature: 1610, eyes: 1505 },
];

test.each(EYES)('eyes of $who.label of $stature mm at $eyes mm within 10 mm', ({ who, stature, eyes }) => {
  const { plan, performer } = acted({ ...who, statureMetres: stature / 1000 }, [{ atSeconds: 0 }]);
  const found = whereabouts(performer, plan, 0)?.eyes[1] ?? 0;
  expect(Math.abs(found * 1000 - eyes)).toBeLessThanOrEqual(10);
});

test.each([
  { who: MAN, span: 1812, bideltoid: 509, knee: 487, headBreadth: 154 },
  { who: WOMAN, span: 1657, bideltoid: 450, knee: 448, headBreadth: 147 },
])('the body as built: $who.label', ({ who, span, bideltoid, knee, headBreadth }) => {
  const posed = (stance: 'stand' | 'arms out') => {
    const { plan, performer } = acted(who, [{ atSeconds: 0, stance }]);
    return figureParts(performer, plan, 0);
  };
  expect(Math.abs(boxOf(posed('arms out')).width * 1000 - span)).toBeLessThan(25);
  const shins = named(posed('stand'), 'legs').map(({ worldFromPart }) => (worldFromPart?.[7] ?? 0) * 1000);
  expect(Math.min(...shins.map((height) => Math.abs(height - knee)))).toBeLessThan(15);
  // In a shirt, arms hanging a little away from the body: the breadth over the upper arms near the shoulder.
  const shoulders = boxOf(
    named(posed('stand'), 'arms').filter(
      ({ worldFromPart }) => (worldFromPart?.[7] ?? 0) > who.statureMetres * 0.75,
    ),
  );
  expect(shoulders.width * 1000).toBeGreaterThan(bideltoid - 10);
  expect(shoulders.width * 1000).toBeLessThan(bideltoid + 60);
  const [skull] = named(posed('stand'), 'head');
  expect(boxOf([skull]).width * 1000).toBeGreaterThan(headBreadth);
});
