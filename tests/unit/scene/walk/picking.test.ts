import { expect, test } from 'vitest';
import type { Vec3 } from '../../../../src/core/form/build/vector';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { Picker } from '../../../../src/scene/walk/picking';
import type { WalkView } from '../../../../src/scene/walk/walkView';
import { DEMO, readPlan } from '../../../plans/readPlan';
import { smallRoof } from '../../smallRoof';
import { viewFrom } from './views';

function pick(
  plan: Plan,
  view: WalkView,
  place: Vec3,
  { beside = 0, tolerance = 5, everything = false } = {},
): string | null {
  const pixel = view.pixelOf(place);
  if (!pixel) throw new Error('the place lies behind the eye');
  const ray = view.rayAt([pixel[0] + beside, pixel[1]]);
  return (
    new Picker().look(plan, 0, ray, { widthAtOne: view.widthAtOne, tolerance, everything }).picked?.id ?? null
  );
}

test('a press finds the nearest thing, a thin column a few pixels beside it too, and nothing on the bare deck', () => {
  const plan = smallRoof();
  const view = viewFrom([6, 4, 10], [-3, 1, 7.5]);
  const column: Vec3 = [-3, 1.5, 7.5];
  expect(pick(plan, view, column)).toBe('stand-out');
  expect(pick(plan, view, column, { beside: 4 })).toBe('stand-out');
  expect(pick(plan, view, column, { beside: 4, tolerance: 0 })).toBeNull();
  expect(pick(plan, view, column, { beside: 40 })).toBeNull();
  expect(pick(plan, view, [4, 0, 5])).toBeNull();
  expect(pick(plan, view, [4, 0, 5], { everything: true })).toBe('deck');
});

test('what is hidden is not there, and what stands behind it is found through it', () => {
  const plan = smallRoof();
  const ana: Vec3 = [0, 1.2, -2];
  const view = viewFrom([0, 1.6, 6], ana);
  expect(pick(plan, view, ana)).toBe('ana');
  const hidden = { ...plan, cast: plan.cast.map((performer) => ({ ...performer, hidden: true })) };
  expect(pick(hidden, view, ana)).not.toBe('ana');
});

test('a mesh is looked through where something stands behind it, and is found where nothing does', () => {
  const plan = smallRoof();
  // In front of the fence at z = −7, the stand at [1.2, −4] behind it.
  const view = viewFrom([1.2, 1.2, -12], [1.2, 1.2, -4]);
  expect(pick(plan, view, [1.2, 1.2, -4])).toBe('stand-in');
  expect(pick(plan, viewFrom([-5, 1.2, -12], [-5, 1.3, -7]), [-5, 1.3, -7])).toBe('fence');
});

test('a wall in front hides a thin thing behind it, a thin thing in front of a wall is found beside its column', () => {
  const demo = readPlan(DEMO);
  // The stand behind the stair house, seen from in front of it.
  const behind = viewFrom([-11, 1.6, 2], [-6.85, 1.2, -7.15]);
  expect(pick(demo, behind, [-6.85, 1.2, -7.15])).not.toBe('stand-1');
  // The bounce's stand before the roof.
  const inFront = viewFrom([-3, 1.6, 9], [-3, 1, 2.95]);
  expect(pick(demo, inFront, [-3, 0.9, 2.95], { beside: 5 })).toBe('bounce-stand');
});

test('the first solid on the way is told with its place, without what is left out', () => {
  const plan = smallRoof();
  const view = viewFrom([0, 1.6, 6], [0, 1.2, -2]);
  const pixel = view.pixelOf([0, 1.2, -2]);
  if (!pixel) throw new Error('the place lies before the eye');
  const ray = view.rayAt(pixel);
  const first = new Picker().firstSolid(plan, 0, ray, new Set());
  expect(first?.id).toBe('ana');
  expect(first?.place[2]).toBeGreaterThan(-2.3);
  expect(new Picker().firstSolid(plan, 0, ray, new Set(['ana']))?.id).not.toBe('ana');
});
