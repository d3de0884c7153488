import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anchorsOf, type TapedSet, tapedSets } from '../../../src/core/form/tape/tape';
import { stairHouseAt, standAt, tapedRoof } from '../../plans/taped';
import { cases } from '../../thorough';

const share = fc.integer({ min: 0, max: 1000 }).map((value) => value / 1000);

const roofs = fc.record({
  width: fc.integer({ min: 8, max: 40 }),
  depth: fc.integer({ min: 8, max: 40 }),
  northDegrees: fc.integer({ min: -180, max: 180 }),
  houses: fc.array(fc.tuple(share, share, fc.integer({ min: -180, max: 180 }), share), { maxLength: 3 }),
  posts: fc.array(fc.tuple(share, share), { maxLength: 4 }),
  stand: fc.tuple(share, share),
});

type Roof = typeof roofs extends fc.Arbitrary<infer Value> ? Value : never;

function planOf({ width, depth, northDegrees, houses, posts, stand }: Roof) {
  const within = ([x, z]: readonly [number, number], margin: number): [number, number] => [
    (x - 0.5) * (width - margin),
    (z - 0.5) * (depth - margin),
  ];
  return tapedRoof({
    width,
    depth,
    northDegrees,
    pieces: [
      ...houses.map(([x, z, headingDegrees, size], k) =>
        stairHouseAt(`house-${k}`, within([x, z], 3), { width: 1 + 2 * size, depth: 1.5, headingDegrees }),
      ),
      ...posts.map((at, k) => {
        const [x, z] = within(at, 3);
        return {
          id: `post-${k}`,
          label: `Post ${k + 1}`,
          kind: 'post',
          at: [x, 0, z],
          headingDegrees: 0,
          heightMetres: 2,
          diameterMetres: 0.05,
          armMetres: 0,
        };
      }),
    ],
    gear: [standAt('stand', within(stand, 2))],
  });
}

/** The place that somebody finds with two tapes read to the centimetre and the word of the side: by plain trigonometry. */
function foundBy({ tapes: [one, other], side }: TapedSet): { x: number; z: number } {
  const [a, b] = [one.from, other.from];
  const [p, q] = [one.metres, other.metres].map((metres) => Math.round(metres * 100) / 100);
  const base = Math.hypot(b.x - a.x, b.z - a.z);
  const along = (p * p - q * q + base * base) / (2 * base);
  const off = Math.sqrt(Math.max(0, p * p - along * along));
  const [ux, uz] = [(b.x - a.x) / base, (b.z - a.z) / base];
  const isLeft = ux * (side.towards.z - a.z) - uz * (side.towards.x - a.x) > 0;
  const sign = isLeft ? 1 : -1;
  return { x: a.x + ux * along - uz * off * sign, z: a.z + uz * along + ux * off * sign };
}

test('two tapes read to the centimetre and the side give the place back within 2 cm', () => {
  let square = 0;
  fc.assert(
    fc.property(roofs, (roof) => {
      for (const set of tapedSets(planOf(roof), 'stand')) {
        const { x, z } = foundBy(set);
        const off = Math.hypot(x - set.at.x, z - set.at.z);
        // Half a centimetre from rounding each, against a whole one in `withinMetres`; a hair for the arcs' bend.
        expect(off).toBeLessThanOrEqual(set.withinMetres / 2 + 0.0005);
        if (set.crossingDegrees >= 30 && set.crossingDegrees <= 150) {
          expect(off).toBeLessThanOrEqual(0.02);
          square += 1;
        }
      }
    }),
    { numRuns: cases(600) },
  );
  expect(square).toBeGreaterThan(cases(600) / 2);
});

test('corners have words of their own, and no tape runs through a stair house', () => {
  fc.assert(
    fc.property(roofs, (roof) => {
      const plan = planOf(roof);
      const labels = anchorsOf(plan).map(({ label }) => label);
      expect(new Set(labels).size).toBe(labels.length);
      for (const { tapes, at } of tapedSets(plan, 'stand'))
        for (const { from } of tapes)
          for (const piece of plan.pieces) {
            if (piece.kind !== 'stair house') continue;
            const turn = (piece.headingDegrees * Math.PI) / 180;
            const depthIn = (x: number, z: number): number => {
              const [dx, dz] = [x - piece.at[0], z - piece.at[2]];
              const [right, back] = [
                dx * Math.cos(turn) + dz * Math.sin(turn),
                dz * Math.cos(turn) - dx * Math.sin(turn),
              ];
              return Math.min(piece.size[0] / 2 - Math.abs(right), piece.size[2] / 2 - Math.abs(back));
            };
            if (depthIn(at.x, at.z) >= 0) continue;
            for (let k = 1; k < 100; k += 1) {
              const [x, z] = [from.x + ((at.x - from.x) * k) / 100, from.z + ((at.z - from.z) * k) / 100];
              expect(depthIn(x, z)).toBeLessThan(0.01);
            }
          }
    }),
    { numRuns: cases(300) },
  );
});
