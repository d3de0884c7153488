import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { illuminance } from '../../../src/core/light/illuminance';
import { lightScene } from '../../../src/core/light/lightScene';
import { darkRoof, flagAt, LAMPS, lampAt, lampKit } from '../../plans/darkRoof';
import { cases } from '../../thorough';

const POINT = { ...LAMPS[0], id: 'tiny', size: [0.001, 0.001, 0.001] as [number, number, number] };
/** What a net's wire or tubing takes up at its edge, and then some, metres: nothing is said of what falls there. */
const EDGE_METRES = 0.04;

const net = fc.record({
  x: fc.double({ min: -1, max: 1, noNaN: true }),
  y: fc.double({ min: 1, max: 3, noNaN: true }),
  z: fc.double({ min: -7, max: -1, noNaN: true }),
  width: fc.double({ min: 0.5, max: 2.4, noNaN: true }),
  height: fc.double({ min: 0.5, max: 2.4, noNaN: true }),
  transmission: fc.double({ min: 0.01, max: 0.95, noNaN: true }),
});

test('behind any nets a small lamp gives what is left of it by each that the straight way crosses', () => {
  fc.assert(
    fc.property(
      fc.array(net, { minLength: 1, maxLength: 5 }),
      fc.double({ min: -1.5, max: 1.5, noNaN: true }),
      fc.double({ min: 1, max: 3, noNaN: true }),
      (nets, x, y) => {
        const place: Vec3 = [x, y, -8];
        const lamp = lampAt('lamp', 'tiny', [0, 2, 0], [0, 0, -1], [POINT]);
        const scene = lightScene(
          darkRoof({
            kit: lampKit([POINT]),
            gear: [
              lamp,
              ...nets.map((each, k) =>
                flagAt(`net-${k}`, [each.x, each.y, each.z], [each.width, each.height], each.transmission),
              ),
            ],
          }),
          null,
          0,
        );
        let share = 1;
        for (const each of nets) {
          // By similar triangles, in the net's own plane.
          const along = each.z / -8;
          const inside = [
            each.width / 2 - Math.abs(x * along - each.x),
            each.height / 2 - Math.abs(2 + (y - 2) * along - each.y),
          ];
          fc.pre(inside.every((metres) => Math.abs(metres) > EDGE_METRES));
          if (inside.every((metres) => metres > 0)) share *= each.transmission;
        }
        const [found] = illuminance(scene, place, [0, 0, 1]).shares;
        expect(found?.visible).toBeCloseTo(share, 9);
      },
    ),
    { numRuns: cases(300) },
  );
});
