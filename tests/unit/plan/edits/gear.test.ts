import { expect, test } from 'vitest';
import { standTop } from '../../../../src/core/form/gear/standTop';
import { HEADS } from '../../../../src/core/kit/heads';
import { STANDS } from '../../../../src/core/kit/stands';
import { addTape } from '../../../../src/core/plan/edits/addTape';
import { plugCable } from '../../../../src/core/plan/edits/plugCable';
import { putOnStand } from '../../../../src/core/plan/edits/putOnStand';
import { removeTape } from '../../../../src/core/plan/edits/removeTape';
import { reshapeItem } from '../../../../src/core/plan/edits/reshapeItem';
import { setAim } from '../../../../src/core/plan/edits/setAim';
import { setArm } from '../../../../src/core/plan/edits/setArm';
import { setBags } from '../../../../src/core/plan/edits/setBags';
import { setBefore } from '../../../../src/core/plan/edits/setBefore';
import { setClass } from '../../../../src/core/plan/edits/setClass';
import { setGround } from '../../../../src/core/plan/edits/setGround';
import { setModifier } from '../../../../src/core/plan/edits/setModifier';
import { setPlace } from '../../../../src/core/plan/edits/setPlace';
import { setUnderlay } from '../../../../src/core/plan/edits/setUnderlay';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { standEnd } from '../../../../src/core/plan/standEnd';
import { EMPTY_PLAN } from '../../../../src/desk/emptyPlan';
import { rooftop } from '../../core/plan/edits/rooftop';
import { edited, recordOf } from './around';
import { put } from './putting';

/** An edit that sets something and takes it back: what it says in between, and that saying it again changes nothing. */
function thereAndBack(id: string, set: (plan: Plan) => Plan, back: (plan: Plan) => Plan, said: object): void {
  const plan = rooftop();
  const after = edited(plan, set);
  expect(recordOf(after, id)).toMatchObject(said);
  expect(set(after)).toBe(after);
  expect(edited(after, back)).toEqual(plan);
  expect(back(plan)).toBe(plan);
  expect(after.pieces).toBe(plan.pieces);
}

test('an arm, its tilt within straight up and down', () => {
  const arm = { lengthMetres: 1.2, tiltDegrees: 120, headingDegrees: -90 };
  thereAndBack(
    'stand',
    (plan) => setArm(plan, { id: 'stand', arm }),
    (plan) => setArm(plan, { id: 'stand', arm: null }),
    { arm: { lengthMetres: 1.2, tiltDegrees: 90, headingDegrees: 270 } },
  );
});

test('a spread of its own', () => {
  const spread = (spreadMetres: number | undefined) => (plan: Plan) =>
    reshapeItem(plan, { id: 'stand', patch: { spreadMetres } });
  thereAndBack('stand', spread(0.8), spread(undefined), { spreadMetres: 0.8 });
  expect(spread(0)(rooftop()), 'no legs have no spread').toEqual(rooftop());
});

test('bags over the legs', () => {
  thereAndBack(
    'stand',
    (plan) => setBags(plan, { id: 'stand', bags: { count: 2.4, kilograms: 60 } }),
    (plan) => setBags(plan, { id: 'stand', bags: null }),
    { bags: { count: 2, kilograms: 50 } },
  );
});

test('a yoke and a modifier', () => {
  thereAndBack(
    'lamp',
    (plan) => reshapeItem(plan, { id: 'lamp', patch: { yokeMetres: 0.4 } }),
    (plan) => reshapeItem(plan, { id: 'lamp', patch: { yokeMetres: undefined } }),
    { yokeMetres: 0.4 },
  );
  thereAndBack(
    'lamp',
    (plan) => setModifier(plan, { id: 'lamp', modifier: 'snoot' }),
    (plan) => setModifier(plan, { id: 'lamp', modifier: null }),
    { modifier: 'snoot' },
  );
});

test('gel, diffusion and scrims, within what a plan takes', () => {
  const diffusion = { transmission: 0.5, spreadDegrees: 60 };
  thereAndBack(
    'lamp',
    (plan) => setBefore(plan, { id: 'lamp', before: { mired: -131, density: 9, diffusion, doubles: 1.6 } }),
    (plan) =>
      setBefore(plan, { id: 'lamp', before: { mired: 0, density: 0, diffusion: undefined, doubles: 0 } }),
    { before: { mired: -131, density: 4, diffusion, doubles: 2 } },
  );
  const gelled = setBefore(rooftop(), { id: 'lamp', before: { mired: 33 } });
  expect(recordOf(setBefore(gelled, { id: 'lamp', before: { singles: 1 } }), 'lamp')).toMatchObject({
    before: { mired: 33, singles: 1 },
  });
  expect(setBefore(gelled, { id: 'lamp', before: { mired: 33 } })).toBe(gelled);
  expect(setBefore(rooftop(), { id: 'stand', before: { mired: 33 } }), 'no lamp').toEqual(rooftop());
});

test('an aim and a dim; what has neither stays', () => {
  const plan = rooftop();
  const aimed = edited(plan, (before) => setAim(before, { id: 'lamp', aim: [1, 2, 9000] }));
  expect(recordOf(aimed, 'lamp')).toMatchObject({ aim: [1, 2, 5000] });
  expect(setAim(plan, { id: 'lamp', aim: [0, 1.5, 0] })).toBe(plan);
  expect(setAim(plan, { id: 'flag', aim: [1, 1, 1] })).toBe(plan);
  expect(recordOf(reshapeItem(plan, { id: 'lamp', patch: { dim: 0.35 } }), 'lamp')).toMatchObject({
    dim: 0.35,
  });
  expect(reshapeItem(plan, { id: 'lamp', patch: { dim: -3 } })).toBe(plan);
  expect(reshapeItem(plan, { id: 'lamp', patch: { dim: 7 } })).toBe(plan);
  expect(reshapeItem(plan, { id: 'stand', patch: { dim: 0.5 } })).toBe(plan);
});

test('another class is copied into the kit, and a stand comes within its reach', () => {
  const [low] = STANDS.filter(({ id }) => id === 'low-stand');
  const spread = reshapeItem(rooftop(), { id: 'stand', patch: { spreadMetres: 0.9 } });
  const after = edited(spread, (plan) => setClass(plan, { id: 'stand', stand: low }));
  expect(recordOf(after, 'stand')).toMatchObject({ stand: 'low-stand', heightMetres: 1.1 });
  expect(recordOf(after, 'stand')).not.toHaveProperty('spreadMetres');
  expect(after.kit.stands.at(-1)).toBe(low);
  expect(setClass(after, { id: 'stand', stand: low })).toBe(after);
  const lamp = edited(rooftop(), (plan) => setClass(plan, { id: 'lamp', head: HEADS[0] }));
  expect(recordOf(lamp, 'lamp')).toMatchObject({ head: HEADS[0].id });
  expect(setClass(rooftop(), { id: 'tank', head: HEADS[0] }), 'no class for nothing').toEqual(rooftop());
});

test('onto a stand and off it again, plugged ends along', () => {
  const plan = put(rooftop(), 'cable', [6, 6], [3, -4]);
  expect(recordOf(plan, 'cable-1')).toMatchObject({
    plugs: { to: 'lamp' },
    path: [
      [6, 6],
      [3, -4],
    ],
  });
  const off = edited(plan, (before) => putOnStand(before, { id: 'lamp', standId: null }));
  expect(recordOf(off, 'lamp')).toMatchObject({ place: { at: [3, 3, -4] } });
  const other = put(off, 'flag-stand', [0, 2]);
  const on = edited(other, (before) => putOnStand(before, { id: 'lamp', standId: 'stand-1' }));
  expect(recordOf(on, 'lamp')).toMatchObject({ place: { on: 'stand-1' } });
  expect(recordOf(on, 'cable-1')).toMatchObject({
    path: [
      [6, 6],
      [0, 2],
    ],
  });
  expect(putOnStand(on, { id: 'lamp', standId: 'stand-1' })).toBe(on);
  expect(putOnStand(on, { id: 'lamp', standId: 'flag' }), 'that is no stand').toBe(on);
  expect(putOnStand(on, { id: 'tank', standId: 'stand-1' })).toBe(on);
});

test('where a stand holds things is where its form holds them', () => {
  const plan = put(EMPTY_PLAN, 'combo-stand-arm', [1, 2], [4, -1]);
  const [stand] = plan.gear;
  if (stand?.kind !== 'stand') throw new Error('no stand');
  const held = standTop(stand).at;
  standEnd(stand).forEach((value, axis) => {
    expect(value).toBeCloseTo(held[axis], 9);
  });
});

test('a cable is plugged into gear, and into nothing else', () => {
  const plan = rooftop();
  const plugged = edited(plan, (before) => plugCable(before, { id: 'cable', end: 'to', to: 'lamp' }));
  expect(recordOf(plugged, 'cable')).toMatchObject({
    path: [
      [3, -4],
      [3, -4],
    ],
    plugs: { to: 'lamp' },
  });
  expect(plugCable(plugged, { id: 'cable', end: 'to', to: 'lamp' })).toBe(plugged);
  for (const to of ['cable', 'tank', 'abel', 'nobody'])
    expect(plugCable(plan, { id: 'cable', end: 'to', to }), to).toBe(plan);
  expect(plugCable(plan, { id: 'cable', end: 'from', to: null })).toBe(plan);
  expect(plugCable(plan, { id: 'tank', end: 'from', to: 'lamp' })).toBe(plan);
  const pulled = plugCable(plugged, { id: 'cable', end: 'to', to: null });
  expect(recordOf(pulled, 'cable')).toMatchObject({
    path: [
      [3, -4],
      [3, -4],
    ],
  });
  expect(recordOf(pulled, 'cable')).not.toHaveProperty('plugs');
});

test('tapes are laid and taken up without a trace', () => {
  const plan = rooftop();
  const one = edited(plan, (before) => addTape(before, { from: [0, 0], to: [3, 4] }));
  expect(one.tapes).toEqual([{ id: 'tape-1', from: [0, 0], to: [3, 4] }]);
  expect(removeTape(one, { id: 'tape-1' })).toEqual(plan);
  expect(removeTape(plan, { id: 'tape-1' })).toBe(plan);
  const tapes = Array.from({ length: 400 }, (_, k) => ({ id: `t-${k}`, from: [0, 0], to: [1, 1] }));
  const full = { ...plan, tapes } as Plan;
  expect(addTape(full, { from: [0, 0], to: [3, 4] })).toBe(full);
});

test('an underlay is laid, tidied and taken away without a trace', () => {
  const plan = rooftop();
  const underlay = {
    asset: { sha256: 'a'.repeat(64), name: 'roof.jpg', bytes: 9 },
    pixels: [800, 600] as [number, number],
    at: [1, 6000] as [number, number],
    headingDegrees: -90,
    metresPerPixel: 0.02,
    strength: 2,
  };
  const laid = edited(plan, (before) => setUnderlay(before, { underlay }));
  expect(laid.underlay).toMatchObject({ at: [1, 5000], headingDegrees: 270, strength: 1 });
  expect(setUnderlay(laid, { underlay })).toBe(laid);
  expect(setUnderlay(laid, { underlay: null })).toEqual(plan);
  expect(setUnderlay(plan, { underlay: null })).toBe(plan);
});

test('the ground and the place', () => {
  const plan = rooftop();
  const wet = edited(plan, (before) => setGround(before, { patch: { wetness: 'puddled' } }));
  expect(wet.ground).toEqual({ surface: 'concrete', wetness: 'puddled' });
  expect(setGround(wet, { patch: { wetness: 'puddled' } })).toBe(wet);
  const patch = { title: 'Next night', place: { date: '2026-11-21' }, safety: { metres: 0.5 } };
  const moved = edited(plan, (before) => setPlace(before, { patch }));
  expect(moved).toMatchObject({
    title: 'Next night',
    place: { label: 'A roof', date: '2026-11-21' },
    safety: { metres: 0.5, frameWidths: 0.02 },
  });
  expect(setPlace(moved, { patch })).toBe(moved);
  expect(moved.ground).toBe(plan.ground);
});
