import { describe, expect, test } from 'vitest';
import { formsAt } from '../../../../src/core/form/formsAt';
import { deckParts } from '../../../../src/core/form/pieces/deck';
import type { PieceOf } from '../../../../src/core/form/pieces/making/placed';
import type { PartShape } from '../../../../src/core/form/types';
import { isWithin } from '../../../../src/core/plan/areas';
import type { Ground } from '../../../../src/core/plan/schema/ground';
import type { Spot } from '../../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { isMirroring, wetnessAt } from '../../../../src/core/plan/wetness';
import { drawFrom } from '../../../plans/draw';
import { smallRoof } from '../../smallRoof';

const DECK: PieceOf<'deck'> = {
  id: 'deck',
  label: 'Deck',
  kind: 'deck',
  outline: [
    [-6, -5],
    [6, -5],
    [6, 5],
    [-6, 5],
  ],
  holes: [
    {
      id: 'well',
      outline: [
        [2, 2],
        [4, 2],
        [4, 4],
        [2, 4],
      ],
    },
  ],
  topMetres: 0,
  dropMetres: 3,
};

const square = (x: number, z: number, half: number): Spot[] => [
  [x - half, z - half],
  [x + half, z - half],
  [x + half, z + half],
  [x - half, z + half],
];

const ground = (wetness: Ground['wetness'], areas: Ground['areas']): Ground => ({
  surface: 'concrete',
  wetness,
  areas,
});

const partOf = (of: Ground, name: string): PartShape | undefined =>
  deckParts(DECK, of).find((part) => part.name === name)?.shape;

/** Square metres of triangles, all of which have to face up. */
function areaUp(shape: PartShape | undefined): number {
  if (!shape) return 0;
  let sum = 0;
  for (let k = 0; k < shape.indices.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((n) => 3 * shape.indices[k + n]);
    const at = (from: number, to: number, axis: number) =>
      shape.positions[to + axis] - shape.positions[from + axis];
    const twice = at(a, b, 2) * at(a, c, 0) - at(a, b, 0) * at(a, c, 2);
    expect(twice).toBeGreaterThanOrEqual(0);
    sum += twice / 2;
  }
  return sum;
}

describe('a deck with wet areas', () => {
  test('mirrors where they lie, and nowhere else', () => {
    const wet = ground('dry', [{ id: 'a', wetness: 'puddled', outline: square(0, 0, 1) }]);
    expect(areaUp(partOf(wet, 'wet'))).toBeCloseTo(4, 5);
    expect(areaUp(partOf(wet, 'top'))).toBeCloseTo(120 - 4 - 4, 4);
    expect(partOf(wet, 'wet')?.mirror?.normal).toEqual([0, 1, 0]);
    expect(partOf(wet, 'top')?.mirror).toBeNull();
  });

  test('takes the later of two that lie over each other, and none of a hole or beyond the edge', () => {
    const two = ground('wet down', [
      { id: 'a', wetness: 'damp', outline: square(0, 0, 2) },
      { id: 'b', wetness: 'puddled', outline: square(1, 1, 1) },
      { id: 'c', wetness: 'dry', outline: square(3, 3, 0.5) },
      { id: 'd', wetness: 'dry', outline: square(6, -5, 1) },
    ]);
    expect(areaUp(partOf(two, 'top'))).toBeCloseTo(16 - 4 + 1, 4);
    expect(areaUp(partOf(two, 'wet'))).toBeCloseTo(116 - 13, 4);
  });

  test('is whole where they make no difference', () => {
    const damp = ground('dry', [{ id: 'a', wetness: 'damp', outline: square(0, 0, 1) }]);
    expect(deckParts(DECK, damp).map(({ name }) => name)).toEqual(['top', 'walls']);
    expect(partOf(damp, 'top')?.mirror).toBeNull();
    const all = ground('dry', [{ id: 'a', wetness: 'wet down', outline: square(0, 0, 9) }]);
    expect(deckParts(DECK, all)).toEqual(deckParts(DECK, ground('wet down', undefined)));
    const away = ground('wet down', [{ id: 'a', wetness: 'dry', outline: square(40, 0, 2) }]);
    expect(deckParts(DECK, away)).toEqual(deckParts(DECK, ground('wet down', undefined)));
  });

  test('of outlines that cross hundreds of times over it stays as the ground is', () => {
    const comb = (turned: boolean): Spot[] =>
      Array.from({ length: 60 }, (_, k): Spot => {
        const at: Spot = [-5 + k / 6, k % 2 === 0 ? -4.5 : 4.5];
        return turned ? [at[1], at[0] * 0.9] : at;
      });
    const combs = Array.from({ length: 8 }, (_, k) => ({
      id: `c${k}`,
      wetness: 'puddled' as const,
      outline: comb(k % 2 === 0).map(([x, z]): Spot => [x + k / 100, z]),
    }));
    expect(deckParts(DECK, ground('dry', combs)).map(({ name }) => name)).toEqual(['top', 'walls']);
  });
});

test('an area that changes makes only the decks under it anew', () => {
  const plan = smallRoof();
  const wet = (x: number): Plan => ({
    ...plan,
    ground: { ...plan.ground, areas: [{ id: 'a', wetness: 'dry', outline: square(x, 0, 1) }] },
  });
  const [before, after, beside] = [wet(0), wet(0.5), wet(400)].map((each) => formsAt(each, 0));
  const anew = before.filter((form, k) => form !== after[k]);
  expect(anew.map(({ kind }) => kind)).toEqual(['deck']);
  // Off every deck it makes none anew.
  expect(beside.every((form, k) => form === formsAt(plan, 0)[k])).toBe(true);
});

test('random areas: each place of the deck lies in one triangle, of the part that the outlines by themselves say', () => {
  for (let seed = 1; seed <= 40; seed += 1) {
    const draw = drawFrom(seed);
    const areas = Array.from({ length: draw.whole(1, 6) }, (_, k) => ({
      id: `a${k}`,
      wetness: draw.pick(['dry', 'damp', 'wet down', 'puddled'] as const),
      // On a grid of half metres corners and edges of different areas often lie on one another.
      outline: Array.from(
        { length: draw.whole(3, 9) },
        (): Spot => [draw.whole(-14, 14) / 2, draw.whole(-12, 12) / 2],
      ),
    }));
    const of = ground(draw.pick(['dry', 'puddled'] as const), areas);
    const plan = { ...smallRoof(), ground: of };
    const shapes = deckParts(DECK, of).flatMap(({ name, shape }) => (name === 'walls' ? [] : [shape]));
    for (let k = 0; k < 60; k += 1) {
      const spot: Spot = [draw.between(-5.9, 5.9) + 0.00013, draw.between(-4.9, 4.9) + 0.00017];
      if (isWithin(DECK.holes?.[0].outline ?? [], spot)) continue;
      const found = shapes.filter((shape) => coversAt(shape, spot) === 1);
      const none = shapes.filter((shape) => coversAt(shape, spot) === 0);
      expect([found.length, none.length], `seed ${seed} at ${spot}`).toEqual([1, shapes.length - 1]);
      expect(found[0].mirror !== null, `seed ${seed} at ${spot}`).toBe(isMirroring(wetnessAt(plan, spot)));
    }
  }
});

/** In how many of a shape's triangles a place lies. */
function coversAt({ positions, indices }: PartShape, [x, z]: Spot): number {
  let count = 0;
  for (let k = 0; k < indices.length; k += 3) {
    const side = [0, 1, 2].map((n) => {
      const [from, to] = [3 * indices[k + n], 3 * indices[k + ((n + 1) % 3)]];
      const [ax, az] = [positions[from], positions[from + 2]];
      return (positions[to] - ax) * (z - az) - (positions[to + 2] - az) * (x - ax);
    });
    if (side.every((each) => each > 0) || side.every((each) => each < 0)) count += 1;
  }
  return count;
}
