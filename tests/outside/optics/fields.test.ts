import { expect, test } from 'vitest';
import { gateFormat } from '../../../src/core/kit/formats';
import { extraction, fieldAt } from '../../../src/core/optics/gate';

type Pair = readonly [number, number];

const HANDBOOK =
  'jukolart.us lens angle and field of view (handbook text copy): tan(half) = (A/2 × squeeze)/f; the number is arithmetic on it';

/** Width and height of the field, metres, at a distance from the entrance pupil. */
const FIELDS: readonly {
  readonly gateMm: Pair;
  readonly focalMm: number;
  readonly metres: number;
  readonly field: Pair;
  readonly ceilingMetres: number;
  readonly from: string;
}[] = [
  {
    gateMm: [24.89, 18.66],
    focalMm: 50,
    metres: 3,
    field: [1.493, 1.12],
    ceilingMetres: 0.002,
    from: HANDBOOK,
  },
  { gateMm: [36, 24], focalMm: 35, metres: 4, field: [4.114, 2.743], ceilingMetres: 0.002, from: HANDBOOK },
  {
    gateMm: [12.52, 7.41],
    focalMm: 25,
    metres: 2,
    field: [1.002, 0.593],
    ceilingMetres: 0.001,
    from: HANDBOOK,
  },
  {
    gateMm: [24.89, 18.66],
    focalMm: 25,
    metres: 6,
    field: [5.974, 4.478],
    ceilingMetres: 0.003,
    from: HANDBOOK,
  },
];

const wholeGate = (gateMm: Pair, focalMm: number, squeeze = 1) =>
  extraction(gateMm, focalMm, squeeze, (squeeze * gateMm[0]) / gateMm[1]);

let rows = 0;

test.each(FIELDS)('$gateMm at $focalMm mm takes in $field m at $metres m', (row) => {
  rows += 1;
  const { tanHalfWidth, tanHalfHeight } = wholeGate(row.gateMm, row.focalMm);
  expect(Math.abs(fieldAt(tanHalfWidth, row.metres) - row.field[0])).toBeLessThanOrEqual(row.ceilingMetres);
  expect(Math.abs(fieldAt(tanHalfHeight, row.metres) - row.field[1])).toBeLessThanOrEqual(row.ceilingMetres);
});

test('a squeeze of 2 doubles the width of the field and leaves its height (the same handbook, exact)', () => {
  rows += 1;
  for (const [gateMm, focalMm] of [
    [[22, 18.59], 50],
    [[36, 24], 35],
  ] as const) {
    const spherical = wholeGate(gateMm, focalMm);
    const squeezed = wholeGate(gateMm, focalMm, 2);
    expect(fieldAt(squeezed.tanHalfWidth, 7)).toBe(2 * fieldAt(spherical.tanHalfWidth, 7));
    expect(fieldAt(squeezed.tanHalfHeight, 7)).toBe(fieldAt(spherical.tanHalfHeight, 7));
  }
});

test('50 degrees across 36 mm asks for a lens of 38.601 mm (the definition, f = w/(2 tan(a/2)))', () => {
  rows += 1;
  const perMillimetre = wholeGate([36, 24], 1).tanHalfWidth;
  expect(Math.abs(perMillimetre / Math.tan((25 * Math.PI) / 180) - 38.601)).toBeLessThanOrEqual(0.001);
});

test('the 4-perf anamorphic gate unsqueezes to 2.367, whole (22.00 × 18.59 mm, twice; arithmetic)', () => {
  rows += 1;
  const gateMm = gateFormat('anamorphic-35')?.gateMm ?? [0, 0];
  const { usedMm, tanHalfWidth, tanHalfHeight } = extraction(gateMm, 50, 2, 2.367);
  expect(Math.abs(tanHalfWidth / tanHalfHeight - 2.367)).toBeLessThanOrEqual(0.002);
  expect(Math.abs(usedMm[0] - 22)).toBeLessThanOrEqual(0.02);
  expect(Math.abs(usedMm[1] - 18.59)).toBeLessThanOrEqual(0.02);
});

test('the anamorphic projector aperture unsqueezes to 2.390 (ISO 2907:2002 style B, 20.95 × 17.53 mm; arithmetic)', () => {
  rows += 1;
  const { tanHalfWidth, tanHalfHeight } = wholeGate([20.95, 17.53], 50, 2);
  expect(Math.abs(tanHalfWidth / tanHalfHeight - 2.39)).toBeLessThanOrEqual(0.002);
});

test('36 × 24 through a squeeze of 1.6, sides cropped to 2.39, uses 35.85 mm of the width (arithmetic)', () => {
  rows += 1;
  const { usedMm } = extraction([36, 24], 40, 1.6, 2.39);
  expect(Math.abs(usedMm[0] - 35.85)).toBeLessThanOrEqual(0.01);
  expect(usedMm[1]).toBe(24);
});

/** Full aperture, 24.892 mm wide (0.980 in, Practical Cinematography 2e, ch. 20), cropped: height in mm, arithmetic. */
const CROPPED: readonly { readonly name: string; readonly aspect: number; readonly heightMm: number }[] = [
  { name: '2.39', aspect: 2.39, heightMm: 10.415 },
  { name: '1.85', aspect: 1.85, heightMm: 13.455 },
  { name: '16:9', aspect: 16 / 9, heightMm: 14.002 },
];

test.each(CROPPED)('full aperture cropped to $name is $heightMm mm high', ({ aspect, heightMm }) => {
  rows += 1;
  const gateMm = gateFormat('full-aperture-35')?.gateMm ?? [0, 0];
  const { usedMm } = extraction(gateMm, 50, 1, aspect);
  expect(usedMm[0]).toBe(gateMm[0]);
  expect(Math.abs(usedMm[1] - heightMm)).toBeLessThanOrEqual(0.005);
});

test('every row of the tables was held against', () => {
  expect(rows).toBe(12);
});
