import { type LightShadow, SpotLight, WebGLRenderTarget } from 'three';
import { expect, test } from 'vitest';
import { ShadowTurns } from '../../../src/scene/drive/shadowTurns';

/** Shadows that have been drawn once. */
function drawn(count: number): LightShadow[] {
  return Array.from({ length: count }, () => {
    const { shadow } = new SpotLight();
    shadow.autoUpdate = false;
    shadow.map = new WebGLRenderTarget(1, 1);
    return shadow;
  });
}

/** Which are marked, and as three does: what is drawn is marked no more. */
function draw(shadows: readonly LightShadow[]): number[] {
  return shadows.flatMap((shadow, k) => {
    if (!shadow.needsUpdate) return [];
    shadow.needsUpdate = false;
    return [k];
  });
}

test('at rest all that are out of date are drawn at once, and then none', () => {
  const turns = new ShadowTurns();
  const all = drawn(5);
  turns.age(all);
  expect(turns.mark(all, null)).toBe(true);
  expect(draw(all)).toEqual([0, 1, 2, 3, 4]);
  expect(turns.mark(all, null)).toBe(false);
  expect(draw(all)).toEqual([]);
});

test('while all move they take turns, each as often as the others, however many views a frame has', () => {
  const turns = new ShadowTurns();
  const all = drawn(5);
  const counts = [0, 0, 0, 0, 0];
  for (let frame = 0; frame < 50; frame += 1) {
    turns.age(all);
    for (let view = 0; view < 3; view += 1) turns.mark(all, { frame, most: 2 });
    const marked = draw(all);
    expect(marked).toHaveLength(2);
    for (const k of marked) counts[k] += 1;
  }
  expect(counts).toEqual([20, 20, 20, 20, 20]);
});

test('a lamp that has moved, and one without a map, do not wait for their turn', () => {
  const turns = new ShadowTurns();
  const all = drawn(4);
  turns.age(all);
  turns.mark(all, { frame: 1, most: 1 });
  draw(all);
  turns.hurry([all[3]]);
  turns.mark(all, { frame: 1, most: 1 });
  expect(draw(all)).toEqual([3]);
  all[2].map = null;
  turns.mark(all, { frame: 1, most: 1 });
  expect(draw(all)).toEqual([2]);
});

test('what is late when a move stops is drawn when it rests', () => {
  const turns = new ShadowTurns();
  const all = drawn(5);
  turns.age(all);
  turns.mark(all, { frame: 1, most: 1 });
  expect(draw(all)).toEqual([0]);
  turns.mark(all, null);
  expect(draw(all)).toEqual([1, 2, 3, 4]);
});
