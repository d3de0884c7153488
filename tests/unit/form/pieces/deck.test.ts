import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pieceParts } from '../../../../src/core/form/pieces';
import { signedArea, tidyOutline, triangulate } from '../../../../src/core/form/pieces/making/triangulate';
import { areaFromAbove, openEdges, partNamed, signedVolume } from '../solids';

type Outline = [number, number][];
const deckOf = (outline: Outline) =>
  pieceParts(
    { id: 'd', label: 'Roof', kind: 'deck', outline, topMetres: 2, dropMetres: 5 },
    { surface: 'tile', wetness: 'dry' },
  );

const OUTLINES: readonly (readonly [string, Outline])[] = [
  [
    'an L',
    [
      [0, 0],
      [6, 0],
      [6, 2],
      [2, 2],
      [2, 5],
      [0, 5],
    ],
  ],
  [
    'a court open to one side',
    [
      [0, 0],
      [9, 0],
      [9, 7],
      [6, 7],
      [6, 3],
      [3, 3],
      [3, 7],
      [0, 7],
    ],
  ],
  [
    'a comb',
    [
      [0, 0],
      [10, 0],
      [10, 6],
      [9, 1],
      [8, 6],
      [7, 1],
      [6, 6],
      [5, 1],
      [4, 6],
      [3, 1],
      [2, 6],
      [1, 1],
    ],
  ],
  [
    'a square with corners in its straight sides',
    [
      [0, 0],
      [2, 0],
      [4, 0],
      [4, 2],
      [4, 4],
      [2, 4],
      [0, 4],
      [0, 2],
    ],
  ],
  [
    'an arrow',
    [
      [0, 0],
      [5, 2],
      [0, 4],
      [1, 2],
    ],
  ],
];

describe.each(OUTLINES)('the deck of %s', (_, outline) => {
  test.each([
    ['as drawn', outline],
    ['drawn the other way round', outline.toReversed()],
    ['with a corner drawn twice', [outline[0], ...outline]],
  ])('%s has the area of the shoelace formula and closed walls', (_, path) => {
    const area = Math.abs(signedArea(outline));
    const parts = deckOf(path);
    expect(areaFromAbove(partNamed(parts, 'top'))).toBeCloseTo(area, 4);
    const walls = partNamed(parts, 'walls');
    expect(openEdges(walls)).toEqual([]);
    expect(signedVolume(walls)).toBeCloseTo(area * 4.98, 3);
  });

  test('is cut into triangles that turn one way and fill it, from whichever corner one starts', () => {
    outline.forEach((_, start) => {
      const corners = tidyOutline([...outline.slice(start), ...outline.slice(0, start)]);
      const sizes = triangulate(corners).map((triangle) => signedArea(triangle.map((k) => corners[k])));
      expect(sizes).toHaveLength(corners.length - 2);
      expect(Math.min(...sizes)).toBeGreaterThan(0);
      expect(sizes.reduce((sum, size) => sum + size, 0)).toBeCloseTo(signedArea(corners), 9);
    });
  });
});

test('any star-shaped outline is filled exactly', () => {
  const radii = fc.array(fc.double({ min: 0.5, max: 20, noNaN: true }), { minLength: 3, maxLength: 60 });
  fc.assert(
    fc.property(radii, fc.boolean(), (lengths, backwards) => {
      const outline = lengths.map((radius, k): [number, number] => {
        const turn = (2 * Math.PI * k) / lengths.length;
        return [radius * Math.cos(turn), radius * Math.sin(turn)];
      });
      const area = signedArea(outline);
      const parts = deckOf(backwards ? outline.toReversed() : outline);
      const found = areaFromAbove(partNamed(parts, 'top'));
      expect(Math.abs(found - area)).toBeLessThan(area * 1e-5);
      expect(openEdges(partNamed(parts, 'walls'))).toEqual([]);
    }),
    { numRuns: 200 },
  );
});
