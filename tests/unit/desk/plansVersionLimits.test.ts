import { expect, test } from 'vitest';
import {
  LONGEST_MS,
  MOST_IN_ALL,
  MOST_OF_A_PLAN,
  type VersionKey,
  versionsToDrop,
} from '../../../src/desk/plans/versionLimits';

const NOW = 1_000_000_000_000;
const keys = (planId: string, count: number, from = NOW - count): VersionKey[] =>
  Array.from({ length: count }, (_, index) => [planId, from + index]);

test('of a plan the newest stay, up to the most', () => {
  const all = keys('a', MOST_OF_A_PLAN + 3);
  expect(versionsToDrop(all, NOW).sort()).toEqual(all.slice(0, 3).sort());
  expect(versionsToDrop(all.slice(3), NOW)).toEqual([]);
});

test('what is too old goes, but never the newest of its plan', () => {
  const old = keys('a', 3, NOW - 2 * LONGEST_MS);
  expect(versionsToDrop(old, NOW)).toHaveLength(2);
  expect(versionsToDrop(old, NOW)).not.toContainEqual(old[2]);
});

test('in all there are not too many, and every plan still has its newest', () => {
  const plans = Math.ceil(MOST_IN_ALL / MOST_OF_A_PLAN) + 5;
  const all = Array.from({ length: plans }, (_, index) => keys(`p${index}`, MOST_OF_A_PLAN)).flat();
  const dropped = new Set(versionsToDrop(all, NOW).map(String));
  const left = all.filter((key) => !dropped.has(String(key)));
  expect(left.length).toBeLessThanOrEqual(MOST_IN_ALL + plans);
  expect(new Set(left.map(([planId]) => planId)).size).toBe(plans);
});
