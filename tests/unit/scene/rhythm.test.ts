import { expect, test } from 'vitest';
import { Rhythm } from '../../../src/scene/drive/rhythm';

/** Plays so many frames on a card that needs `full` milliseconds for a full picture, on a display of 60 a second if none is named. */
function play(rhythm: Rhythm, full: number, frames: number, period = 1000 / 60): number[] {
  let now = 0;
  let share = 1;
  const shares: number[] = [];
  for (let frame = 0; frame < frames; frame += 1) {
    // A frame appears with the display's next one after it is done.
    now += Math.max(1, Math.ceil((full * share * share) / period)) * period;
    share = rhythm.frame(now, true);
    shares.push(share);
  }
  return shares;
}

test('a card that keeps up draws in full', () => {
  expect(new Set(play(new Rhythm(), 12, 600))).toEqual(new Set([1]));
});

test('a card that does not draws coarser until it keeps up, and no coarser', () => {
  const shares = play(new Rhythm(), 28, 200);
  // 28 ms at 0.71 of the sides is 14 ms, in time; at 0.84 it is 20 ms, late.
  expect(shares.slice(30, 100)).toEqual(Array(70).fill(0.71));
});

test('a finer step that fails is tried more and more seldom', () => {
  const shares = play(new Rhythm(), 28, 6000);
  const tries = shares.flatMap((share, k) => (share === 0.84 && shares[k - 1] === 0.71 ? [k] : []));
  expect(tries.length).toBeGreaterThan(1);
  expect(tries.length).toBeLessThan(12);
  const late = shares.filter((share) => share > 0.71).length;
  expect(late / shares.length).toBeLessThan(0.01);
});

test('half the sides is the coarsest, and what rests is drawn in full', () => {
  const rhythm = new Rhythm();
  expect(play(rhythm, 120, 100).at(-1)).toBe(0.5);
  expect(rhythm.frame(1e6, false)).toBe(1);
});

test('a pause is no late frame', () => {
  const rhythm = new Rhythm();
  let now = 0;
  for (let k = 0; k < 100; k += 1) {
    now += k % 10 === 0 ? 900 : 1000 / 60;
    expect(rhythm.frame(now, true)).toBe(1);
  }
});

test('a display of fifty a second is no late one', () => {
  expect(new Set(play(new Rhythm(), 12, 600, 20))).toEqual(new Set([1]));
  expect(play(new Rhythm(), 28, 200, 20).slice(30, 100)).toEqual(Array(70).fill(0.84));
});

test('one frame in nine that is late is seen, and the picture is drawn coarser for it', () => {
  const rhythm = new Rhythm();
  let now = 0;
  const shares = Array.from({ length: 120 }, (_, k) => {
    now += ((k % 9 === 0 ? 2 : 1) * 1000) / 60;
    return rhythm.frame(now, true);
  });
  expect(shares.at(-1)).toBeLessThan(0.7);
});
