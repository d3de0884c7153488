import { describe, expect, test } from 'vitest';
import { colourOfKelvin } from '../../../src/scene/light/kelvin';
import { exposureOf } from '../../../src/scene/picture/exposure';
import { smallRoof } from '../../unit/smallRoof';

/** Chromaticity of linear sRGB light, by the matrix of IEC 61966-2-1 to XYZ. From memory. */
function chromaticity([r, g, b]: readonly [number, number, number]): readonly [x: number, y: number] {
  const x = 0.4124564 * r + 0.3575761 * g + 0.1804375 * b;
  const y = 0.2126729 * r + 0.7151522 * g + 0.072175 * b;
  const z = 0.0193339 * r + 0.119192 * g + 0.9503041 * b;
  return [x / (x + y + z), y / (x + y + z)];
}

/** CIE 1931, 2°: the Planckian locus as it is tabled; 2856 K is illuminant A. From memory. */
const LOCUS = [
  [2500, 0.477, 0.4137],
  [2856, 0.4476, 0.4074],
  [3500, 0.4053, 0.3907],
  [4000, 0.3805, 0.3768],
  [5000, 0.3451, 0.3516],
  [6500, 0.3135, 0.3237],
  [10000, 0.2807, 0.2884],
] as const;

test.each(LOCUS)('the white of a full radiator of %i K lies on the locus', (kelvin, x, y) => {
  const [ours, other] = chromaticity(colourOfKelvin(kelvin));
  expect(Math.abs(ours - x)).toBeLessThan(0.0015);
  expect(Math.abs(other - y)).toBeLessThan(0.0015);
});

/** Linear sRGB light of a chromaticity, of luminance 1, by the inverse that the same standard prints. From memory. */
function linear(x: number, y: number): readonly [number, number, number] {
  const [bigX, bigZ] = [x / y, (1 - x - y) / y];
  return [
    3.2406 * bigX - 1.5372 - 0.4986 * bigZ,
    -0.9689 * bigX + 1.8758 + 0.0415 * bigZ,
    0.0557 * bigX - 0.204 + 1.057 * bigZ,
  ];
}

describe('the gains of a balance', () => {
  const setup = smallRoof().setups[0];
  const through = (light: readonly [number, number, number], balanceKelvin: number) => {
    const { gains } = exposureOf({ ...setup, balanceKelvin });
    return light.map((channel, k) => channel * gains[k]);
  };

  test.each(LOCUS)('make neutral what a lamp of %i K gives by the table', (kelvin, x, y) => {
    for (const channel of through(linear(x, y), kelvin)) expect(Math.abs(channel - 1)).toBeLessThan(0.03);
  });

  test('leave daylight blue by tungsten, and tungsten orange by daylight', () => {
    const [, tungsten, , , , daylight] = LOCUS;
    const cold = through(linear(daylight[1], daylight[2]), tungsten[0]);
    const warm = through(linear(tungsten[1], tungsten[2]), daylight[0]);
    const ratio = (light: readonly number[]): number => light[2] / light[0];
    const [white, lamp] = [linear(daylight[1], daylight[2]), linear(tungsten[1], tungsten[2])].map(ratio);
    expect(ratio(cold) / (white / lamp)).toBeCloseTo(1, 1);
    expect(ratio(warm) / (lamp / white)).toBeCloseTo(1, 1);
    expect(ratio(cold)).toBeGreaterThan(4);
  });
});
