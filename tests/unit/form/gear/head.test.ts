import { describe, expect, test } from 'vitest';
import { gearParts, standTop } from '../../../../src/core/form/gear';
import { headPlace } from '../../../../src/core/form/gear/headPlace';
import { boundsOf } from '../solids';
import { ARM_STAND, HEAD, HEADS, planOf, STAND } from './plans';
import { middleOf, partsNamed } from './solids';

const plan = planOf([STAND, ARM_STAND, HEAD]);
const AIMED = ['spot', 'fresnel', 'panel', 'sign', 'street'];

/** How far a point lies from the line through another along a unit vector. */
function offLine(point: readonly number[], from: readonly number[], along: readonly number[]): number {
  const way = point.map((value, axis) => value - from[axis]);
  const run = way.reduce((sum, value, axis) => sum + value * along[axis], 0);
  return Math.hypot(...way.map((value, axis) => value - run * along[axis]));
}

describe.each(HEADS.filter(({ form }) => AIMED.includes(form)))('a head of the form $form', (headClass) => {
  test.each([
    [0, 1.6, 2],
    [2, 3.4, -9],
    [8, 0, -3],
  ])('has its glowing face on the way from its yoke to the aim (%d, %d, %d)', (x, y, z) => {
    const head = { ...HEAD, head: headClass.form, aim: [x, y, z] as [number, number, number] };
    const { pivot, direction } = headPlace(head, headClass, plan);
    const towards = head.aim.map((value, axis) => value - pivot[axis]);
    const distance = Math.hypot(...towards);
    towards.forEach((value, axis) => {
      expect(value / distance).toBeCloseTo(direction[axis], 9);
    });
    const glow = gearParts(head, plan).find(({ shape }) => shape.substance === 'glow');
    expect(glow).toBeDefined();
    if (!glow) return;
    const { low, high } = boundsOf([glow]);
    const middle = low.map((value, axis) => (value + high[axis]) / 2);
    // The box round a tilted face is not quite centred on it, so a share of its size is allowed.
    expect(offLine(middle, pivot, direction)).toBeLessThan(0.02 + 0.03 * headClass.size[0]);
    const forward = middle.reduce((sum, value, axis) => sum + (value - pivot[axis]) * direction[axis], 0);
    expect(forward).toBeGreaterThan(0);
  });
});

describe('a carried head', () => {
  test('stands with its yoke over the spigot, and swings free of it', () => {
    for (const headClass of HEADS) {
      const head = { ...HEAD, head: headClass.form };
      const yoke = partsNamed(gearParts(head, plan), 'yoke')[0];
      const { low, high } = boundsOf([yoke]);
      const top = standTop(STAND).at;
      expect(low[1]).toBeGreaterThan(top[1] - 0.1);
      expect(low[1]).toBeLessThan(top[1]);
      expect(high[1]).toBeGreaterThan(top[1]);
      const { pivot } = headPlace(head, headClass, plan);
      expect([pivot[0], pivot[2]]).toEqual([top[0], top[2]]);
    }
  });

  test('goes with its stand, and hangs from the end of an arm', () => {
    const head = { ...HEAD, place: { on: 'stand-2' } };
    const { pivot } = headPlace(head, HEADS[0], plan);
    const end = standTop(ARM_STAND).at;
    expect([pivot[0], pivot[2]]).toEqual([end[0], end[2]]);
    expect(pivot[1]).toBeGreaterThan(end[1]);
  });
});

test('a yoke is as long as the plan says, and never too short for the housing', () => {
  const top = standTop(STAND).at[1];
  const height = (yokeMetres?: number) =>
    headPlace({ ...HEAD, ...(yokeMetres !== undefined && { yokeMetres }) }, HEADS[0], plan).pivot[1] - top;
  expect(height(0.6)).toBeCloseTo(0.6, 9);
  expect(height(0)).toBe(height());
  expect(height()).toBeGreaterThan(0.1);
});

test('a head with a place of its own has the middle of its housing there', () => {
  const head = {
    ...HEAD,
    place: { at: [1, 2, 3] as [number, number, number] },
    aim: [1, 2, -3] as [number, number, number],
  };
  const housing = partsNamed(gearParts({ ...head, head: 'panel' }, plan), 'housing')[0];
  middleOf(housing).forEach((value, axis) => {
    expect(value).toBeCloseTo([1, 2, 3][axis], 1);
  });
});

test.each([[[1, 2, 3]], [[1, 5, 3]], [[1, -5, 3]]] as [[number, number, number]][])(
  'a head aimed at %j, at itself, straight up or down stays whole',
  (aim) => {
    const head = { ...HEAD, place: { at: [1, 2, 3] as [number, number, number] }, aim };
    for (const { shape } of gearParts(head, plan)) expect(shape.positions.every(Number.isFinite)).toBe(true);
  },
);

describe('modifiers', () => {
  test('that enclose the lens glow in its place', () => {
    for (const modifier of ['softbox', 'lantern'] as const) {
      const parts = gearParts({ ...HEAD, modifier }, plan);
      expect(partsNamed(parts, 'lens')).toEqual([]);
      expect(partsNamed(parts, 'modifier').some(({ shape }) => shape.substance === 'glow')).toBe(true);
    }
  });

  test('that only cut the beam leave the lens', () => {
    for (const modifier of ['grid', 'barn doors', 'snoot'] as const) {
      const parts = gearParts({ ...HEAD, modifier }, plan);
      expect(partsNamed(parts, 'lens')).toHaveLength(1);
      expect(partsNamed(parts, 'modifier')).toHaveLength(1);
    }
  });
});
