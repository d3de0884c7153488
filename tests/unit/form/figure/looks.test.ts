import { describe, expect, test } from 'vitest';
import { landmarksAt } from '../../../../src/core/form/figure/landmarks';
import { FARTHEST_LOOK_DEGREES, NECK_LIMITS } from '../../../../src/core/form/figure/looking';
import type { Looks, Stance } from '../../../../src/core/plan/schema/cast';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { cornersOf, found, MAN, named, partsOf, troupe, WOMAN } from './people';

const DEGREES = 180 / Math.PI;

/** Turn (clockwise from the body) and tilt of the gaze, degrees. */
const anglesOf = (plan: Plan, id: string, seconds: number) => {
  const { gaze, headHeadingDegrees, headingDegrees } = found(plan, id, seconds);
  return { turn: headHeadingDegrees - headingDegrees, tilt: Math.asin(gaze[1]) * DEGREES };
};
/** By how much the gaze misses a place, degrees. */
const missOf = (plan: Plan, id: string, seconds: number, place: readonly number[]) => {
  const { eyes, gaze } = found(plan, id, seconds);
  const way = place.map((value, k) => value - eyes[k]);
  const cosine = (way[0] * gaze[0] + way[1] * gaze[1] + way[2] * gaze[2]) / Math.hypot(...way);
  return Math.acos(Math.min(1, cosine)) * DEGREES;
};
const looking = (looks: Looks | undefined, stance: Stance = 'stand') =>
  troupe([{ who: MAN, marks: [{ atSeconds: 0, headingDegrees: 30, stance, ...(looks && { looks }) }] }]);

test('without a look the face is ahead, a unit vector', () => {
  const { turn, tilt } = anglesOf(looking(undefined), 'man', 0);
  expect(Math.abs(turn)).toBeLessThan(0.2);
  expect(Math.abs(tilt)).toBeLessThan(0.2);
  expect(Math.hypot(...found(looking(undefined), 'man', 0).gaze)).toBeCloseTo(1, 9);
});

describe('by angles', () => {
  test.each([
    [40, 0],
    [-62, 20],
    [90, 0],
    [-90, -30],
    [10, 45],
  ])('turned by %d, tilted by %d', (turnDegrees, tiltDegrees) => {
    const { turn, tilt } = anglesOf(looking({ turnDegrees, tiltDegrees }), 'man', 0);
    expect(turn).toBeCloseTo(turnDegrees, 1);
    expect(tilt).toBeCloseTo(tiltDegrees, 1);
  });

  test('no farther up or down than a neck can', () => {
    const up = anglesOf(looking({ turnDegrees: 0, tiltDegrees: 90 }), 'man', 0).tilt;
    const down = anglesOf(looking({ turnDegrees: 0, tiltDegrees: -90 }), 'man', 0).tilt;
    expect(up).toBeGreaterThan(NECK_LIMITS.upDegrees - 1);
    expect(up).toBeLessThan(NECK_LIMITS.upDegrees + 1);
    expect(down).toBeLessThan(-NECK_LIMITS.downDegrees + 1);
    expect(down).toBeGreaterThan(-NECK_LIMITS.downDegrees - 1);
  });
});

describe('at a point', () => {
  test.each([
    ['stand', [2, 1.2, -4]],
    ['stand', [3, 2.5, 0]],
    ['sit', [2, 1.2, -4]],
    ['crouch', [1, 0.2, -3]],
    ['walk', [0.4, 1.6, -0.9]],
    ['lean', [4, 1.5, -1]],
  ] as const)('%s: it lies ahead of the eyes', (stance, point) => {
    expect(missOf(looking({ point: [...point] }, stance), 'man', 0, point)).toBeLessThan(0.1);
  });

  test('far to the side the chest comes along and the neck keeps its limit; behind it is given up', () => {
    // 110 degrees to the right of a heading of 30: as far as it goes.
    const beside = anglesOf(
      looking({ point: [10 * Math.sin(140 / DEGREES), 1.6, 10 * -Math.cos(140 / DEGREES)] }),
      'man',
      0,
    );
    expect(beside.turn).toBeGreaterThan(FARTHEST_LOOK_DEGREES - 3);
    expect(beside.turn).toBeLessThanOrEqual(FARTHEST_LOOK_DEGREES);
    const behind = anglesOf(
      looking({ point: [-10 * Math.sin(30 / DEGREES), 1.6, 10 * Math.cos(30 / DEGREES)] }),
      'man',
      0,
    );
    expect(Math.abs(behind.turn)).toBeLessThan(1);
    const torso = (turnDegrees: number) => {
      const [chest] = named(partsOf(looking({ turnDegrees, tiltDegrees: 0 }), 'man', 0), 'torso');
      const m = chest.worldFromPart ?? [];
      return Math.atan2(-m[2], m[10]) * DEGREES;
    };
    expect(torso(40)).toBeCloseTo(torso(0), 9);
    expect(torso(85) - torso(0)).toBeCloseTo(20, 0);
  });
});

describe('at each other', () => {
  test.each([
    [0.9, 20, 250],
    [1.5, -50, 200],
    [4, 60, 330],
  ])('%d m apart, whatever way the bodies face, the eyes meet', (metres, his, hers) => {
    const plan = troupe([
      { who: MAN, marks: [{ atSeconds: 0, headingDegrees: 90 - his, looks: { who: 'woman' } }] },
      {
        who: WOMAN,
        marks: [
          { atSeconds: 0, at: [metres, 0], headingDegrees: hers, stance: 'sit', looks: { who: 'man' } },
        ],
      },
    ]);
    expect(missOf(plan, 'man', 0, found(plan, 'woman', 0).eyes)).toBeLessThan(0.1);
    expect(missOf(plan, 'woman', 0, found(plan, 'man', 0).eyes)).toBeLessThan(0.1);
  });

  test('somebody who walks is followed', () => {
    const plan = troupe([
      { who: MAN, marks: [{ atSeconds: 0, looks: { who: 'woman' } }] },
      {
        who: WOMAN,
        marks: [
          { atSeconds: 0, at: [-4, -3] },
          { atSeconds: 8, at: [4, -3] },
        ],
      },
    ]);
    for (const seconds of [0, 2, 3.3, 5, 8]) {
      expect(missOf(plan, 'man', seconds, found(plan, 'woman', seconds).eyes)).toBeLessThan(0.1);
    }
  });
});

test('a take lasts 0.4 s before the mark and after it, and is half way at half of it', () => {
  const looks: Looks = { turnDegrees: 40, tiltDegrees: 0 };
  const plan = troupe([
    {
      who: MAN,
      marks: [
        { atSeconds: 0, holdSeconds: 1 },
        { atSeconds: 3, looks, holdSeconds: 1 },
        { atSeconds: 9, at: [0, -6], looksOnTheWay: { turnDegrees: -40, tiltDegrees: 0 } },
      ],
    },
  ]);
  const turn = (seconds: number) => anglesOf(plan, 'man', seconds).turn;
  expect(turn(2.6)).toBeCloseTo(0, 1);
  expect(turn(2.8)).toBeCloseTo(20, 0);
  for (const seconds of [3, 3.5, 4]) expect(turn(seconds)).toBeCloseTo(40, 1);
  expect(turn(4.2)).toBeCloseTo(0, 0);
  expect(turn(6)).toBeCloseTo(-40, 1);
  expect(turn(9)).toBeCloseTo(0, 1);
});

test('the head’s own triangles turn, and the landmarks with them', () => {
  const plan = looking({ turnDegrees: 60, tiltDegrees: 0 });
  const { gaze } = found(plan, 'man', 0);
  const head = cornersOf(named(partsOf(plan, 'man', 0), 'head')).filter(([, y]) => y > 1.55);
  const middle = [0, 2].map((axis) => {
    const values = head.map((corner) => corner[axis]);
    return (Math.max(...values) + Math.min(...values)) / 2;
  });
  const ahead = head.map(([x, , z]) => (x - middle[0]) * gaze[0] + (z - middle[1]) * gaze[2]);
  const aside = head.map(([x, , z]) => (x - middle[0]) * -gaze[2] + (z - middle[1]) * gaze[0]);
  // The nose is what is foremost along the gaze, and near the middle of the face.
  expect(Math.abs(aside[ahead.indexOf(Math.max(...ahead))])).toBeLessThan(0.02);
  const landmarks = landmarksAt(plan.cast[0], plan, 0);
  expect(landmarks?.eyes).toEqual(found(plan, 'man', 0).eyes);
  const chin = landmarks?.chin ?? [0, 0, 0];
  expect(Math.atan2(chin[0], -chin[2]) * DEGREES).toBeCloseTo(90, -1);
});

test('while nothing changes the very same parts come back', () => {
  const plan = troupe([
    {
      who: MAN,
      marks: [
        { atSeconds: 0, holdSeconds: 5, looks: { who: 'woman' } },
        { atSeconds: 9, at: [3, 3] },
      ],
    },
    {
      who: WOMAN,
      marks: [{ atSeconds: 0, at: [2, 2], holdSeconds: 9, looks: { who: 'man' }, faces: { who: 'man' } }],
    },
  ]);
  const before = partsOf(plan, 'man', 1);
  expect(partsOf(plan, 'man', 4.5)[0]).toBe(before[0]);
  const hers = partsOf(plan, 'woman', 2);
  expect(partsOf(plan, 'woman', 4)[0]).toBe(hers[0]);
  const later = partsOf(plan, 'woman', 7);
  expect(later[0]).not.toBe(hers[0]);
  expect(later.map(({ shape }) => shape)).toEqual(hers.map(({ shape }) => shape));
});
