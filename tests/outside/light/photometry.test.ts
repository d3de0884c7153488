import { describe, expect, test } from 'vitest';
import { beamShare, fluxLumens, lumensOf } from '../../../src/core/form/beam';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { illuminance } from '../../../src/core/light/illuminance';
import { lightScene } from '../../../src/core/light/lightScene';
import { darkRoof, LAMPS, lampAt } from '../../plans/darkRoof';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Lux of one lamp at the origin that looks along −z, on a surface at a place. */
function luxOf(lamp: string, point: Vec3, normal: Vec3): number {
  const scene = lightScene(darkRoof({ gear: [lampAt('a', lamp, [0, 0, 0], [0, 0, -1])] }), null, 0);
  return illuminance(scene, point, normal).shares[0]?.lux ?? 0;
}

/** Candela of a measured axial lamp, every 2.5° from 0° to 90°. Source: [axial-candela] */
const MEASURED = [
  269, 268, 266, 264, 260, 256, 251, 245, 237, 229, 221, 211, 200, 189, 177, 165, 152, 140, 127, 114, 102, 90,
  79, 68, 58, 48, 39, 31, 24, 17, 12, 8, 6, 4, 3, 1, 0,
];
function measuredAt(degrees: number): number {
  const at = degrees / 2.5;
  if (at >= MEASURED.length - 1) return 0;
  const k = Math.floor(at);
  return MEASURED[k] + (MEASURED[k + 1] - MEASURED[k]) * (at - k);
}
/** The full angle at which a share of the peak is left, by straight lines between the table's rows. */
function fullAngleAt(share: number): number {
  const wanted = MEASURED[0] * share;
  const k = MEASURED.findIndex((candela) => candela < wanted);
  return 2 * 2.5 * (k - 1 + (MEASURED[k - 1] - wanted) / (MEASURED[k - 1] - MEASURED[k]));
}

describe('lumens', () => {
  test('of a measured lamp come to what its test report says: 532 lm', () => {
    // The report's own sum; by straight lines between its rows 531.80.
    expect(lumensOf(measuredAt) / 532).toBeCloseTo(1, 2);
    expect(lumensOf(measuredAt)).toBeCloseTo(531.8, 0);
  });

  test('of a uniform cone of half angle 30°: 1,000 lm are 1,187.95 cd over 0.8418 sr', () => {
    const cone = lumensOf((degrees) => (degrees < 30 ? 1187.95 : 0));
    expect(cone / 1000).toBeCloseTo(1, 3);
  });

  test('of 1,000 cd times the cosine: π times a thousand', () => {
    expect(
      lumensOf((degrees) => Math.max(0, 1000 * Math.cos(radians(degrees)))) / (1000 * Math.PI),
    ).toBeCloseTo(1, 4);
  });

  test('of a bare bulb: 4π times its candela', () => {
    expect(fluxLumens({ peakCandela: 65, beamDegrees: 360, fieldDegrees: 360 })).toBeCloseTo(
      260 * Math.PI,
      9,
    );
  });
});

test('a lamp published by beam and field has a half and a tenth there, and about its lumens', () => {
  // 50 % and 10 % of the largest, full angles. Source: [beam-angle]
  const [beam, field] = [fullAngleAt(0.5), fullAngleAt(0.1)];
  expect(beam).toBeCloseTo(87.1, 0);
  expect(field).toBeCloseTo(137.9, 0);
  const at = (degrees: number) => beamShare(beam, field, Math.cos(radians(degrees)));
  expect(at(beam / 2)).toBeCloseTo(0.5, 9);
  expect(at(field / 2)).toBeCloseTo(0.1, 9);
  // The curve between the two is ours: it meets the measured lamp's lumens within 4 %.
  const published = { peakCandela: 269, beamDegrees: beam, fieldDegrees: field };
  expect(Math.abs(fluxLumens(published) / 532 - 1)).toBeLessThan(0.04);
});

describe('lux', () => {
  test('10,000 cd at 5 m: 400 lx facing it, 200 lx at 60°', () => {
    expect(luxOf('point', [0, 0, -5], [0, 0, 1])).toBeCloseTo(400, 2);
    expect(luxOf('point', [0, 0, -5], [Math.sin(radians(60)), 0, Math.cos(radians(60))])).toBeCloseTo(200, 2);
  });

  test('falls with the square of the way: backing off from 3 m to 4.2 m costs one stop', () => {
    // Common practice, no source: the steps of the stop ring are the steps of the tape.
    const stops = Math.log2(luxOf('point', [0, 0, -3], [0, 0, 1]) / luxOf('point', [0, 0, -4.2], [0, 0, 1]));
    expect(stops).toBeCloseTo(1, 1);
    expect(luxOf('spot', [0, 0, -8], [0, 0, 1]) / luxOf('spot', [0, 0, -4], [0, 0, 1])).toBeCloseTo(0.25, 3);
  });

  test('is a half at the edge of the beam and a tenth at the edge of the field', () => {
    const at = (degrees: number): number => {
      const way: Vec3 = [Math.sin(radians(degrees)), 0, -Math.cos(radians(degrees))];
      return luxOf('point', [way[0] * 5, 0, way[2] * 5], [-way[0], 0, -way[2]]);
    };
    expect(at(20)).toBeCloseTo(200, 2);
    expect(at(30)).toBeCloseTo(40, 2);
  });

  test('of a bare bulb is the same all round, but for its own size', () => {
    expect(LAMPS.find(({ id }) => id === 'bulb')?.fieldDegrees).toBe(360);
    for (const way of [
      [1, 0, 0],
      [0, 0, 1],
      [0, 1, 0],
      [0, 0, -1],
    ] as const)
      expect(luxOf('bulb', [way[0] * 5, way[1] * 5, way[2] * 5], [-way[0], -way[1], -way[2]])).toBeCloseTo(
        400,
        1,
      );
  });

  test('goes to nothing behind a flat face', () => {
    expect(luxOf('panel', [0, 0, 3], [0, 0, -1])).toBe(0);
  });
});
