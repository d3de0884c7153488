import { expect, test } from 'vitest';
import { cautionLines } from '../../../../src/scene/walk/cautionLines';
import { about, DECK, HOUSE, parapet, performerAt, roof } from '../../cautions/roof';

test('an open edge lies on its deck, and somebody near it has a line to the edge', () => {
  const plan = roof({ pieces: [DECK, parapet(0.9), HOUSE], cast: [performerAt('vera', [9, 0])] });
  const [edge] = about(plan, 'edge-open');
  const points = cautionLines(edge ?? null);
  expect(points).toHaveLength((edge?.stretches.length ?? 0) * 6);
  expect(new Set(points.filter((_, k) => k % 3 === 1))).toEqual(new Set([0.02]));
  const [vera] = about(plan, 'edge-people');
  const [x0, , z0, x1, , z1] = cautionLines(vera ?? null);
  expect([x0, z0]).toEqual([9, 0]);
  expect(Math.hypot(x1 - x0, z1 - z0)).toBeCloseTo(1, 9);
  expect(cautionLines(null)).toEqual([]);
});
