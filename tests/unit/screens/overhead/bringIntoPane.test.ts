import { expect, test } from 'vitest';
import { pushIntoPane } from '../../../../src/screens/overhead/bringIntoPane';

const box = (left: number, top: number, width: number, height: number) => ({
  left,
  top,
  right: left + width,
  bottom: top + height,
});
const pane = box(0, 100, 600, 400);

test('what is in sight is left where it is, however large, and what is not comes to the middle', () => {
  expect(pushIntoPane(box(10, 120, 20, 20), pane)).toBeNull();
  expect(pushIntoPane(box(-2000, -2000, 4000, 4000), pane)).toBeNull();
  // Two pixels of it are no sight of it.
  expect(pushIntoPane(box(598, 120, 40, 20), pane)).toEqual([-318, 0]);
  expect(pushIntoPane(box(280, -60, 40, 40), pane)).toEqual([0, 340]);
  // A line is as high as it is.
  expect(pushIntoPane(box(10, 200, 100, 0), pane)).toBeNull();
});
