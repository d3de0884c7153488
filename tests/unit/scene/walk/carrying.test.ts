import { expect, test } from 'vitest';
import type { Vec3 } from '../../../../src/core/form/build/vector';
import { topAt } from '../../../../src/core/plan/surfaces';
import { carrierAlong, carriersAlong } from '../../../../src/scene/walk/carrying';
import { DEMO, readPlan } from '../../../plans/readPlan';
import { viewFrom } from './views';

const demo = readPlan(DEMO);
const NONE: ReadonlySet<string> = new Set();

function along(eye: Vec3, place: Vec3) {
  const view = viewFrom(eye, place);
  return view.rayAt([400, 300]);
}

test('a ray meets the deck where it looks at it', () => {
  const met = carrierAlong(demo, along([6, 5, 12], [2, 0, 1]), 0, NONE);
  expect(met?.id).toBe('deck');
  expect(met?.metres).toBe(0);
  expect(met?.spot[0]).toBeCloseTo(2, 5);
  expect(met?.spot[1]).toBeCloseTo(1, 5);
});

test('a roof in front of the deck is met first, and is looked through where that is asked', () => {
  const ray = along([-4, 9, 4], [-9.1, 2.72, -4]);
  const all = carriersAlong(demo, ray, NONE);
  expect(all.map(({ id }) => id)).toEqual(['stair-house', 'deck']);
  expect(all[0].metres).toBeCloseTo(2.72, 3);
  expect(carrierAlong(demo, ray, 0, new Set(['stair-house']))?.id).toBe('deck');
});

test('a sloping roof is met where it is as high as the ray', () => {
  const loft = demo.pieces.find(({ id }) => id === 'loft');
  if (!loft) throw new Error('the demo has a loft');
  const met = carrierAlong(demo, along([4, 8, 5], [-1.2, 2.8, -5.9]), 0, NONE);
  expect(met?.id).toBe('loft');
  if (!met) return;
  expect(met.metres).toBeCloseTo(topAt(loft, met.spot) ?? 0, 3);
});

test('beside all decks the level counts that a thing stands on, and the sky counts for nothing', () => {
  const beside = carrierAlong(demo, along([0, 4, 20], [0, 0.5, 15]), 0.5, NONE);
  expect(beside?.id).toBeNull();
  expect(beside?.metres).toBe(0.5);
  expect(carrierAlong(demo, along([0, 4, 20], [0, 8, -15]), 0, NONE)).toBeNull();
});

test('from below a roof carries nothing', () => {
  const ray = along([-9.1, 1, -9], [-9.1, 2.72, -4]);
  expect(carriersAlong(demo, ray, NONE)).toEqual([]);
});
