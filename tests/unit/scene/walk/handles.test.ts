import { expect, test } from 'vitest';
import type { Vec3 } from '../../../../src/core/form/build/vector';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { gripOf, handleNear, overlayMarkup } from '../../../../src/scene/walk/hand/drawn';
import { type Handle, type HandleKind, handlesOf } from '../../../../src/scene/walk/hand/handles';
import { pull } from '../../../../src/scene/walk/hand/pull';
import { Picker } from '../../../../src/scene/walk/picking';
import type { Pixel, WalkView } from '../../../../src/scene/walk/walkView';
import { smallRoof } from '../../smallRoof';
import { viewFrom } from './views';

const plan = smallRoof();
const FREE = { shift: false, alt: false };
const CHOSEN = (id: string) => ({ type: 'items', ids: [id] }) as const;

function handleOf(id: string, kind: HandleKind, view: WalkView, of: Plan = plan): Handle {
  const handle = handlesOf(of, CHOSEN(id), 0, view).find((each) => each.kind === kind);
  if (!handle) throw new Error(`${id} has no handle to ${kind} it`);
  return handle;
}

function pixelOf(view: WalkView, place: Vec3): Pixel {
  const pixel = view.pixelOf(place);
  if (!pixel) throw new Error('the place lies behind the eye');
  return pixel;
}

function taken(id: string, from: Pixel, view: WalkView) {
  return { plan, subject: CHOSEN(id), seconds: 0, from, view, picker: new Picker() };
}

const gearOf = (after: Plan | undefined, id: string) => after?.gear.find((gear) => gear.id === id);

test('a stand is turned by its round, raised by its top, and has no aim; a lamp on it has one', () => {
  const view = viewFrom([4, 4, 12], [-3, 1, 7.5]);
  const kinds = (id: string) => handlesOf(plan, CHOSEN(id), 0, view).map(({ kind }) => kind);
  expect(kinds('stand-out')).toEqual(['turn', 'raise']);
  expect(kinds('head-in')).toEqual(['turn', 'raise', 'aim']);
  expect(kinds('fence')).toContain('corner');
  expect(handleOf('stand-out', 'raise', view).place).toEqual([-3, 2, 7.5]);
});

test('what is locked or hidden has no handles', () => {
  const view = viewFrom([4, 4, 12], [-3, 1, 7.5]);
  for (const state of [{ locked: true }, { hidden: true }]) {
    const gear = plan.gear.map((each) => (each.id === 'stand-out' ? { ...each, ...state } : each));
    expect(handlesOf({ ...plan, gear }, CHOSEN('stand-out'), 0, view)).toEqual([]);
  }
});

test('the grip nearest to a pixel is taken, and none from farther than the reach', () => {
  const view = viewFrom([4, 4, 12], [-3, 1, 7.5]);
  const handles = handlesOf(plan, CHOSEN('stand-out'), 0, view);
  const grip = gripOf(handleOf('stand-out', 'raise', view), view);
  if (!grip) throw new Error('the grip is in view');
  expect(handleNear(handles, view, [grip[0] + 10, grip[1]], 16)?.kind).toBe('raise');
  expect(handleNear(handles, view, [grip[0] + 17, grip[1]], 16)).toBeNull();
});

test('pulled up, a stand extends as far as the hand goes, by whole steps and to its limit', () => {
  const view = viewFrom([4, 4, 12], [-3, 1, 7.5]);
  const handle = handleOf('stand-out', 'raise', view);
  const from = gripOf(handle, view) ?? [0, 0];
  const grasp = pull(handle, taken('stand-out', from, view));
  const by = (place: Vec3): Pixel => {
    const [a, b] = [pixelOf(view, [-3, 2, 7.5]), pixelOf(view, place)];
    return [from[0] + b[0] - a[0], from[1] + b[1] - a[1]];
  };
  const raised = grasp.to(by([-3, 2.61, 7.5]), view, FREE);
  expect(gearOf(raised?.plan, 'stand-out')).toMatchObject({ heightMetres: 2.6 });
  expect(raised?.words).toBe('2.60\u00a0m');
  expect(gearOf(grasp.to(by([-3, 9, 7.5]), view, FREE)?.plan, 'stand-out')).toMatchObject({
    heightMetres: 4,
  });
  expect(gearOf(grasp.to(by([-3, 0.2, 7.5]), view, FREE)?.plan, 'stand-out')).toMatchObject({
    heightMetres: 1.2,
  });
  expect(grasp.to(from, view, FREE)?.plan).toBe(plan);
});

test('pulled round, a stand turns to whole steps of the compass under the hand', () => {
  const view = viewFrom([-3, 9, 12], [-3, 0, 7.5]);
  const handle = handleOf('stand-out', 'turn', view);
  const from = pixelOf(view, handle.place);
  const grasp = pull(handle, taken('stand-out', from, view));
  const radius = handle.round?.radiusMetres ?? 0;
  const to = (degrees: number): Pixel => {
    const turn = (degrees * Math.PI) / 180;
    const [x, y, z] = handle.round?.centre ?? [0, 0, 0];
    return pixelOf(view, [x + Math.sin(turn) * radius, y, z - Math.cos(turn) * radius]);
  };
  const headingAfter = (degrees: number, held = FREE) =>
    gearOf(grasp.to(to(degrees), view, held)?.plan, 'stand-out');
  expect(headingAfter(92)).toMatchObject({ headingDegrees: 90 });
  expect(headingAfter(-32)).toMatchObject({ headingDegrees: 330 });
  expect(headingAfter(40, { shift: true, alt: false })).toMatchObject({ headingDegrees: 45 });
  expect(headingAfter(12.3, { shift: false, alt: true })).toMatchObject({ headingDegrees: 12.3 });
});

test('a lamp is aimed at whatever is under the hand', () => {
  const view = viewFrom([3, 2, 4], [0, 1.2, -2]);
  const handle = handleOf('head-in', 'aim', view);
  const grasp = pull(handle, taken('head-in', pixelOf(view, handle.place), view));
  const onDeck = grasp.to(pixelOf(view, [-2, 0, 0]), view, FREE);
  expect(gearOf(onDeck?.plan, 'head-in')).toMatchObject({ aim: [-2, 0, 0] });
  const onAna = grasp.to(pixelOf(view, [0, 1.2, -2]), view, FREE);
  const head = gearOf(onAna?.plan, 'head-in');
  if (head?.kind !== 'head') throw new Error('the lamp has stayed a lamp');
  // On her front, not on the deck behind her.
  expect(head.aim[1]).toBeGreaterThan(1);
  expect(head.aim[2]).toBeGreaterThan(-2.4);
  expect(onAna?.words).toContain('Ana');
});

test('a corner of a fence goes where the hand goes, on the level of its foot', () => {
  const view = viewFrom([-4, 5, 4], [-8, 0, -7]);
  const handle = handleOf('fence', 'corner', view);
  const grasp = pull(handle, taken('fence', pixelOf(view, handle.place), view));
  const after = grasp.to(pixelOf(view, [-6.02, 0, -4.98]), view, { shift: false, alt: true })?.plan;
  const fence = after?.pieces.find(({ id }) => id === 'fence');
  if (fence?.kind !== 'fence') throw new Error('the fence has stayed a fence');
  expect(fence.path[0][0]).toBeCloseTo(-6.02, 2);
  expect(fence.path[0][1]).toBeCloseTo(-4.98, 2);
  expect(fence.path[1]).toEqual([8, -7]);
});

test('the drawing has a grip for every handle, and dashes only what is not in the plan', () => {
  const view = viewFrom([4, 4, 12], [-3, 1, 7.5]);
  const handles = handlesOf(plan, CHOSEN('stand-out'), 0, view);
  const nothing = { near: null, drafts: [], stroke: [], crosshair: null, guides: [] };
  const markup = overlayMarkup({ ...nothing, handles }, view);
  expect(markup.match(/class="grip/g)).toHaveLength(2);
  expect(markup).not.toContain('draft');
  const room = { ground: [[-3, 7] as const], closed: true, isRun: false, lowMetres: 0, highMetres: 1 };
  const draft = { ...room, ground: room.ground.map(([x, z]): [number, number] => [x, z]) };
  expect(overlayMarkup({ ...nothing, handles: [], drafts: [draft] }, view)).toContain('class="draft"');
});
