import { expect, test } from 'vitest';
import { boxOf, frameIn, overlap } from '../../../../src/screens/frame/pictureBox';
import { placeLabels } from '../../../../src/screens/frame/placeLabels';

const AREA = { left: 0, top: 0, width: 600, height: 250 };

test('the delivered frame takes the middle of the look-around, with its own aspect', () => {
  const box = frameIn(704, 704 / 2.39, 1.1);
  expect(box.width).toBeCloseTo(640);
  expect(box.left).toBeCloseTo(32);
  expect(box.width / box.height).toBeCloseTo(2.39);
});

test('an extent is drawn where it lies, and never too small to be seen', () => {
  expect(boxOf(AREA, [0.5, 0.2, 0.75, 1])).toEqual({ left: 300, top: 50, width: 150, height: 200 });
  expect(boxOf(AREA, [0.5, 0, 0.5, 1])).toEqual({ left: 297, top: 0, width: 6, height: 250 });
});

test('labels lie inside the picture, beside their marks, and over no other label', () => {
  const marks = Array.from({ length: 4 }, (_, place) => ({
    mark: { left: 560 - place * 20, top: 20, width: 10, height: 200 },
    width: 140,
    height: 38,
  }));
  const places = placeLabels(marks, AREA);
  const found = places.filter((place) => place !== null);
  expect(found.length).toBeGreaterThan(1);
  for (const [index, a] of found.entries()) {
    expect(a.left).toBeGreaterThanOrEqual(0);
    expect(a.left + a.width).toBeLessThanOrEqual(600);
    for (const b of found.slice(index + 1)) {
      const apart =
        a.left + a.width <= b.left ||
        b.left + b.width <= a.left ||
        a.top + a.height <= b.top ||
        b.top + b.height <= a.top;
      expect(apart).toBe(true);
    }
  }
});

test('a label that finds no room is left out', () => {
  const whole = { mark: { left: 0, top: 0, width: 600, height: 250 }, width: 140, height: 38 };
  expect(placeLabels([whole], AREA)).toEqual([null]);
});

test('a label stays off what is outlined in the picture, a little farther away where it has to', () => {
  // A bag at the foot of a stand at the edge of the frame: on either side of it the stand's legs go up.
  const bag = { mark: { left: 560, top: 180, width: 30, height: 20 }, width: 140, height: 38 };
  const legs = { left: 500, top: 100, width: 40, height: 120 };
  const column = { left: 545, top: 0, width: 12, height: 100 };
  const [place] = placeLabels([bag], AREA, [], [legs, column, bag.mark]);
  expect(place).not.toBeNull();
  for (const outlined of [legs, column, bag.mark]) expect(place && overlap(place, outlined)).toBe(false);
  // Where there is no other room it lies over that, and never over what it speaks of.
  const all = { left: 0, top: 0, width: 600, height: 250 };
  const [over] = placeLabels([bag], AREA, [], [all]);
  expect(over && overlap(over, bag.mark)).toBe(false);
});
