import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fluxLumens } from '../../../src/core/form/beam';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { illuminance } from '../../../src/core/light/illuminance';
import { lightScene } from '../../../src/core/light/lightScene';
import type { HeadClass } from '../../../src/core/plan/schema/kit';
import { darkRoof, LAMPS, lampAt, lampKit } from '../../plans/darkRoof';

const BANDS = 60;
const AROUND = 12;

/** The lumens that land on a sphere of so many metres round the origin: lux by area, over bands about the lamp's axis. */
function lumensOnSphere(head: HeadClass, metres: number): number {
  const gear = [lampAt('lamp', head.id, [0, 0, 0], [0, 0, -1], [head])];
  const scene = lightScene(darkRoof({ kit: lampKit([head]), gear }), null, 0);
  let lumens = 0;
  for (let band = 0; band < BANDS; band += 1) {
    const angle = ((band + 0.5) / BANDS) * Math.PI;
    const area =
      (2 *
        Math.PI *
        metres ** 2 *
        (Math.cos((band / BANDS) * Math.PI) - Math.cos(((band + 1) / BANDS) * Math.PI))) /
      AROUND;
    for (let turn = 0; turn < AROUND; turn += 1) {
      const round = (turn / AROUND) * 2 * Math.PI;
      const way: Vec3 = [
        Math.sin(angle) * Math.cos(round),
        Math.sin(angle) * Math.sin(round),
        -Math.cos(angle),
      ];
      const point: Vec3 = [way[0] * metres, way[1] * metres, way[2] * metres];
      const { shares } = illuminance(scene, point, [-way[0], -way[1], -way[2]]);
      lumens += (shares[0]?.lux ?? 0) * area;
    }
  }
  return lumens;
}

test('all that a lamp gives lands on a sphere around it, whatever its beam, face and distance, within 0.5 %', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 25, max: 120 }),
      fc.integer({ min: 15, max: 48 }),
      fc.constantFrom('spot' as const, 'panel' as const),
      fc.double({ min: 2, max: 9, noNaN: true }),
      (beamDegrees, wider, form, metres) => {
        const head: HeadClass = {
          ...LAMPS[0],
          id: 'any',
          form,
          size: [0.3, 0.3, 0.2],
          beamDegrees,
          fieldDegrees: beamDegrees + wider,
        };
        // The integral itself, by the same bands: what is left is the lamp's size and nothing else.
        const inBands = lumensOnSphere({ ...head, size: [0.02, 0.02, 0.02] }, 40);
        expect(inBands / fluxLumens(head)).toBeCloseTo(1, 2);
        expect(Math.abs(lumensOnSphere(head, metres) / inBands - 1)).toBeLessThan(0.005);
      },
    ),
    { numRuns: 12 },
  );
});
