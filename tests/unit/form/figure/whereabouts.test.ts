import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figureParts, whereabouts } from '../../../../src/core/form/figure';
import { acted, boxOf, MAN, named } from './people';

const turnBetween = (a: number, b: number) => Math.abs(((((b - a + 180) % 360) + 360) % 360) - 180);

/** Ten metres in eight seconds, from a hold of two. */
const { plan, performer } = acted(MAN, [
  { atSeconds: 10, at: [1, 2], headingDegrees: 0, holdSeconds: 2, stance: 'reach' },
  { atSeconds: 20, at: [11, 2], headingDegrees: 180, floorMetres: 0.3, stance: 'sit' },
]);
const at = (seconds: number) => {
  const found = whereabouts(performer, plan, seconds);
  if (!found) throw new Error('found nobody, expected the performer');
  return found;
};

test('before, at and after the marks', () => {
  for (const seconds of [-5, 10, 11.9, 12]) {
    expect(at(seconds)).toMatchObject({ at: [1, 0, 2], headingDegrees: 0, stance: 'reach', isMoving: false });
  }
  for (const seconds of [20, 500]) {
    expect(at(seconds)).toMatchObject({
      at: [11, 0.3, 2],
      headingDegrees: 180,
      stance: 'sit',
      isMoving: false,
    });
  }
});

test('on the way: half way at half time, facing the way, at the pace that gets there', () => {
  const half = at(16);
  expect(half.at[0]).toBeCloseTo(6, 9);
  expect(half.at[1]).toBeCloseTo(0.15, 9);
  expect(half.headingDegrees).toBeCloseTo(90, 9);
  expect(half.stance).toBe('walk');
  expect(half.isMoving).toBe(true);
  expect(half.speedMetresPerSecond).toBeCloseTo(10 / 7.6, 9);
  expect(at(12.3).headingDegrees).toBeGreaterThan(0);
  expect(at(12.3).headingDegrees).toBeLessThan(90);
  expect(at(19.8).headingDegrees).toBeGreaterThan(90);
});

test('eyes are ahead of the feet, at eye height, and come down on sitting', () => {
  const [x, y, z] = at(10).eyes;
  expect(x).toBeCloseTo(1, 1);
  expect(y).toBeGreaterThan(1.6);
  expect(z).toBeLessThan(2 - 0.05);
  expect(at(20).eyes[1]).toBeLessThan(1.3 + 0.3);
});

test('two steps make a cycle of about 0.86 statures', () => {
  const stride = 0.86 * MAN.statureMetres;
  const speed = at(15).speedMetresPerSecond;
  const [one, other] = [at(15), at(15 + stride / speed)];
  expect(turnBetween(one.walkPhase * 360, other.walkPhase * 360)).toBeLessThan(0.001);
});

test('faster than 2.2 m/s is a run', () => {
  const hurried = acted(MAN, [{ atSeconds: 0 }, { atSeconds: 4, at: [12, 0] }]);
  expect(whereabouts(hurried.performer, hurried.plan, 2)?.stance).toBe('run');
});

test('marks are taken in the order of their beats, whatever their order in the record', () => {
  const jumbled = acted(MAN, [
    { atSeconds: 8, at: [8, 0] },
    { atSeconds: 0, at: [0, 0] },
  ]);
  expect(whereabouts(jumbled.performer, jumbled.plan, 4)?.at[0]).toBeCloseTo(4, 9);
});

describe('marks that leave no time', () => {
  test('at one instant the later in the list counts, and nothing is divided by zero', () => {
    const twice = acted(MAN, [
      { atSeconds: 3, at: [1, 1] },
      { atSeconds: 3, at: [2, 2], headingDegrees: 45 },
    ]);
    for (const seconds of [0, 3, 4]) {
      const found = whereabouts(twice.performer, twice.plan, seconds);
      expect(found?.eyes.every(Number.isFinite)).toBe(true);
    }
    expect(whereabouts(twice.performer, twice.plan, 3)?.at).toEqual([2, 0, 2]);
  });

  test('a hold longer than the gap is cut so that the next mark is reached', () => {
    const late = acted(MAN, [
      { atSeconds: 0, holdSeconds: 60 },
      { atSeconds: 5, at: [4, 0] },
    ]);
    expect(whereabouts(late.performer, late.plan, 4.4)?.at[0]).toBe(0);
    expect(whereabouts(late.performer, late.plan, 4.75)?.at[0]).toBeCloseTo(2, 6);
    expect(whereabouts(late.performer, late.plan, 5)?.at[0]).toBe(4);
  });

  test('a turn on the spot needs no walk', () => {
    const turner = acted(MAN, [{ atSeconds: 0 }, { atSeconds: 4, headingDegrees: 120 }]);
    const before = whereabouts(turner.performer, turner.plan, 3);
    const during = whereabouts(turner.performer, turner.plan, 3.75);
    expect(before).toMatchObject({ isMoving: false, headingDegrees: 0 });
    expect(during?.headingDegrees).toBeCloseTo(60, 6);
  });

  test('without marks there is nobody', () => {
    const nobody = acted(MAN, []);
    expect(whereabouts(nobody.performer, nobody.plan, 0)).toBeNull();
  });
});

const place = fc.double({ min: -15, max: 15, noNaN: true });
const marks = fc.array(
  fc.record({
    gap: fc.double({ min: 1, max: 8, noNaN: true }),
    at: fc.tuple(place, place),
    headingDegrees: fc.double({ min: -360, max: 360, noNaN: true }),
    holdShare: fc.double({ min: 0, max: 1.5, noNaN: true }),
    floorMetres: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
  { minLength: 1, maxLength: 5 },
);

test('position and heading never jump more than speed and turning allow', () => {
  fc.assert(
    fc.property(marks, fc.double({ min: 0, max: 1, noNaN: true }), (drawn, share) => {
      let clock = 0;
      const scene = acted(
        MAN,
        drawn.map(({ gap, at: [x, z], headingDegrees, holdShare, floorMetres }) => {
          clock += gap;
          return { atSeconds: clock, at: [x, z], headingDegrees, holdSeconds: gap * holdShare, floorMetres };
        }),
      );
      const step = 0.01;
      const seconds = share * (clock + 2);
      const before = whereabouts(scene.performer, scene.plan, seconds);
      const after = whereabouts(scene.performer, scene.plan, seconds + step);
      if (!before || !after) throw new Error('found nobody, expected the performer');
      const fastest = Math.max(
        ...drawn.map(({ at: [x, z], gap }, k) => {
          const [fromX, fromZ] = drawn[Math.max(0, k - 1)].at;
          return Math.max(12, (2 * Math.hypot(x - fromX, z - fromZ)) / gap);
        }),
      );
      const gone = Math.hypot(after.at[0] - before.at[0], after.at[2] - before.at[2]);
      expect(gone).toBeLessThanOrEqual(fastest * step + 1e-9);
      expect(before.eyes.every(Number.isFinite)).toBe(true);
      // A turn of 180 degrees in half the time of the shortest walk, at the steepest of its ease.
      const shortest = Math.min(
        0.5,
        ...drawn.slice(1).map(({ at: [x, z], gap }, k) => {
          const [fromX, fromZ] = drawn[k].at;
          return Math.min(gap, Math.hypot(x - fromX, z - fromZ) / 8 || 0.5) / 2;
        }),
      );
      expect(turnBetween(before.headingDegrees, after.headingDegrees)).toBeLessThanOrEqual(
        Math.max(0.01, (1.5 * 180 * step) / shortest) + 1e-6,
      );
    }),
    { numRuns: 400 },
  );
});

test('walking and running, soles stay on or above the floor and the body stays near its height', () => {
  for (const [metres, gait] of [
    [20, 'walk'],
    [60, 'run'],
  ] as const) {
    const scene = acted(MAN, [{ atSeconds: 0 }, { atSeconds: 16, at: [metres, 0] }]);
    for (let seconds = 0; seconds < 16; seconds += 0.037) {
      const found = whereabouts(scene.performer, scene.plan, seconds);
      const parts = figureParts(scene.performer, scene.plan, seconds);
      const lowest = boxOf(named(parts, 'feet')).low[1];
      expect(lowest, `${gait} at ${seconds}`).toBeGreaterThan(-0.005);
      expect(lowest, `${gait} at ${seconds}`).toBeLessThan(gait === 'walk' ? 0.02 : 0.12);
      expect(found?.eyes[1]).toBeGreaterThan(gait === 'walk' ? 1.54 : 1.4);
      expect(found?.eyes[1]).toBeLessThan(1.645);
    }
  }
});
