import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import { surfaceUnder, topAt } from '../../../src/core/plan/surfaces';
import { between, boundsOf, fromPiece, mayMeet, piecesApart } from '../../../src/core/plan/walkWays/planar';
import { Squares } from '../../../src/core/plan/walkWays/squares';
import { crowdedPlan } from '../../plans/crowd';
import { cases } from '../../thorough';

const metres = fc.oneof(fc.integer({ min: -40, max: 40 }), fc.double({ min: -40, max: 40, noNaN: true }));
const spot = fc.tuple(metres, metres);

test('whatever may meet a straight piece is asked, and in the end all that is not far', () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(spot, { minLength: 1, maxLength: 3 }), { maxLength: 40 }),
      spot,
      spot,
      fc.constantFrom(0, 0.3, 5, 90),
      (outlines, a, b, by) => {
        const things = outlines.map((outline) => ({ bounds: boundsOf(outline) }));
        const asked = new Set<object>();
        new Squares(things).every(a, b, by, (thing) => asked.add(thing).size > 0);
        const wanted = things.filter(({ bounds }) => {
          // A straight piece may pass by the corner of the rectangle around it: only what it comes near counts.
          const steps = Array.from({ length: 201 }, (_, k): [number, number] => [
            a[0] + ((b[0] - a[0]) * k) / 200,
            a[1] + ((b[1] - a[1]) * k) / 200,
          ]);
          return steps.some((at) => mayMeet(at, at, bounds, by));
        });
        expect(wanted.filter((thing) => !asked.has(thing))).toEqual([]);
      },
    ),
    { numRuns: cases(1500) },
  );
});

/** A place in a triangle, by two shares. */
const within = (corners: readonly Spot[], along: number, across: number): Spot => {
  const [a, b, c] = [corners[0], corners[1] ?? corners[0], corners[2] ?? corners[1] ?? corners[0]];
  const edge = between(a, b, along);
  return between(edge, c, across);
};

test('of what is known to cover a part of its bounds, whatever may come near a straight piece is asked', () => {
  const thing = fc.oneof(
    fc.array(spot, { minLength: 1, maxLength: 3 }),
    // As a wall askew over all of a large roof.
    fc.tuple(spot, spot).map(([from, to]): Spot[] => [
      [from[0] * 5, from[1] * 5],
      [to[0] * 5, to[1] * 5],
    ]),
  );
  fc.assert(
    fc.property(
      fc.array(thing, { maxLength: 20 }),
      spot,
      spot,
      fc.constantFrom(0, 0.3, 5, 90),
      (outlines, a, b, by) => {
        const things = outlines.map((outline) => ({ outline, bounds: boundsOf(outline) }));
        const asked = new Set<object>();
        // A hair wider, since distances are rounded.
        new Squares(things).every(a, b, by + 1e-9, (each) => asked.add(each).size > 0);
        const isNear = ({ outline }: { readonly outline: readonly Spot[] }): boolean =>
          Array.from({ length: 81 }, (_, k) => within(outline, (k % 9) / 8, Math.floor(k / 9) / 8)).some(
            (at) => fromPiece(a, b, at) <= by,
          );
        // Where pieces cross, no sample of them need lie in both.
        const meets = ({ outline }: { readonly outline: readonly Spot[] }): boolean =>
          outline.some((corner, k) => piecesApart(a, b, corner, outline[(k + 1) % outline.length]) <= by);
        expect(things.filter((each) => (isNear(each) || meets(each)) && !asked.has(each))).toEqual([]);
      },
    ),
    { numRuns: cases(1500) },
  );
});

test('a question at one place of a large roof is put to few of many long walls askew', () => {
  const walls = Array.from({ length: 200 }, (_, k) => {
    const outline: Spot[] = [
      [-90, k - 100],
      [90, k - 60],
    ];
    return { outline, bounds: boundsOf(outline) };
  });
  const asked = new Set<object>();
  new Squares(walls).every([0, 0], [1, 1], 0, (wall) => asked.add(wall).size > 0);
  expect(asked.size).toBeLessThan(10);
});

test('what is stood on at a place is the highest of all set pieces there, the first of those that are as high', () => {
  const plan = crowdedPlan(400, 1, 7, 0);
  fc.assert(
    fc.property(
      spot,
      fc.option(fc.double({ min: 0, max: 4, noNaN: true }), { nil: undefined }),
      (at, below) => {
        let naive: { metres: number; id: string | null } = { metres: 0, id: null };
        for (const piece of plan.pieces) {
          const top = topAt(piece, at);
          if (top === null || top > (below ?? Number.POSITIVE_INFINITY)) continue;
          if (naive.id === null || top > naive.metres) naive = { metres: top, id: piece.id };
        }
        expect(surfaceUnder(plan, at, below === undefined ? {} : { belowMetres: below })).toEqual(naive);
      },
    ),
    { numRuns: cases(1500) },
  );
});
