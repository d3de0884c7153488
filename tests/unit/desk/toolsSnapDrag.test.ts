import { expect, test } from 'vitest';
import { snapDrag } from '../../../src/desk/tools/snapDrag';
import { rooftop } from '../core/plan/edits/rooftop';

const AIM = { reachMetres: 0.2, free: false, straight: false };
const drag = (ids: readonly string[], from: [number, number], to: [number, number], aim = AIM) => {
  const { spot, why } = snapDrag(rooftop(), ids, from, to, aim);
  return { spot, words: why.map(({ word }) => word) };
};

test('a tank that is dragged comes in line with the end of the fence, and goes by steps along the other axis', () => {
  expect(drag(['tank'], [8, 4], [2.12, 1.234])).toEqual({
    spot: [2, 1.2],
    words: ['in line with the fence'],
  });
});

test('an axis that is not meant keeps its value, on the grid or off it', () => {
  expect(drag(['tank'], [8.03, 4.07], [9.49, 4.09]).spot).toEqual([9.5, 4.07]);
});

test('nothing of what moves is something to catch on', () => {
  expect(drag(['fence'], [-4, -6], [-3.93, -5.98]).words.join()).not.toMatch(/fence/);
});

test('free catches on nothing; straight keeps to one axis', () => {
  expect(drag(['tank'], [8, 4], [2.123, 1.234], { ...AIM, free: true })).toEqual({
    spot: [2.123, 1.234],
    words: [],
  });
  expect(drag(['tank'], [8, 4], [5.52, 4.9], { ...AIM, straight: true }).spot).toEqual([5.5, 4]);
});
