import { describe, expect, test } from 'vitest';
import { whereabouts } from '../../../src/core/form/figure/whereabouts';
import { cameraAt, frameShapeOf, stateAt, swayingCameraAt } from '../../../src/core/optics/camera';
import { focusAt } from '../../../src/core/optics/focusAt';
import { panTiltToHold } from '../../../src/core/optics/operator';
import { poseOf } from '../../../src/core/optics/pose';
import { projectPoint } from '../../../src/core/optics/project';
import { swayAt, swayReach } from '../../../src/core/optics/sway';
import type { FrameShape } from '../../../src/core/optics/types';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { alongTrack, trackPointAt } from '../../../src/core/plan/trackLine';
import { planFrom } from '../../plans/bare';
import { dice } from '../../plans/draw';
import { DEMO, readPlan } from '../../plans/readPlan';

/** Without its night, which is about setups that are left out here. */
const { night: _, ...demo } = readPlan(DEMO);
const track = {
  id: 'bent',
  label: 'Bent track',
  kind: 'track',
  at: [1, 0, 2],
  headingDegrees: 0,
  lengthMetres: 6,
  gaugeMetres: 0.62,
} as const;

describe('a track', () => {
  test('runs straight from its rear end to its front end', () => {
    const straight = { ...track, at: [1, 0, 2] as [number, number, number] };
    expect(trackPointAt(straight, 0).at).toEqual([1, 0, 5]);
    expect(trackPointAt(straight, 6).at).toEqual([1, 0, -1]);
    // Never off its ends.
    expect(trackPointAt(straight, 99).at).toEqual([1, 0, -1]);
    expect(alongTrack(straight, [4, 0])).toBeCloseTo(5, 6);
  });

  test('bends to the right of its heading when its radius is positive, on an arc of its length', () => {
    const bent = { ...track, at: [0, 0, 0] as [number, number, number], bendMetres: 4 };
    const end = trackPointAt(bent, 6);
    // Three metres on from the middle, on a circle of 4 m about (4, 0): 0.75 rad.
    expect(end.at[0]).toBeCloseTo(4 - 4 * Math.cos(0.75), 9);
    expect(end.at[2]).toBeCloseTo(-4 * Math.sin(0.75), 9);
    expect(end.headingDegrees).toBeCloseTo((0.75 * 180) / Math.PI, 9);
    let length = 0;
    for (let k = 0; k < 600; k += 1) {
      const [a, b] = [trackPointAt(bent, k / 100).at, trackPointAt(bent, (k + 1) / 100).at];
      length += Math.hypot(b[0] - a[0], b[2] - a[2]);
    }
    expect(length).toBeCloseTo(6, 4);
    expect(alongTrack(bent, [end.at[0], end.at[2]])).toBeCloseTo(6, 4);
    expect(trackPointAt({ ...bent, bendMetres: -4 }, 6).at[0]).toBeLessThan(0);
  });
});

/** The demo with one setup that is changed. */
function withSetup(change: object, gear: readonly object[] = []): Plan {
  const [setup] = demo.setups;
  return planFrom({ ...demo, gear: [...demo.gear, ...gear], setups: [{ ...setup, ...change }] });
}

const key = (atSeconds: number, more: object = {}) => ({
  atSeconds,
  position: [0, 1.5, 6],
  headingDegrees: 0,
  tiltDegrees: 0,
  rollDegrees: 0,
  ...more,
});

test('a key may hang on a beat, and goes with it', () => {
  const [first, second] = demo.beats;
  const keys = [key(0, { beat: first.id }), key(1, { beat: second.id, position: [4, 1.5, 6] })];
  const plan = withSetup({ move: { ease: 'linear', keys } });
  const late = {
    ...plan,
    beats: plan.beats.map((beat) =>
      beat === plan.beats[1] ? { ...beat, atSeconds: beat.atSeconds + 1 } : beat,
    ),
  };
  const end = second.atSeconds + 1;
  expect(stateAt(plan, plan.setups[0], end).position[0]).toBe(4);
  expect(stateAt(late, late.setups[0], end).position[0]).toBeLessThan(4);
  expect(stateAt(late, late.setups[0], end + 1).position[0]).toBe(4);
});

test('a dolly keeps to its curved track between its keys', () => {
  const bent = { ...track, at: [0, 0, 6], bendMetres: 5 };
  const keys = [key(0, { alongMetres: 1 }), key(4, { alongMetres: 5, position: [0, 1.9, 6] })];
  const plan = withSetup({ support: 'dolly', track: 'bent', move: { ease: 'linear', keys } }, [bent]);
  for (const [seconds, along] of [
    [0, 1],
    [1, 2],
    [2, 3],
    [4, 5],
  ] as const) {
    const { position } = stateAt(plan, plan.setups[0], seconds);
    const { at } = trackPointAt(
      { ...bent, at: [0, 0, 6], kind: 'track' } as Parameters<typeof trackPointAt>[0],
      along,
    );
    expect(position[0]).toBeCloseTo(at[0], 9);
    expect(position[2]).toBeCloseTo(at[2], 9);
    // 5 m off the middle of the arc, whatever the moment.
    expect(Math.hypot(position[0] - 5, position[2] - 6)).toBeCloseTo(5, 9);
  }
  expect(stateAt(plan, plan.setups[0], 2).position[1]).toBeCloseTo(1.7, 9);
});

describe('an operator who holds somebody', () => {
  test('keeps their eyes at the place of the frame at every instant, rolled or on a bending lens', () => {
    const [setup] = demo.setups;
    const [performer] = demo.cast;
    const bending = { k1: -0.08, k2: 0.01, k3: 0, p1: 0, p2: 0 };
    const lenses = demo.kit.lenses.map((lens) =>
      lens.id === setup.lens ? { ...lens, distortion: bending } : lens,
    );
    const base = withSetup({
      operator: { hold: performer.id, at: [0.33, 0.4] },
      move: {
        ease: 'eased',
        keys: [key(0, { rollDegrees: 6 }), key(8, { position: [3, 1.1, 5], rollDegrees: -9 })],
      },
    });
    for (const plan of [base, { ...base, kit: { ...base.kit, lenses } }]) {
      for (let seconds = 0; seconds <= 8; seconds += 0.5) {
        const place = whereabouts(plan.cast[0], plan, seconds);
        const seen = place && projectPoint(cameraAt(plan, plan.setups[0], seconds), place.eyes);
        expect(seen?.x).toBeCloseTo(0.33, 9);
        expect(seen?.y).toBeCloseTo(0.4, 9);
      }
    }
  });

  test('for 500 random poses, rolls and places', () => {
    const roll = dice(7);
    for (let k = 0; k < 500; k += 1) {
      const frame: FrameShape = {
        tanHalfWidth: roll(0.05, 0.9),
        tanHalfHeight: roll(0.05, 0.5),
        aspect: 2,
        distortion: null,
      };
      const position = [roll(-9, 9), roll(0, 4), roll(-9, 9)] as const;
      const point = [roll(-9, 9), roll(0, 3), roll(-9, 9)] as const;
      if (Math.hypot(point[0] - position[0], point[2] - position[2]) < 2) continue;
      const at = [roll(0, 1), roll(0, 1)] as const;
      const turn = roll(-80, 80);
      const { headingDegrees, tiltDegrees } = panTiltToHold(position, point, at, turn, frame);
      const seen = projectPoint({ pose: poseOf(position, headingDegrees, tiltDegrees, turn), frame }, point);
      expect(seen?.x).toBeCloseTo(at[0], 9);
      expect(seen?.y).toBeCloseTo(at[1], 9);
    }
  });
});

describe('the unrest of a shoulder', () => {
  const sway = { seed: 5, metres: 0.03, degrees: 1.5, counted: true };
  test('is the same for the same seed, another for another, and never more than it says', () => {
    expect(swayAt(sway, 3.2)).toEqual(swayAt({ ...sway }, 3.2));
    expect(swayAt(sway, 3.2)).not.toEqual(swayAt({ ...sway, seed: 6 }, 3.2));
    let most = 0;
    for (let seconds = 0; seconds < 200; seconds += 0.1) {
      const unrest = swayAt(sway, seconds);
      for (const metres of unrest.metres) expect(Math.abs(metres)).toBeLessThanOrEqual(0.03);
      expect(Math.abs(unrest.tiltDegrees)).toBeLessThanOrEqual(1.5);
      most = Math.max(most, Math.abs(unrest.headingDegrees));
    }
    expect(most).toBeGreaterThan(0.9);
  });

  test('brings nothing nearer to the frame line than the reach says', () => {
    const plan = withSetup({ sway, move: { ease: 'linear', keys: [key(0)] } });
    const [setup] = plan.setups;
    const frame = frameShapeOf(plan, setup);
    const steady = cameraAt(plan, setup, 0);
    const point = [5, 1.5, -4] as const;
    const [x, , depth] = [point[0], 0, 6 - point[2]];
    const outside = x - depth * frame.tanHalfWidth;
    const reach = swayReach(sway, Math.hypot(x, depth), frame.tanHalfWidth);
    let most = 0;
    for (let seconds = 0; seconds < 400; seconds += 0.05) {
      const { pose } = swayingCameraAt(plan, setup, seconds);
      const from = [0, 1, 2].map((axis) => point[axis] - pose.position[axis]);
      const right = from[0] * pose.right[0] + from[1] * pose.right[1] + from[2] * pose.right[2];
      const ahead = from[0] * pose.forward[0] + from[1] * pose.forward[1] + from[2] * pose.forward[2];
      most = Math.max(most, outside - (right - ahead * frame.tanHalfWidth));
    }
    expect(steady.pose.position).toEqual([0, 1.5, 6]);
    expect(most).toBeLessThanOrEqual(reach);
    expect(most).toBeGreaterThan(reach * 0.3);
  });
});

test('a zoom narrows the frame on its way, and stops at its ends', () => {
  const [setup] = demo.setups;
  const lenses = demo.kit.lenses.map((lens) =>
    lens.id === setup.lens ? { ...lens, longestMm: lens.focalMm * 4 } : lens,
  );
  const base = withSetup({ move: { ease: 'linear', keys: [key(0), key(8, { focalMm: 3000 })] } });
  const plan = { ...base, kit: { ...base.kit, lenses } };
  const [own] = plan.setups;
  const wide = frameShapeOf(plan, own).tanHalfWidth;
  expect(cameraAt(plan, own, 0).frame.tanHalfWidth).toBe(wide);
  expect(cameraAt(plan, own, 8).frame.tanHalfWidth).toBeCloseTo(wide / 4, 12);
  // On a lens that is no zoom the number says nothing.
  expect(cameraAt(base, base.setups[0], 8).frame.tanHalfWidth).toBe(wide);
});

test('focus is pulled from one to the other, and is there at the beat', () => {
  const racks = [
    { atSeconds: 0, pullSeconds: 0, on: { metres: 2 } },
    { atSeconds: 4, pullSeconds: 2, on: { metres: 6 } },
  ];
  const plan = withSetup({ focus: { racks }, move: { ease: 'linear', keys: [key(0)] } });
  const at = (seconds: number) => focusAt(plan, plan.setups[0], seconds);
  expect(at(0)).toBe(2);
  expect(at(2)).toBe(2);
  expect(at(3)).toBe(4);
  expect(at(4)).toBe(6);
  expect(at(7)).toBe(6);
});
