import { describe, expect, test } from 'vitest';
import type { Mark } from '../../../../src/core/plan/schema/cast';
import type { Spot } from '../../../../src/core/plan/schema/numbers';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { clearWay, wayMetres } from '../../../../src/core/plan/walkWays/clearWay';
import { pieceAround, walkHits } from '../../../../src/core/plan/walkWays/hits';
import { twoOnARoof } from '../edits/blockingPlan';

const mark = (id: string, at: Spot, floorMetres = 0): Mark => ({
  id,
  beat: 'begin',
  at,
  headingDegrees: 0,
  stance: 'stand',
  holdSeconds: 0,
  ...(floorMetres !== 0 && { floorMetres }),
});

const WALL = {
  id: 'wall',
  label: 'Wall',
  kind: 'wall',
  path: [
    [0, -2],
    [0, 2],
  ],
  closed: false,
  baseMetres: 0,
  heightMetres: 3,
  thicknessMetres: 0.2,
  material: 'brick',
} as const satisfies Partial<Piece>;

/** The deck is 10 m wide and 8 m deep about the middle. */
const DECK: Piece = {
  id: 'deck',
  label: 'Deck',
  kind: 'deck',
  outline: [
    [-5, -4],
    [5, -4],
    [5, 4],
    [-5, 4],
  ],
  topMetres: 0,
  dropMetres: 10,
};

const standing = { at: [0, 0, 0] as [number, number, number], headingDegrees: 0 };

const wall = (more: Partial<Extract<Piece, { kind: 'wall' }>> = {}): Piece => ({
  ...WALL,
  path: WALL.path.map(([x, z]): Spot => [x, z]),
  ...more,
});

const withPieces = (...pieces: Piece[]): Plan => ({ ...twoOnARoof(), pieces });

const [WEST, EAST] = [mark('w', [-3, 0]), mark('e', [3, 0])];

const straight = (plan: Plan, from: Mark, to: Mark) => walkHits(plan, from, to, [from.at, to.at]);
const way = (plan: Plan, from: Mark, to: Mark) =>
  clearWay(plan, { ...plan.cast[0], marks: [from, to] }, from.id, to.id);

describe('what a walk goes through', () => {
  test('a wall, from where the shoulders touch it', () => {
    const [hit, ...others] = straight(withPieces(DECK, wall()), WEST, EAST);
    expect(others).toEqual([]);
    // The face is 0.1 m from the middle of the wall, the shoulders reach 0.25 m ahead.
    expect(hit).toMatchObject({ pieceId: 'wall', how: 'through' });
    expect(hit.alongMetres).toBeCloseTo(2.65, 3);
  });

  test.each([
    [
      'a wall that ends before it',
      wall({
        path: [
          [0, -2],
          [0, -0.26],
        ],
      }),
      [],
    ],
    [
      'a wall that ends in it',
      wall({
        path: [
          [0, -2],
          [0, -0.24],
        ],
      }),
      ['through'],
    ],
    ['a parapet', wall({ heightMetres: 1.1 }), ['over']],
    ['a kerb', wall({ heightMetres: 0.15 }), []],
    ['a beam overhead', wall({ baseMetres: 1.9 }), []],
    [
      'a door',
      wall({ openings: [{ id: 'o', alongMetres: 2, widthMetres: 0.8, sillMetres: 0, heightMetres: 2 }] }),
      [],
    ],
    [
      'a door that is too narrow',
      wall({ openings: [{ id: 'o', alongMetres: 2, widthMetres: 0.45, sillMetres: 0, heightMetres: 2 }] }),
      ['through'],
    ],
    [
      'a window',
      wall({ openings: [{ id: 'o', alongMetres: 2, widthMetres: 2, sillMetres: 0.9, heightMetres: 1.2 }] }),
      ['through'],
    ],
    [
      'a post',
      {
        ...standing,
        id: 'p',
        label: 'Post',
        kind: 'post',
        heightMetres: 3,
        diameterMetres: 0.1,
        armMetres: 0,
      },
      ['through'],
    ],
    [
      'a tank on high legs, between them',
      { ...standing, id: 't', label: 'Tank', kind: 'tank', diameterMetres: 3, drumMetres: 2, legMetres: 2 },
      [],
    ],
    [
      'a tank on low legs',
      { ...standing, id: 't', label: 'Tank', kind: 'tank', diameterMetres: 3, drumMetres: 2, legMetres: 1 },
      ['through'],
    ],
    [
      'a turned crate',
      {
        ...standing,
        at: [0, 0, 0.9],
        headingDegrees: 45,
        id: 'b',
        label: 'Crate',
        kind: 'box',
        size: [1, 1, 1],
        material: 'timber',
      },
      // Its corner points at the walk: half of √2 out of its middle, 0.193 m away.
      ['over'],
    ],
    [
      'a hole',
      {
        ...DECK,
        id: 'd',
        holes: [
          {
            id: 'h',
            outline: [
              [-1, -1],
              [1, -1],
              [1, 1],
              [-1, 1],
            ],
          },
        ],
      },
      ['into a hole'],
    ],
  ] satisfies [string, Piece, string[]][])('%s', (_, piece, expected) => {
    const plan = piece.kind === 'deck' ? withPieces(piece) : withPieces(DECK, piece);
    expect(straight(plan, WEST, EAST).map(({ how }) => how)).toEqual(expected);
  });

  test('an edge that is walked off and on again; not one that another deck continues', () => {
    const bay: Piece = {
      ...DECK,
      outline: [
        [-5, -4],
        [5, -4],
        [5, 4],
        [1, 4],
        [1, -1],
        [-1, -1],
        [-1, 4],
        [-5, 4],
      ],
    };
    expect(straight(withPieces(bay), WEST, EAST)).toMatchObject([
      { how: 'off the edge', at: [expect.closeTo(-1, 3), 0] },
    ]);
    const bridge: Piece = {
      ...DECK,
      id: 'bridge',
      outline: [
        [-1, -1],
        [1, -1],
        [1, 1],
        [-1, 1],
      ],
    };
    expect(straight(withPieces(bay, bridge), WEST, EAST)).toEqual([]);
  });

  test('who leans on a wall may walk along it', () => {
    const plan = withPieces(DECK, wall());
    expect(straight(plan, mark('a', [0.15, -1]), mark('b', [0.15, 1]))).toEqual([]);
    expect(straight(plan, mark('a', [0.15, -1]), mark('b', [-1, 1]))).toHaveLength(1);
  });

  test('a riser is walked on to, and what stands on the deck below is not in the way up there', () => {
    const riser: Piece = { ...standing, id: 'r', label: 'Riser', kind: 'riser', size: [2, 0.6, 2] };
    const plan = withPieces(DECK, riser);
    expect(straight(plan, WEST, mark('e', [0, 0], 0.6))).toEqual([]);
    expect(straight(plan, WEST, EAST)).toMatchObject([{ pieceId: 'r', how: 'over' }]);
  });

  test('a mark in a wall is in it, one at its face is not', () => {
    const plan = withPieces(DECK, wall());
    expect(pieceAround(plan, mark('a', [0.05, 0]))).toBe('wall');
    expect(pieceAround(plan, mark('a', [0.11, 0]))).toBeNull();
  });
});

describe('the clear way', () => {
  test('round the nearer end of a wall: two straight pieces and an arc about its corners', () => {
    const plan = withPieces(
      DECK,
      wall({
        path: [
          [0, -2],
          [0, 1],
        ],
      }),
    );
    const through = way(plan, WEST, EAST) ?? [];
    // Tangents from (±3, 0) to the circles of 0.25 m about the corners (±0.1, 1), a quarter and a bit of each,
    // and 0.2 m between them.
    const reach = Math.hypot(2.9, 1);
    const tangent = Math.sqrt(reach * reach - 0.25 * 0.25);
    const angle = Math.atan2(1, 2.9) + Math.asin(0.25 / reach);
    const shortest = 2 * (tangent + 0.25 * angle) + 0.2;
    const metres = wayMetres(WEST.at, through, EAST.at);
    expect(metres).toBeGreaterThanOrEqual(shortest - 1e-3);
    expect(metres).toBeLessThan(shortest * 1.005);
    expect(through.every(([, z]) => z > 1)).toBe(true);
    expect(walkHits(plan, WEST, EAST, [WEST.at, ...through, EAST.at])).toEqual([]);
  });

  test('none is needed where the walk is clear, and there is none out of a closed yard', () => {
    expect(way(withPieces(DECK), WEST, EAST)).toEqual([]);
    const yard = wall({
      path: [
        [-4, -1],
        [-2, -1],
        [-2, 1],
        [-4, 1],
      ],
      closed: true,
    });
    expect(way(withPieces(DECK, yard), WEST, EAST)).toBeNull();
    expect(clearWay(withPieces(DECK), twoOnARoof().cast[0], 'm1', 'none')).toBeNull();
  });

  test('through a door where there is one, and never over the edge of the deck', () => {
    const across = wall({
      path: [
        [0, -4],
        [0, 4],
      ],
      openings: [{ id: 'o', alongMetres: 6.5, widthMetres: 0.9, sillMetres: 0, heightMetres: 2.1 }],
    });
    const through = way(withPieces(DECK, across), WEST, EAST) ?? [];
    expect(through.length).toBeGreaterThan(0);
    const inWall = through.filter(([x]) => Math.abs(x) < 0.11);
    for (const [, z] of inWall) expect(Math.abs(z - 2.5)).toBeLessThan(0.21);
    // A wall that leaves 0.4 m to the edge leaves no way.
    const blocked = wall({
      path: [
        [0, -4],
        [0, 3.6],
      ],
    });
    expect(way(withPieces(DECK, blocked), WEST, EAST)).toBeNull();
    const left = wall({
      path: [
        [0, -4],
        [0, 3.4],
      ],
    });
    expect(way(withPieces(DECK, left), WEST, EAST)).not.toBeNull();
  });
});
