import { expect, test } from 'vitest';
import {
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
  expect(versionsToDrop(all).sort()).toEqual(all.slice(0, 3).sort());
  expect(versionsToDrop(all.slice(3))).toEqual([]);
});

test('none goes for its age: the clock may have stood a year ahead', () => {
  const before = keys('a', 3);
  const ahead: VersionKey = ['a', NOW + 365 * 24 * 3_600_000];
  expect(versionsToDrop([...before, ahead])).toEqual([]);
});

test('in all there are not too many, and every plan still has its newest', () => {
  const plans = Math.ceil(MOST_IN_ALL / MOST_OF_A_PLAN) + 5;
  const all = Array.from({ length: plans }, (_, index) => keys(`p${index}`, MOST_OF_A_PLAN)).flat();
  const dropped = new Set(versionsToDrop(all).map(String));
  const left = all.filter((key) => !dropped.has(String(key)));
  expect(left.length).toBeLessThanOrEqual(MOST_IN_ALL + plans);
  expect(new Set(left.map(([planId]) => planId)).size).toBe(plans);
});
