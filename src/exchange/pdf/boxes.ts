import type { At, Box } from './marks';

/** The corners of a box, round it. */
export const corners = ([left, top, right, bottom]: Box): readonly At[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

/** Whether two boxes have room in common. */
export const meets = (a: Box, b: Box): boolean => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];

/** The box round places, of which there is one at least. */
export const boxOf = (points: readonly At[]): Box => {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  }
  return [left, top, right, bottom];
};
