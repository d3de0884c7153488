import { expect, test } from 'vitest';
import type { Vec3 } from '../../../../src/core/form/build/vector';
import { cameraAt } from '../../../../src/core/optics/camera';
import type { Standpoint } from '../../../../src/desk/walkStore';
import { chosenRooms } from '../../../../src/scene/walk/chosenRounds';
import { edgesOf } from '../../../../src/scene/walk/grounds';
import { standOf } from '../../../../src/scene/walk/standpoints';
import { DEMO, readPlan } from '../../../plans/readPlan';
import { viewFrom } from './views';

const plan = readPlan(DEMO);
const [setup] = plan.setups;
const UP = Math.tan((42 * Math.PI) / 360);

function stand(standpoint: Standpoint, ids: readonly string[] = [], from: Vec3 = [9, 8, 12]) {
  return standOf(standpoint, {
    plan,
    seconds: 9,
    setup,
    rooms: chosenRooms(plan, ids, 9),
    from: { eye: from, target: [0, 1, 0] },
    halves: [(UP * 800) / 600, UP],
  });
}

/** Whether a place lies in the picture of a pane of 800 by 600 pixels. */
function shows(found: ReturnType<typeof stand>, place: Vec3): boolean {
  const pixel = found && viewFrom(found.eye, found.target).pixelOf(place);
  return pixel !== null && pixel[0] >= 0 && pixel[0] <= 800 && pixel[1] >= 0 && pixel[1] <= 600;
}

test('from above all corners of the deck are in the picture', () => {
  const deck = plan.pieces.find(({ kind }) => kind === 'deck');
  if (deck?.kind !== 'deck') throw new Error('the demo has a deck');
  const above = stand('from above');
  for (const [x, z] of deck.outline) expect(shows(above, [x, 0, z])).toBe(true);
});

test('the eye of a person stands on what is there', () => {
  expect(stand('eye level')?.eye[1]).toBeCloseTo(1.6, 5);
});

test('from the camera one sees from its place the way that it looks', () => {
  const { pose } = cameraAt(plan, setup, 9);
  const found = stand('from the camera');
  expect(found?.eye).toEqual(pose.position);
  const [x, y, z] = pose.position;
  expect(shows(found, [x + pose.forward[0] * 5, y, z + pose.forward[2] * 5])).toBe(true);
});

test('what is chosen is in the picture whole, from a little above, and there is nowhere to stand for nothing', () => {
  expect(stand('at the chosen')).toBeNull();
  for (const ids of [['stand-2'], ['yard'], ['stand-1', 'cart', 'tank']]) {
    const found = stand('at the chosen', ids, [9, 1.1, 12]);
    for (const room of chosenRooms(plan, ids, 9)) {
      for (const edge of edgesOf(room)) for (const place of edge) expect(shows(found, place)).toBe(true);
    }
    expect(found && found.eye[1] - found.target[1]).toBeGreaterThan(0.2);
  }
});
