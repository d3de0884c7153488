import fc from 'fast-check';
import { expect, test } from 'vitest';
import { surfaceUnder, topAt } from '../../../src/core/plan/surfaces';
import { boundsOf, mayMeet } from '../../../src/core/plan/walkWays/planar';
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
