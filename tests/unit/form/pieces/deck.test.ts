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

const holed = (outline: Outline, ...holes: Outline[]) =>
  pieceParts(
    {
      id: 'd',
      label: 'Roof',
      kind: 'deck',
      outline,
      holes: holes.map((hole, k) => ({ id: `h${k}`, outline: hole })),
      topMetres: 2,
      dropMetres: 5,
    },
    { surface: 'tile', wetness: 'wet down' },
  );
const rectangle = (x: number, z: number, width: number, depth: number): Outline => [
  [x, z],
  [x + width, z],
  [x + width, z + depth],
  [x, z + depth],
];

describe('holes in a deck', () => {
  const big = rectangle(0, 0, 12, 10);

  test.each([
    ['one', [rectangle(2, 2, 3, 2)], 6],
    ['one drawn the other way round', [rectangle(2, 2, 3, 2).toReversed()], 6],
    [
      'a row on one line',
      [rectangle(1, 2, 1, 1), rectangle(3, 2, 1, 1), rectangle(5, 2, 1, 1), rectangle(7, 2, 1, 1)],
      4,
    ],
    ['a grid', [1, 3, 5, 7].flatMap((x) => [1, 3, 5, 7].map((z) => rectangle(x, z, 1, 1))), 16],
    ['a column on one line', [rectangle(2, 1, 2, 1), rectangle(2, 3, 2, 1), rectangle(2, 5, 2, 3)], 10],
    [
      'an L and a square in its elbow',
      [OUTLINES[0][1].map(([x, z]): [number, number] => [x + 1, z + 1]), rectangle(4, 4, 2, 2)],
      22,
    ],
  ] as const)('%s: what they take is missing of the surface and of the building', (_, holes, taken) => {
    const parts = holed(big, ...holes);
    expect(areaFromAbove(partNamed(parts, 'top'))).toBeCloseTo(120 - taken, 4);
    const walls = partNamed(parts, 'walls');
    expect(openEdges(walls)).toEqual([]);
    // Wells end 0.1 m above the foot, 4.98 m below the top of the walls.
    expect(signedVolume(walls)).toBeCloseTo(120 * 4.98 - taken * 4.88, 3);
    expect(areaFromAbove(walls)).toBeCloseTo(120, 4);
    expect(partNamed(parts, 'top').mirror?.point[1]).toBe(2);
  });

  test('in decks of any shape, from whichever corner one starts', () => {
    for (const [, outline] of OUTLINES) {
      const area = Math.abs(signedArea(outline));
      // A small hole in the middle of the deck's first triangle.
      const corners = tidyOutline(outline);
      const [a, b, c] = triangulate(corners)[0].map((k) => corners[k]);
      const middle = [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3];
      const hole = [a, b, c].map(([x, z]): [number, number] => [
        middle[0] + (x - middle[0]) * 0.3,
        middle[1] + (z - middle[1]) * 0.3,
      ]);
      const taken = Math.abs(signedArea(hole));
      expect(taken).toBeGreaterThan(0.01);
      outline.forEach((_, start) => {
        const parts = holed([...outline.slice(start), ...outline.slice(0, start)], hole);
        expect(areaFromAbove(partNamed(parts, 'top'))).toBeCloseTo(area - taken, 4);
        expect(openEdges(partNamed(parts, 'walls'))).toEqual([]);
      });
    }
  });

  test('that reach the edge, cross themselves or lie in each other are not cut', () => {
    const bow: Outline = [
      [2, 2],
      [4, 4],
      [4, 2],
      [2, 4],
    ];
    for (const bad of [
      rectangle(10, 2, 4, 2),
      rectangle(0, 2, 2, 2),
      rectangle(20, 2, 2, 2),
      bow,
      [
        [1, 1],
        [3, 1],
        [3, 1],
      ] as Outline,
    ]) {
      expect(areaFromAbove(partNamed(holed(big, bad), 'top'))).toBeCloseTo(120, 4);
    }
    for (const second of [
      rectangle(3, 3, 1, 1),
      rectangle(4, 4, 6, 4),
      rectangle(1, 1, 9, 8),
      rectangle(7, 2, 1, 5),
    ]) {
      expect(areaFromAbove(partNamed(holed(big, rectangle(2, 2, 5, 5), second), 'top'))).toBeCloseTo(95, 4);
    }
  });
});

test('any holes that lie apart are cut exactly', () => {
  // One star in each cell of a grid, some cells left whole.
  const star = fc.record({
    is: fc.boolean(),
    radii: fc.array(fc.double({ min: 0.1, max: 0.45, noNaN: true }), { minLength: 3, maxLength: 9 }),
    turn: fc.double({ min: 0, max: 7, noNaN: true }),
    backwards: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(star, { minLength: 12, maxLength: 12 }), (stars) => {
      const holes = stars.flatMap(({ is, radii, turn, backwards }, k): Outline[] => {
        if (!is) return [];
        const [x, z] = [(k % 4) + 1, Math.floor(k / 4) + 1];
        const outline = radii.map((radius, n): [number, number] => {
          const angle = turn + (2 * Math.PI * n) / radii.length;
          return [x + radius * Math.cos(angle), z + radius * Math.sin(angle)];
        });
        return [backwards ? outline.toReversed() : outline];
      });
      const parts = holed(rectangle(0, 0, 5, 4), ...holes);
      const taken = holes.reduce((sum, hole) => sum + Math.abs(signedArea(hole)), 0);
      expect(areaFromAbove(partNamed(parts, 'top'))).toBeCloseTo(20 - taken, 4);
      const walls = partNamed(parts, 'walls');
      expect(openEdges(walls)).toEqual([]);
      expect(signedVolume(walls)).toBeCloseTo(20 * 4.98 - taken * 4.88, 2);
    }),
    { numRuns: 200 },
  );
});

test('holes drawn anyhow leave the building closed', () => {
  const spot = fc.tuple(fc.double({ min: -2, max: 14, noNaN: true }), fc.integer({ min: -1, max: 11 }));
  const hole = fc.array(spot, { minLength: 3, maxLength: 6 });
  fc.assert(
    fc.property(fc.array(hole, { maxLength: 6 }), (holes) => {
      const parts = holed(rectangle(0, 0, 12, 10), ...holes);
      const walls = partNamed(parts, 'walls');
      expect(openEdges(walls)).toEqual([]);
      expect(signedVolume(walls)).toBeGreaterThan(0);
      expect(areaFromAbove(partNamed(parts, 'top'))).toBeLessThanOrEqual(120.0001);
    }),
    { numRuns: 200 },
  );
});
