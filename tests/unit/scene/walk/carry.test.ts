import { expect, test } from 'vitest';
import type { Vec3 } from '../../../../src/core/form/build/vector';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { carry } from '../../../../src/scene/walk/hand/carry';
import { footOfTarget, hitAlong, type Target } from '../../../../src/scene/walk/hand/targets';
import { Picker } from '../../../../src/scene/walk/picking';
import type { Pixel, WalkView } from '../../../../src/scene/walk/walkView';
import { DEMO, readPlan } from '../../../plans/readPlan';
import { smallRoof } from '../../smallRoof';
import { viewFrom } from './views';

/** Nothing catches, so that a thing lands exactly where it is taken. */
const FREE = { shift: false, alt: true };

function pixelOf(view: WalkView, place: Vec3): Pixel {
  const pixel = view.pixelOf(place);
  if (!pixel) throw new Error('the place lies behind the eye');
  return pixel;
}

function carried(plan: Plan, target: Target, place: Vec3, to: Vec3, view: WalkView): Plan {
  const ids = target.type === 'item' ? [target.id] : [];
  const foot = footOfTarget(plan, target, 0, place);
  if (!foot) throw new Error('it stands somewhere');
  // The hand may hold it anywhere: it goes as far in the picture as the foot is to go.
  const from = pixelOf(view, place);
  const [a, b] = [pixelOf(view, foot), pixelOf(view, to)];
  const grasp = carry(plan, { target, place }, ids, 0, from, view);
  const after = grasp?.to([from[0] + b[0] - a[0], from[1] + b[1] - a[1]], view, FREE)?.plan;
  if (!after) throw new Error('it leads somewhere');
  return after;
}

const placeOf = (plan: Plan, id: string) => {
  const record = [...plan.gear, ...plan.pieces].find((each) => each.id === id);
  return record && 'at' in record ? record.at : null;
};

test('held by its top, a stand goes where its foot is taken in the picture', () => {
  const plan = smallRoof();
  const view = viewFrom([4, 5, 14], [-2, 1, 6]);
  const after = carried(plan, { type: 'item', id: 'stand-out' }, [-3, 2, 7.5], [1.25, 0, 4.5], view);
  const [x, y, z] = placeOf(after, 'stand-out') ?? [0, 9, 0];
  expect([x, z].map((metres) => Math.round(metres * 1000) / 1000)).toEqual([1.25, 4.5]);
  expect(y).toBe(0);
});

test('taken onto a box, a thing stands on it; taken off, on the deck again', () => {
  const demo = readPlan(DEMO);
  const view = viewFrom([5, 5, 4], [2, 0.5, -4]);
  const on = carried(
    demo,
    { type: 'item', id: 'flag-stand' },
    [3.2, 1, 4.7],
    [-1, 0.4, -5.1],
    viewFrom([1, 7, 12], [1, 0, -2]),
  );
  expect(placeOf(on, 'flag-stand')?.[1]).toBeCloseTo(0.4, 5);
  const off = carried(demo, { type: 'item', id: 'crate-2' }, [1.8, 0.7, -4.5], [4, 0, -2], view);
  expect(placeOf(off, 'crate-2')?.[1]).toBe(0);
});

test('a thing behind a roof does not jump onto it', () => {
  const demo = readPlan(DEMO);
  // From above and in front: the foot of the stand lies behind the edge of the stair house's roof.
  const view = viewFrom([-10.5, 6.5, 4], [-7.5, 1, -7]);
  const place: Vec3 = [-6.85, 1.5, -7.15];
  const foot = pixelOf(view, [-6.85, 0, -7.15]);
  const grasp = carry(demo, { target: { type: 'item', id: 'stand-1' }, place }, ['stand-1'], 0, foot, view);
  const after = grasp?.to([foot[0] + 3, foot[1]], view, FREE)?.plan;
  expect(placeOf(after ?? demo, 'stand-1')?.[1]).toBe(0);
});

test('marks and cameras are found and moved too', () => {
  const plan = smallRoof();
  const view = viewFrom([4, 6, 6], [0, 0, -2]);
  const mark = plan.cast[0].marks[1];
  const place: Vec3 = [mark.at[0], 0, mark.at[1]];
  const options = { widthAtOne: view.widthAtOne, tolerance: 5, everything: false };
  const hit = hitAlong(new Picker(), plan, 0, view.rayAt(pixelOf(view, place)), options);
  expect(hit?.target).toEqual({ type: 'mark', performerId: 'ana', markId: mark.id });
  if (!hit) return;
  const after = carried(plan, hit.target, place, [2.5, 0, 0], view);
  expect(after.cast[0].marks[1].at[0]).toBeCloseTo(2.5, 3);
  expect(after.cast[0].marks[0]).toBe(plan.cast[0].marks[0]);
  const [setup] = plan.setups;
  const [x, y, z] = setup.move.keys[0].position;
  const camera = viewFrom([x + 4, y + 4, z + 4], [x, y, z]);
  const seen = hitAlong(new Picker(), plan, 0, camera.rayAt(pixelOf(camera, [x, y, z])), options);
  expect(seen?.target).toEqual({ type: 'camera', setupId: setup.id });
  const moved = carried(plan, { type: 'camera', setupId: setup.id }, [x, y, z], [x + 1, y, z - 1], camera);
  expect(moved.setups[0].move.keys[0].position[1]).toBe(y);
  expect(moved.setups[0].move.keys[0].position[0]).toBeCloseTo(x + 1, 3);
});
