import { expect, test } from 'vitest';
import { framesBetween, ThumbTurns } from '../../../src/scene/drive/thumbTurns';

test('where a thumbnail fits into the display’s period, one is printed in every frame; else seldom', () => {
  expect(framesBetween(16.7, 4, 6)).toBe(1);
  expect(framesBetween(16.7, 9, 6)).toBe(30);
});

test('where frames come late, thumbnails slow them down by a twentieth at most, and never below ten a second', () => {
  // 40 ms in each 40th frame of 20 ms: 1 ms a frame, a twentieth.
  expect(framesBetween(20, 40, 5)).toBe(40);
  // At 98 ms a frame only 2 ms are left to ten a second: 40 ms in each 20th frame.
  expect(framesBetween(98, 40, 5)).toBe(20);
  // Slower than that already: a twentieth.
  expect(framesBetween(200, 40, 5)).toBe(4);
});

test('a play counts its own frames: none is printed before their rate is known, and the frame after one does not count', () => {
  const turns = new ThumbTurns();
  expect(turns.frame(0, 5)).toBe(false);
  expect(turns.frame(50, 5)).toBe(true);
  turns.printed(30);
  // 30 ms in each 12th frame of 50 ms. The gap of 80 ms that the print has made counts for nothing.
  const prints = Array.from({ length: 12 }, (_, k) => turns.frame(130 + 50 * k, 5));
  expect(prints).toEqual([...Array(11).fill(false), true]);
});

test('a card that is late after each thumbnail gets them seldom, however little the processor has to do for one', () => {
  const turns = new ThumbTurns();
  const period = 1000 / 60;
  let now = 0;
  let printed = 0;
  for (let frame = 0; frame < 600; frame += 1) {
    const prints = turns.frame(now, 3);
    if (prints) turns.printed(2);
    if (prints) printed += 1;
    // The card needs a period more for it.
    now += prints ? 2 * period : period;
  }
  expect(printed).toBeGreaterThan(10);
  expect(printed).toBeLessThan(40);
});

test('pictures that are drawn coarser to be in time have the card to themselves in all but one of thirty frames', () => {
  const turns = new ThumbTurns();
  const prints = Array.from({ length: 302 }, (_, k) => {
    const may = turns.frame((k * 1000) / 60, 3, true);
    if (may) turns.printed(2);
    return may;
  });
  expect(prints.filter(Boolean)).toHaveLength(11);
});
