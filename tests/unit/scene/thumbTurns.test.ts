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
  // The first readies the shaders, for 3 s: that counts for nothing, and four frames later the second shows what one takes.
  turns.printed(3000);
  expect([3100, 3150, 3200, 3250].map((now) => turns.frame(now, 5))).toEqual([false, false, false, true]);
  turns.printed(30);
  // 30 ms in each 12th frame of 50 ms. The gap of 80 ms that the print has made counts for nothing.
  const prints = Array.from({ length: 12 }, (_, k) => turns.frame(3330 + 50 * k, 5));
  expect(prints).toEqual([...Array(11).fill(false), true]);
});

test('thumbnails that have become quicker come more often after the next, not after many', () => {
  const turns = new ThumbTurns();
  let now = 0;
  const framesToNext = (cost: number): number => {
    for (let frames = 1; ; frames += 1) {
      now += 50;
      if (!turns.frame(now, 5)) continue;
      turns.printed(cost);
      return frames;
    }
  };
  for (const cost of [30, 300, 30, 30]) framesToNext(cost);
  // From 300 ms over 138 to 73: 30 frames of 50 ms, four fifths of what was would leave 81.
  expect(framesToNext(30)).toBeLessThanOrEqual(30);
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
