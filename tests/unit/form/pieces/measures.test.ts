import { describe, expect, test } from 'vitest';
import { pieceParts } from '../../../../src/core/form/pieces';
import type { PlacedPart } from '../../../../src/core/form/types';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import { boundsOf, partNamed } from '../solids';
import { ROOFTOP } from './rooftop';

const GROUND = { surface: 'concrete', wetness: 'dry' } as const;

/** Parts of the rooftop's piece of a kind, turned to heading 0 at the origin so that its sizes lie on the axes. */
function partsOf<Kind extends Piece['kind']>(
  kind: Kind,
  change: Partial<Extract<Piece, { kind: Kind }>> = {},
): readonly PlacedPart[] {
  const found = ROOFTOP.find((piece) => piece.kind === kind);
  if (!found) throw new Error(`Rooftop: found no ${kind}, expected one`);
  const standing = 'at' in found ? { at: [0, 0, 0], headingDegrees: 0 } : {};
  return pieceParts({ ...found, ...standing, ...change } as Piece, GROUND);
}
const sizeOf = (parts: readonly PlacedPart[], name: string) =>
  boundsOf([{ name, shape: partNamed(parts, name), worldFromPart: null }]);

const near = (found: readonly number[], expected: readonly number[]) =>
  expected.forEach((value, axis) => {
    expect(found[axis], `axis ${axis}`).toBeCloseTo(value, 5);
  });

describe('sizes are those of the record', () => {
  test('deck: the surface lies at its height, the walls end at the drop', () => {
    const parts = partsOf('deck');
    near(sizeOf(parts, 'top').low, [-12, 0, -8]);
    near(sizeOf(parts, 'top').high, [12, 0, 8]);
    near(sizeOf(parts, 'walls').low, [-12, -14, -8]);
    expect(sizeOf(parts, 'walls').high[1]).toBeLessThan(0);
  });

  test('parapet: wall and coping reach the height together, the coping oversails', () => {
    const parts = partsOf('parapet');
    near(boundsOf(parts).low, [-12.19, 0, -8.19]);
    near(boundsOf(parts).high, [12.19, 0.95, 8.19]);
    near(sizeOf(parts, 'wall').size, [24.3, 0.88, 16.3]);
    near(sizeOf(parts, 'coping').size, [24.38, 0.07, 16.38]);
  });

  test('stair house: walls have the width and depth, the coping ends at the height', () => {
    const parts = partsOf('stair house');
    near([sizeOf(parts, 'walls').size[0], sizeOf(parts, 'walls').size[2]], [3.2, 3.6]);
    near(sizeOf(parts, 'coping').high, [1.8, 2.9, 2]);
    near(sizeOf(parts, 'roof').size.slice(0, 1), [3.6]);
    near(sizeOf(parts, 'door').size.slice(0, 2), [0.9, 2.05]);
    // As one faces the front from outside, looking along +z, right is −x.
    const door = sizeOf(parts, 'door');
    expect((door.low[0] + door.high[0]) / 2).toBeCloseTo(-0.5, 5);
    // The leaf stands back in the opening.
    expect(door.low[2]).toBeGreaterThan(-1.8 + 0.05);
    expect(door.high[2]).toBeLessThan(-1.6);
  });

  test('shed: the frame has the width and depth, boards and mesh stand back in it, the roof ends at the height', () => {
    const parts = partsOf('shed');
    near([sizeOf(parts, 'frame').size[0], sizeOf(parts, 'frame').size[2]], [4.6, 2.8]);
    near([sizeOf(parts, 'boards').size[0], sizeOf(parts, 'boards').size[2]], [4.592, 2.792]);
    near(sizeOf(parts, 'roof').high, [2.5, 2.3, 1.6]);
    expect(sizeOf(parts, 'boards').low[1]).toBeGreaterThan(0.3);
    near(sizeOf(parts, 'mesh').low.slice(2), [-1.395]);
    near(boundsOf(parts).low.slice(1, 2), [0]);
  });

  test('tank: the drum has the diameter and height and stands on the legs', () => {
    const parts = partsOf('tank');
    near(sizeOf(parts, 'drum').size, [2.5, 2.4, 2.5]);
    near(sizeOf(parts, 'drum').low.slice(1, 2), [2.6]);
    expect(sizeOf(parts, 'platform').high[1]).toBeCloseTo(2.6, 5);
    expect(sizeOf(parts, 'legs').low[1]).toBeGreaterThan(-0.02);
    expect(partsOf('tank', { legMetres: 0 }).map((part) => part.name)).toEqual(['drum', 'hoops', 'lid']);
  });

  test('post: height, diameter and the arm across the heading', () => {
    const parts = partsOf('post');
    near(sizeOf(parts, 'post').size, [0.08, 2.2, 0.08]);
    expect(sizeOf(parts, 'arm').size[0]).toBeCloseTo(0.9, 5);
    near(boundsOf(parts).high.slice(1, 2), [2.2]);
  });

  test('line: it sags in the middle by the sag', () => {
    const [line] = partsOf('line', { cloths: 0 });
    const heights = line.shape.tubes.map((tube) => tube.to[1]);
    expect(Math.min(...heights)).toBeCloseTo(2.15 - 0.18, 6);
    expect(line.shape.tubes).toHaveLength(16);
    expect(line.shape.tubes[0].from).toEqual([-9.5, 2.15, 3.2]);
    near(line.shape.tubes[15].to, [-9.5, 2.15, 7.6]);
  });

  test('line: cloths hang below it, one beside the other, at widths of their own', () => {
    const cloths = partNamed(partsOf('line', { cloths: 3 }), 'cloths');
    expect(cloths.indices.length / 3).toBe(3 * 6 * 3 * 2);
    const perCloth = cloths.positions.length / 3;
    const widths = [0, 1, 2].map((cloth) => {
      const from = Array.from({ length: perCloth }, (_, k) => cloths.positions[cloth * perCloth + k]);
      const along = from.filter((_, k) => k % 3 === 2);
      return Math.max(...along) - Math.min(...along);
    });
    expect(new Set(widths.map((width) => width.toFixed(3))).size).toBe(3);
    const bounds = boundsOf([{ name: 'cloths', shape: cloths, worldFromPart: null }]);
    expect(bounds.high[1]).toBeLessThanOrEqual(2.15);
    expect(bounds.low[1]).toBeGreaterThan(0.6);
  });

  test('chimney: stack and cap have the height, pots stand on them', () => {
    const parts = partsOf('chimney');
    near(sizeOf(parts, 'stack').size.slice(0, 1), [1]);
    near(sizeOf(parts, 'cap').high.slice(1, 2), [1.6]);
    near(sizeOf(parts, 'pots').low.slice(1, 2), [1.6]);
    expect(partsOf('chimney', { pots: 0 }).map((part) => part.name)).toEqual(['stack', 'cap']);
  });

  test('box and pane', () => {
    near(sizeOf(partsOf('box'), 'box').size, [1.2, 0.8, 0.8]);
    const pane = partsOf('pane', { at: [0, 0.2, 0] });
    near(sizeOf(pane, 'frame').size.slice(0, 2), [1.4, 1.1]);
    near(sizeOf(pane, 'frame').low.slice(1, 2), [0.2]);
  });
});

describe('a riser', () => {
  test('has its boards on its legs, their upper side at its height, 0.1 m thick', () => {
    const parts = partsOf('riser');
    near(boundsOf(parts).low, [-1.2, 0, -0.6]);
    near(sizeOf(parts, 'boards').size, [2.4, 0.1, 1.2]);
    near(sizeOf(parts, 'boards').high, [1.2, 0.6, 0.6]);
    near(sizeOf(parts, 'legs').high.slice(1, 2), [0.5]);
  });

  test('stands on a leg at each corner, and on more where it is longer than a bay', () => {
    const upright = (size: [number, number, number]) =>
      partNamed(partsOf('riser', { size }), 'legs').tubes.filter(
        ({ from, to }) => from[0] === to[0] && from[2] === to[2],
      );
    expect(upright([1.2, 0.6, 1.2])).toHaveLength(4);
    // 4.88 m between the outer axes makes three bays of at most 2 m.
    expect(upright([5, 0.6, 1.2])).toHaveLength(8);
    expect(upright([400, 0.6, 400])).toHaveLength(121);
  });

  test('too low for ties has none', () => {
    expect(partNamed(partsOf('riser', { size: [1.2, 0.2, 1.2] }), 'legs').tubes).toHaveLength(4);
    expect(partNamed(partsOf('riser', { size: [1.2, 1, 1.2] }), 'legs').tubes).toHaveLength(8);
  });
});

test('a pane mirrors to where it faces', () => {
  for (const finish of ['glass', 'mirror'] as const) {
    const { mirror, openness } = partNamed(partsOf('pane', { headingDegrees: 90, finish }), 'sheet');
    near(mirror?.normal ?? [], [1, 0, 0]);
    near(mirror?.point.slice(0, 1) ?? [], [0]);
    if (finish === 'glass') expect(openness).toBeCloseTo(0.918, 3);
    else expect(openness).toBeNull();
  }
});

test('a deck mirrors from wet down on', () => {
  const deck = ROOFTOP[0];
  for (const [wetness, isMirror] of [
    ['dry', false],
    ['damp', false],
    ['wet down', true],
    ['puddled', true],
  ] as const) {
    const top = partNamed(pieceParts(deck, { surface: 'felt', wetness }), 'top');
    expect(top.substance).toBe('felt');
    expect(top.mirror).toEqual(isMirror ? { normal: [0, 1, 0], point: [-12, 0, -8] } : null);
  }
});

test('a shed has what its front asks for', () => {
  const names = (front: 'mesh' | 'boards' | 'open', shelves: number) =>
    partsOf('shed', { front, shelves }).map((part) => part.name);
  expect(names('mesh', 2)).toEqual(['frame', 'boards', 'shelves', 'nest boxes', 'roof', 'mesh']);
  expect(names('boards', 0)).toEqual(['frame', 'boards', 'roof']);
  expect(names('open', 1)).toEqual(['frame', 'boards', 'shelves', 'nest boxes', 'roof']);
});
