import { expect, test } from 'vitest';
import { signSpots } from '../../../../src/screens/overhead/cautions/signSpots';
import { sharedArea } from '../../../../src/screens/overhead/geometry/clipping';
import type { Bounds } from '../../../../src/screens/overhead/geometry/spots';

const PANE: Bounds = [0, 0, 400, 300];
const HALF = 8;
const boxAt = ([x, y]: readonly [number, number]): Bounds => [x - HALF, y - HALF, x + HALF, y + HALF];

test('a sign stands up and right of what it is about, where nothing lies there', () => {
  const [{ spot, isFar }] = signSpots([{ at: [100, 100], half: HALF }], [], PANE);
  expect(spot[0]).toBeGreaterThan(100 + HALF);
  expect(spot[1]).toBeLessThan(100 - HALF);
  expect(isFar).toBe(false);
});

test('it goes another way where a name lies there, and far off on a line where names lie all around', () => {
  const above: Bounds = [105, 70, 180, 95];
  const [beside] = signSpots([{ at: [100, 100], half: HALF }], [above], PANE);
  expect(sharedArea(boxAt(beside.spot), above)).toBe(0);
  expect(beside.isFar).toBe(false);
  const around: Bounds = [72, 72, 128, 128];
  const [off] = signSpots([{ at: [100, 100], half: HALF }], [around], PANE);
  expect(sharedArea(boxAt(off.spot), around)).toBe(0);
  expect(off.isFar).toBe(true);
});

test('signs of one place lie side by side, all of them within the pane', () => {
  const wishes = Array.from({ length: 3 }, () => ({ at: [370, 30], half: HALF }) as const);
  const boxes = signSpots(wishes, [], PANE).map(({ spot }) => boxAt(spot));
  for (const [k, box] of boxes.entries()) {
    expect(box[0] >= 0 && box[1] >= 0 && box[2] <= 400 && box[3] <= 300).toBe(true);
    for (const other of boxes.slice(k + 1)) expect(sharedArea(box, other)).toBe(0);
  }
});

test('where no place is free it covers as little as can be', () => {
  const all: Bounds = [0, 0, 400, 300];
  const worse: Bounds = [100, 0, 400, 300];
  const [{ spot }] = signSpots([{ at: [100, 100], half: HALF }], [all, worse], PANE);
  expect(sharedArea(boxAt(spot), worse)).toBe(0);
});
