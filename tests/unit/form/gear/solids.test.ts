import { describe, expect, test } from 'vitest';
import { gearParts, recordsOf } from '../../../../src/core/form/gear';
import { openEdges, trianglesOf } from '../solids';
import { EVERY_KIND, planOf } from './plans';
import { pieceVolumes } from './solids';

const plan = planOf(EVERY_KIND);

/** Most triangles that an item of a kind may have. */
const BUDGET: Readonly<Record<string, number>> = { stand: 700, head: 900 };
/** Most triangles of one of the bags over a stand's legs. */
const BAG_BUDGET = 200;

describe.each(EVERY_KIND.map((gear) => [gear.id, gear] as const))('%s', (_, gear) => {
  const parts = gearParts(gear, plan);

  test('has named parts, all finite and in world coordinates', () => {
    expect(parts.length).toBeGreaterThan(0);
    for (const { name, shape, worldFromPart } of parts) {
      expect(name).toMatch(/^[a-z ]+$/);
      expect(worldFromPart).toBeNull();
      expect(shape.positions.every(Number.isFinite)).toBe(true);
      expect(shape.indices.every((index) => index < shape.positions.length / 3)).toBe(true);
    }
  });

  test('is made of closed solids that face outwards', () => {
    for (const { name, shape } of parts) {
      expect(openEdges(shape), name).toEqual([]);
      for (const piece of pieceVolumes(shape)) expect(piece).toBeGreaterThan(0);
    }
  });

  test('keeps within its triangles', () => {
    const bags = gear.kind === 'stand' ? (gear.bags?.count ?? 0) : 0;
    expect(trianglesOf(parts)).toBeLessThanOrEqual((BUDGET[gear.kind] ?? 800) + bags * BAG_BUDGET);
  });

  test('names the records that it comes from', () => {
    expect(recordsOf(gear, plan)[0]).toBe(gear);
  });
});
