import { afterAll, expect, test } from 'vitest';
import { angleDegrees, extraction } from '../../../src/core/optics/gate';

/** Most that an angle may differ from the table, degrees: the table prints four decimals. */
const CEILING_DEGREES = 5e-4;

/** Gate, focal length and squeeze, and the angles that cv2.calibrationMatrixValues gives: OpenCV 4.6.0 for Python. */
const CALIBRATION_MATRIX_VALUES: readonly {
  readonly gateMm: readonly [number, number];
  readonly focalMm: number;
  readonly squeeze: number;
  readonly horizontal: number;
  readonly vertical: number;
}[] = [
  { gateMm: [24.89, 18.66], focalMm: 35, squeeze: 1, horizontal: 39.1479, vertical: 29.8526 },
  { gateMm: [24.92, 14.02], focalMm: 25, squeeze: 1, horizontal: 52.9833, vertical: 31.327 },
  { gateMm: [36, 24], focalMm: 50, squeeze: 1, horizontal: 39.5978, vertical: 26.9915 },
  { gateMm: [12.52, 7.41], focalMm: 12, squeeze: 1, horizontal: 55.0991, vertical: 34.3161 },
  { gateMm: [17.3, 13], focalMm: 25, squeeze: 1, horizontal: 38.1712, vertical: 29.1484 },
  { gateMm: [21.95, 18.6], focalMm: 50, squeeze: 2, horizontal: 47.4029, vertical: 21.0732 },
  { gateMm: [36, 24], focalMm: 24, squeeze: 1, horizontal: 73.7398, vertical: 53.1301 },
  { gateMm: [24.89, 18.66], focalMm: 75, squeeze: 1, horizontal: 18.8429, vertical: 14.1823 },
  { gateMm: [12.52, 7.41], focalMm: 8, squeeze: 1, horizontal: 76.0864, vertical: 49.7001 },
  { gateMm: [36, 24], focalMm: 85, squeeze: 1, horizontal: 23.9132, vertical: 16.0714 },
];

let rows = 0;
let largest = 0;

test.each(CALIBRATION_MATRIX_VALUES)(
  'the whole gate $gateMm at $focalMm mm, squeeze $squeeze, sees $horizontal by $vertical degrees',
  ({ gateMm, focalMm, squeeze, horizontal, vertical }) => {
    rows += 1;
    const whole = extraction(gateMm, focalMm, squeeze, (squeeze * gateMm[0]) / gateMm[1]);
    for (const [found, expected] of [
      [angleDegrees(whole.tanHalfWidth), horizontal],
      [angleDegrees(whole.tanHalfHeight), vertical],
    ]) {
      largest = Math.max(largest, Math.abs(found - expected));
      expect(Math.abs(found - expected)).toBeLessThanOrEqual(CEILING_DEGREES);
    }
  },
);

test('every row of the table was held against', () => {
  expect(rows).toBe(10);
});

afterAll(() => console.log(`angles against OpenCV 4.6.0: largest difference ${largest.toExponential(1)}°`));
