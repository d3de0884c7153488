import { expect, test } from 'vitest';
import type { Distribution } from '../../../../src/core/plan/schema/distribution';
import { spreadText } from '../../../../src/desk/photometry/words';
import { POLAR_RADIUS, polarOf, polarPlace, ringStep } from '../../../../src/screens/sheet/photometry/polar';
import { plotSentence } from '../../../../src/screens/sheet/photometry/words';

const AXIAL: Distribution = {
  verticalDegrees: [0, 30, 60, 90],
  horizontalDegrees: [0],
  candela: [[800, 600, 200, 0]],
  source: 'a.ies',
};
/** Half as wide up and down as across. */
const FLAT: Distribution = {
  verticalDegrees: [0, 20, 40, 120],
  horizontalDegrees: [0, 90],
  candela: [
    [1000, 1000, 500, 0],
    [1000, 500, 0, 0],
  ],
  source: 'b.ies',
};

test.each([
  [800, 200],
  [269, 100],
  [1000, 500],
  [45_000, 20_000],
  [3.2, 1],
  [0.05, 0.02],
])('a peak of %d cd has rings every %d', (peak, step) => {
  expect(ringStep(peak)).toBeCloseTo(step, 12);
  const count = Math.ceil(peak / step - 1e-9);
  expect(count).toBeGreaterThanOrEqual(2);
  expect(count).toBeLessThanOrEqual(4);
});

test('the axis runs down the sheet, right to the right', () => {
  const [x, y] = polarPlace(1, 90, 10);
  expect([x, y].map(Math.round)).toEqual([10, 0]);
  expect(polarPlace(-1, 0, 10)[1]).toBe(10);
});

test('a curve passes its peak on the axis at its own ring', () => {
  const { rings, halves, isRound } = polarOf(AXIAL);
  expect(rings.map(({ candela }) => candela)).toEqual([200, 400, 600, 800]);
  expect(rings.at(-1)?.radius).toBeCloseTo(POLAR_RADIUS, 9);
  expect(halves[0].curves[0]).toMatch(/^M0\.0 116\.0L.*L0 0$/);
  expect(halves[0].curves).toHaveLength(1);
  expect(isRound).toBe(false);
});

test('the right half is across and the left up and down, with the angles of each', () => {
  const { halves, isRound } = polarOf(FLAT);
  expect(halves.map(({ beamDegrees }) => beamDegrees)).toEqual([40, 20]);
  expect(isRound).toBe(false);
  expect(spreadText(FLAT, 0.5)).toBe('80.0° by 40.0°');
  expect(spreadText(AXIAL, 0.5)).toBe('90.0°');
});

test('who does not see the plot hears it', () => {
  expect(plotSentence(AXIAL)).toBe(
    'Candela by the angle off the axis: 800 along it, 800 at most; beam 90.0°, field 156.0°.',
  );
});
