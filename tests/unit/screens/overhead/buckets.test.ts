import { fc, test } from '@fast-check/vitest';
import { expect } from 'vitest';
import { Buckets } from '../../../../src/screens/overhead/geometry/buckets';
import { lengthWithin, sharedArea } from '../../../../src/screens/overhead/geometry/clipping';
import type { Bounds, Spot } from '../../../../src/screens/overhead/geometry/spots';

const PANE: Bounds = [0, 0, 700, 500];
const within = (max: number) => fc.double({ min: 0, max, noNaN: true });
const anywhere = fc.double({ min: -300, max: 1000, noNaN: true });
const box = (x: fc.Arbitrary<number>, y: fc.Arbitrary<number>) =>
  fc
    .tuple(x, y, within(150), within(150))
    .map(([left, top, width, height]): Bounds => [left, top, left + width, top + height]);
const asked = box(within(550), within(350));

test.prop([fc.array(box(anywhere, anywhere), { maxLength: 40 }), asked])(
  'whatever overlaps a rectangle in the pane is near it, each once and in order',
  (boxes, bounds) => {
    const buckets = new Buckets(PANE);
    boxes.forEach((each, index) => {
      buckets.addBox(index, each);
    });
    const near = buckets.near(bounds);
    const overlapping = boxes.flatMap((each, index) => (sharedArea(each, bounds) > 0 ? [index] : []));
    expect(overlapping.filter((index) => !near.includes(index))).toEqual([]);
    expect(near).toEqual([...new Set(near)].sort((a, b) => a - b));
  },
);

test.prop([fc.array(fc.tuple(anywhere, anywhere, anywhere, anywhere), { maxLength: 40 }), asked])(
  'whatever line goes through a rectangle in the pane is near it',
  (lines, bounds) => {
    const buckets = new Buckets(PANE);
    const ends = lines.map(([x, y, toX, toY]): [Spot, Spot] => [
      [x, y],
      [toX, toY],
    ]);
    ends.forEach(([from, to], index) => {
      buckets.addLine(index, from, to);
    });
    const near = buckets.near(bounds);
    const through = ends.flatMap(([from, to], index) => (lengthWithin(from, to, bounds) > 0 ? [index] : []));
    expect(through.filter((index) => !near.includes(index))).toEqual([]);
  },
);

test('what is far away is not asked', () => {
  const buckets = new Buckets(PANE);
  buckets.addBox(0, [10, 10, 20, 20]);
  buckets.addBox(1, [600, 400, 620, 420]);
  buckets.addLine(2, [0, 480], [690, 0]);
  expect(buckets.near([12, 12, 30, 18])).toEqual([0]);
  expect(buckets.near([640, 10, 680, 30])).toEqual([2]);
  expect(buckets.near([600, 400, 601, 401])).toEqual([1]);
});
