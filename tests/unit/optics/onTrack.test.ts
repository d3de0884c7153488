import { describe, expect, test } from 'vitest';
import { stateAt } from '../../../src/core/optics/camera';
import { alongAt, keysOf, trackOf } from '../../../src/core/optics/cameraKey';
import { heldKey } from '../../../src/core/optics/heldKey';
import {
  layTrack,
  moveCamera,
  putOnTrack,
  roomOn,
  setAlong,
  setSupport,
  slideOnTrack,
  takeOffTrack,
} from '../../../src/core/optics/onTrack';
import { arcThrough, straightThrough } from '../../../src/core/optics/trackFit';
import { addKey } from '../../../src/core/plan/edits/changeKeys';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { CameraKey, Setup } from '../../../src/core/plan/schema/setup';
import { trackPointAt } from '../../../src/core/plan/trackLine';
import { DEMO, readPlan } from '../../plans/readPlan';

/** Without its night, which is about setups that are left out here. */
const { night: _, ...demo } = readPlan(DEMO);
const setupId = demo.setups[0].id;
const setupOf = (plan: Plan): Setup => plan.setups[0];
const key = (atSeconds: number, x: number, z: number): CameraKey => ({
  atSeconds,
  position: [x, 1.2, z],
  headingDegrees: 0,
  tiltDegrees: 0,
  rollDegrees: 0,
});

/** The demo with its first setup on a move of one's own, off any track. */
function moving(...keys: CameraKey[]): Plan {
  const { track: _, operator: __, ...setup } = demo.setups[0];
  return { ...demo, setups: [{ ...setup, support: 'sticks', move: { ease: 'linear', keys } }] };
}

const sound = (plan: Plan): boolean => parsePlan(JSON.parse(JSON.stringify(plan))).ok;

describe('a track laid to measure', () => {
  test('runs straight from the first place to the farthest, with room at both ends', () => {
    expect(
      straightThrough(
        [
          [0, 0],
          [3, 0],
        ],
        0.6,
        0,
      ),
    ).toEqual({ at: [1.5, 0], headingDegrees: 90, lengthMetres: 4.2 });
    // A camera that does not move has its track along where it looks.
    expect(straightThrough([[2, 1]], 0.6, 270)).toEqual({
      at: [2, 1],
      headingDegrees: 270,
      lengthMetres: 1.2,
    });
  });

  test('bends through three places: a quarter of a circle of 4 m, to the right and to the left', () => {
    const half = 4 * Math.SQRT1_2;
    const right = arcThrough(
      [
        [0, -4],
        [half, -half],
        [4, 0],
      ],
      0,
    );
    expect(right?.bendMetres).toBeCloseTo(4, 5);
    expect(right?.headingDegrees).toBeCloseTo(135, 4);
    // A quarter of 8π m is 6.28 m, laid as 6.3.
    expect(right?.lengthMetres).toBe(6.3);
    expect(right?.at[0]).toBeCloseTo(half, 5);
    const left = arcThrough(
      [
        [4, 0],
        [half, -half],
        [0, -4],
      ],
      0,
    );
    expect(left?.bendMetres).toBeCloseTo(-4, 5);
    expect(left?.headingDegrees).toBeCloseTo(315, 4);
  });

  test('is none where the places lie in a line', () => {
    expect(
      arcThrough(
        [
          [0, 0],
          [1, 0],
          [2, 0],
        ],
        0.6,
      ),
    ).toBeNull();
  });
});

describe('a camera on its track', () => {
  test('has track laid under its keys and goes along it', () => {
    const plan = layTrack(moving(key(9, 0, 4), key(19, 3, 4)), { setupId, bent: false });
    const track = trackOf(plan, setupOf(plan));
    // 3 m between the keys, 0.45 m for the wheels and 0.15 m to spare at each end.
    expect(track?.lengthMetres).toBe(4.2);
    expect(setupOf(plan).support).toBe('dolly');
    expect(alongAt(plan, setupOf(plan), 9)).toBeCloseTo(0.6, 6);
    expect(alongAt(plan, setupOf(plan), 14)).toBeCloseTo(2.1, 6);
    expect(stateAt(plan, setupOf(plan), 14).position[0]).toBeCloseTo(1.5, 6);
    expect(sound(plan)).toBe(true);
  });

  test('goes round on a curved one, through all three of its keys', () => {
    const before = moving(key(9, -2, 2), key(14, 0, 1), key(19, 2, 2));
    const plan = layTrack(before, { setupId, bent: true });
    for (const [at, x, z] of [
      [9, -2, 2],
      [14, 0, 1],
      [19, 2, 2],
    ]) {
      const { position } = stateAt(plan, setupOf(plan), at);
      expect(position[0]).toBeCloseTo(x, 3);
      expect(position[2]).toBeCloseTo(z, 3);
    }
    // Two keys make no arc: nothing changes.
    const two = moving(key(9, -2, 2), key(19, 2, 2));
    expect(layTrack(two, { setupId, bent: true })).toBe(two);
  });

  test('slides along the track only, with the room that its wheels need at both ends', () => {
    const plan = layTrack(moving(key(9, 0, 4), key(19, 3, 4)), { setupId, bent: false });
    const track = trackOf(plan, setupOf(plan));
    if (!track) throw new Error('found no track, expected the one that was laid');
    const [low, high] = roomOn(track);
    expect([low, high]).toEqual([0.45, 3.75]);
    const slid = slideOnTrack(plan, { setupId, to: [99, -50] });
    const alongs = keysOf(slid, setupOf(slid)).map(({ alongMetres }) => alongMetres ?? 0);
    expect(alongs[0]).toBeCloseTo(0.75, 6);
    expect(alongs[1]).toBeCloseTo(high, 6);
    for (const { position, alongMetres } of setupOf(slid).move.keys) {
      const { at } = trackPointAt(track, alongMetres ?? 0);
      expect(position[0]).toBeCloseTo(at[0], 5);
      expect(position[2]).toBeCloseTo(at[2], 5);
    }
    expect(moveCamera(plan, { setupId, to: [99, -50] })).toEqual(slid);
    expect(slideOnTrack(slid, { setupId, to: [99, -50] })).toBe(slid);
    const free = moving(key(9, 0, 4));
    expect(slideOnTrack(free, { setupId, to: [1, 1] })).toBe(free);
    expect(moveCamera(free, { setupId, to: [1, 1] }).setups[0].move.keys[0].position).toEqual([1, 1.2, 1]);
  });

  test('stays where it was when it leaves the track, and when its support is no dolly any more', () => {
    const plan = layTrack(moving(key(9, 0, 4), key(19, 3, 4)), { setupId, bent: false });
    const there = stateAt(plan, setupOf(plan), 12.5).position;
    for (const off of [takeOffTrack(plan, { setupId }), setSupport(plan, { setupId, support: 'handheld' })]) {
      expect(setupOf(off).track).toBeUndefined();
      expect(setupOf(off).move.keys.every(({ alongMetres }) => alongMetres === undefined)).toBe(true);
      stateAt(off, setupOf(off), 12.5).position.forEach((metres, axis) => {
        expect(metres).toBeCloseTo(there[axis], 5);
      });
      expect(sound(off)).toBe(true);
    }
    expect(putOnTrack(plan, { setupId, trackId: 'nobody' })).toBe(plan);
  });

  test('has single keys taken along the track, never off its ends', () => {
    const plan = layTrack(moving(key(9, 0, 4), key(19, 3, 4)), { setupId, bent: false });
    const far = setAlong(plan, { setupId, keyIndex: 1, alongMetres: 40 });
    expect(setupOf(far).move.keys[1].alongMetres).toBe(4.2);
  });
});

test('a held key keeps the camera as it is at that instant', () => {
  const plan = layTrack(moving(key(9, 0, 4), key(19, 3, 4)), { setupId, bent: false });
  const held = heldKey(plan, setupOf(plan), 14);
  expect(held.alongMetres).toBeCloseTo(2.1, 6);
  const keyed = addKey(plan, { setupId, key: held });
  expect(setupOf(keyed).move.keys).toHaveLength(3);
  for (const at of [9, 11, 14, 17, 19]) {
    stateAt(keyed, setupOf(keyed), at).position.forEach((metres, axis) => {
      expect(metres).toBeCloseTo(stateAt(plan, setupOf(plan), at).position[axis], 5);
    });
  }
  // From a beat it says how long after it.
  const beat = plan.beats[0];
  const hung = heldKey(plan, setupOf(plan), beat.atSeconds + 0.5, beat.id);
  expect([hung.atSeconds, hung.beat]).toEqual([0.5, beat.id]);
});
