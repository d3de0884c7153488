import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pieceParts } from '../../../../src/core/form/pieces';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import { isSound, openEdges, SHEETS, signedVolume } from '../solids';
import { ROOFTOP, SKYLINE } from './rooftop';

const GROUND = { surface: 'concrete', wetness: 'dry' } as const;

/** A copy of a record in which each measure is another, within a range that such a thing may well have. */
function resized(piece: Piece, factors: readonly number[]): Piece {
  let next = 0;
  const scaled = (key: string, value: unknown): unknown => {
    if (typeof value === 'number' && /Metres$|^size$/.test(key)) {
      next += 1;
      return value * factors[next % factors.length];
    }
    if (Array.isArray(value)) return value.map((entry) => (key === 'size' ? scaled(key, entry) : entry));
    if (value && typeof value === 'object')
      return Object.fromEntries(Object.entries(value).map(([inner, entry]) => [inner, scaled(inner, entry)]));
    return value;
  };
  return scaled('', piece) as Piece;
}

const one = [...new Map([...ROOFTOP, ...SKYLINE].map((piece) => [piece.kind, piece])).values()];

test.each(one.map((piece) => [piece.kind, piece] as const))('a %s of any size is closed', (_, piece) => {
  const factor = fc.double({ min: 0.25, max: 6, noNaN: true });
  fc.assert(
    fc.property(fc.array(factor, { minLength: 6, maxLength: 6 }), (factors) => {
      for (const { name, shape } of pieceParts(resized(piece, factors), GROUND)) {
        expect(isSound(shape), name).toBe(true);
        if (SHEETS.test(name)) continue;
        expect(openEdges(shape), name).toEqual([]);
        expect(signedVolume(shape), name).toBeGreaterThan(0);
      }
    }),
    { numRuns: 60 },
  );
});
