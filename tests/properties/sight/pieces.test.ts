import { expect, it } from 'vitest';
import { pieceParts } from '../../../src/core/form/pieces';
import type { ItemForm } from '../../../src/core/form/types';
import type { Piece as SetPiece } from '../../../src/core/plan/schema/pieces';
import { type Piece, piecesOf } from '../../../src/core/sight/pieces';
import { meetings } from '../../../src/core/sight/rays';
import { type StagePart, stageOf } from '../../../src/core/sight/stage';
import { dice } from '../../plans/draw';
import { cases } from '../../thorough';
import { randomForms } from './randomForms';

const MOST_PIECES = 24;
/** In no plane that anything is built along. */
const ODD_WAY = [0.3127, 0.8311, 0.4599] as const;

const DRY = { surface: 'concrete', wetness: 'dry' } as const;

const wallAlong = (path: SetPiece & { kind: 'wall' }): StagePart => {
  const form: ItemForm = {
    id: 'wall',
    label: 'wall',
    kind: 'wall',
    section: 'piece',
    wish: 'either',
    parts: pieceParts(path, DRY),
  };
  return stageOf([form]).parts[0];
};

const wall = (path: readonly (readonly [number, number])[]): SetPiece & { kind: 'wall' } => ({
  id: 'wall',
  label: 'wall',
  wish: 'either',
  kind: 'wall',
  path: path.map(([x, z]): [number, number] => [x, z]),
  closed: false,
  baseMetres: 0.5,
  heightMetres: 2,
  thicknessMetres: 0.3,
  material: 'brick',
});

const roomOf = (pieces: readonly Piece[]): number => pieces.reduce((sum, { volume }) => sum + volume, 0);

it('a plain wall is one block, one with a corner two, and they hold as much as the wall', () => {
  // What a wall of even thickness with mitred corners holds: thickness × length of its middle line × height.
  const straight = piecesOf(
    wallAlong(
      wall([
        [0, 0],
        [5, 0],
      ]),
    ).shape,
    MOST_PIECES,
  );
  expect(straight).toHaveLength(1);
  expect(straight[0].sides).toHaveLength(6);
  expect(roomOf(straight)).toBeCloseTo(0.3 * 5 * 2, 4);
  const bent = piecesOf(
    wallAlong(
      wall([
        [0, 0],
        [5, 0],
        [8, 4],
      ]),
    ).shape,
    MOST_PIECES,
  );
  expect(bent).toHaveLength(2);
  expect(roomOf(bent)).toBeCloseTo(0.3 * 10 * 2, 4);
});

it('a door is cut out of a wall’s blocks: beside it and over it there are some, in it none', () => {
  const part = wallAlong({
    ...wall([
      [0, 0],
      [6, 0],
    ]),
    openings: [{ id: 'door', alongMetres: 2, widthMetres: 1, sillMetres: 0, heightMetres: 1.6 }],
  });
  const pieces = piecesOf(part.shape, MOST_PIECES);
  const isIn = (x: number, y: number): boolean =>
    pieces.some(({ sides }) => sides.every(({ normal, offset }) => normal[0] * x + normal[1] * y <= offset));
  expect(roomOf(pieces)).toBeCloseTo(0.3 * (6 * 2 - 1 * 1.6), 4);
  expect([isIn(1, 1.5), isIn(2, 2.3), isIn(4, 1.5)]).toEqual([true, true, true]);
  expect([isIn(2, 1.5), isIn(2, 0.6), isIn(-1, 1.5)]).toEqual([false, false, false]);
});

it('a solid that falls into more pieces than are wanted is given up', () => {
  const { shape } = wallAlong(
    wall([
      [0, 0],
      [5, 0],
      [8, 4],
      [8, 9],
    ]),
  );
  expect(piecesOf(shape, 3)).toHaveLength(3);
  expect(piecesOf(shape, 2)).toEqual([]);
});

it('every place in a piece of a random thing is inside of that thing, and no other place of its box is', () => {
  const roll = dice(977);
  let [inside, outside, inMany] = [0, 0, 0];
  for (let seed = 901; seed <= 900 + cases(25); seed += 1) {
    for (const part of stageOf(randomForms(seed)).parts) {
      const { shape, worldFromPart } = part;
      if (worldFromPart || shape.openness !== null || shape.mirror || shape.indices.length > 3 * 128)
        continue;
      const pieces = piecesOf(shape, MOST_PIECES);
      if (pieces.length > 1) inMany += 1;
      for (const { centre, radius } of pieces) {
        for (let k = 0; k < 6; k += 1) {
          const at = [0, 1, 2].map((axis) => centre[axis] + roll(-radius, radius) * 0.8);
          // Too near to a side to tell, in single precision.
          const depths = pieces.map(({ sides }) =>
            Math.min(
              ...sides.map(
                ({ normal, offset }) => offset - (normal[0] * at[0] + normal[1] * at[1] + normal[2] * at[2]),
              ),
            ),
          );
          if (depths.some((depth) => Math.abs(depth) < 1e-4)) continue;
          const isInPiece = depths.some((depth) => depth > 0);
          const crossed = meetings(part, { origin: [at[0], at[1], at[2]], direction: ODD_WAY });
          expect(crossed % 2 === 1, `${part.name} of seed ${seed} at ${at.join(', ')}`).toBe(isInPiece);
          if (isInPiece) inside += 1;
          else outside += 1;
        }
      }
    }
  }
  expect(inside).toBeGreaterThan(100);
  expect(outside).toBeGreaterThan(100);
  expect(inMany).toBeGreaterThan(5);
});
