import { expect, test } from 'vitest';
import { hashOfText, shareOf } from '../../../../src/core/form/build/seededHash';
import { pieceParts } from '../../../../src/core/form/pieces';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import { boundsOf } from '../solids';

const block = (size: [number, number, number], litShare: number, seed: number): Piece => ({
  id: 'b',
  label: 'Block',
  kind: 'skyline block',
  at: [0, 0, 0],
  headingDegrees: 0,
  size,
  windows: { litShare, seed },
});
const partsOf = (...args: Parameters<typeof block>) =>
  pieceParts(block(...args), { surface: 'concrete', wetness: 'dry' });
const windowsOf = (...args: Parameters<typeof block>) =>
  partsOf(...args).filter((part) => part.name.startsWith('windows '));
const countOf = (...args: Parameters<typeof block>) =>
  windowsOf(...args).reduce((sum, { shape }) => sum + shape.indices.length / 6, 0);

test('the block has the size of the record, and what is on its roof stands within it', () => {
  for (let seed = 0; seed < 40; seed += 1) {
    const parts = partsOf([12, 30, 9], 0.2, seed);
    const [body, ...others] = parts;
    for (const [axis, size] of [12, 30, 9].entries())
      expect(boundsOf([body]).size[axis]).toBeCloseTo(size, 5);
    const furniture = others.filter((part) => !part.name.startsWith('windows '));
    for (const part of furniture) {
      const { low, high } = boundsOf([part]);
      expect(low[1], part.name).toBeCloseTo(30, 5);
      expect(Math.max(high[0], -low[0]), part.name).toBeLessThanOrEqual(6.00001);
      expect(Math.max(high[2], -low[2]), part.name).toBeLessThanOrEqual(4.50001);
    }
  }
});

test('windows are lit with the share of the record, on all four sides, 2 cm proud', () => {
  // Four windows to a floor across and three along the sides, seven floors: 98 in all.
  const size: [number, number, number] = [10, 22, 8];
  const lit = Array.from({ length: 50 }, (_, seed) => countOf(size, 0.4, seed));
  expect(lit.reduce((sum, count) => sum + count, 0) / 50 / 98).toBeCloseTo(0.4, 1);
  expect(countOf(size, 0, 3)).toBe(0);
  expect(countOf(size, 1, 3)).toBe(98);
  const { low, high } = boundsOf(windowsOf(size, 1, 3));
  for (const [found, expected] of [
    [high[0], 5.02],
    [-low[0], 5.02],
    [high[2], 4.02],
    [-low[2], 4.02],
  ])
    expect(found).toBeCloseTo(expected, 5);
  expect(low[1]).toBeGreaterThan(0);
  expect(high[1]).toBeLessThan(22);
});

test('windows face outwards', () => {
  for (const { shape } of windowsOf([10, 22, 8], 1, 3)) {
    const { positions: p, indices } = shape;
    for (let k = 0; k < indices.length; k += 3) {
      const [a, b, c] = [0, 1, 2].map((corner) => 3 * indices[k + corner]);
      const [ux, uy, uz] = [0, 1, 2].map((axis) => p[b + axis] - p[a + axis]);
      const [vx, vy, vz] = [0, 1, 2].map((axis) => p[c + axis] - p[a + axis]);
      const [nx, nz] = [uy * vz - uz * vy, ux * vy - uy * vx];
      const isOnSide = Math.abs(Math.abs(p[a]) - 5.02) < 1e-4;
      expect(isOnSide ? nx * p[a] : nz * p[a + 2]).toBeGreaterThan(0);
    }
  }
});

test('a tower has no more lit windows than a picture needs', () => {
  for (let seed = 0; seed < 20; seed += 1) expect(countOf([60, 200, 60], 0.9, seed)).toBeLessThanOrEqual(175);
});

test('windows come in three tones, each with its colour', () => {
  const parts = windowsOf([20, 40, 20], 0.5, 7);
  expect(parts.map((part) => part.name)).toEqual(['windows warm', 'windows cool', 'windows dim']);
  expect(new Set(parts.map((part) => part.shape.colour)).size).toBe(3);
  for (const { shape } of parts) expect(shape.substance).toBe('window');
});

test('chance from a seed is even, and the same everywhere', () => {
  const shares = Array.from({ length: 10_000 }, (_, k) => shareOf(1, k));
  expect(shares.reduce((sum, share) => sum + share, 0) / shares.length).toBeCloseTo(0.5, 1);
  for (let tenth = 0; tenth < 10; tenth += 1) {
    const count = shares.filter((share) => Math.floor(share * 10) === tenth).length;
    expect(Math.abs(count - 1000)).toBeLessThan(120);
  }
  expect(hashOfText('washing line')).not.toBe(hashOfText('washing lime'));
});
