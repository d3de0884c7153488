import { describe, expect, test } from 'vitest';
import { figureParts } from '../../../../src/core/form/figure';
import { FASTEST_TURN_DEGREES_PER_SECOND } from '../../../../src/core/form/figure/turning';
import type { Mark, Towards } from '../../../../src/core/plan/schema/cast';
import { cornersOf, found, MAN, named, troupe, WOMAN } from './people';

const turnBetween = (a: number, b: number) => ((((b - a + 180) % 360) + 360) % 360) - 180;

describe('at a mark', () => {
  const facing = (faces: Towards) =>
    troupe([
      { who: MAN, marks: [{ atSeconds: 0, at: [1, 1], headingDegrees: 200, faces }] },
      { who: WOMAN, marks: [{ atSeconds: 0, at: [4, -3], headingDegrees: 10, faces: { who: 'man' } }] },
    ]);

  test('a point: 3 to the right and 4 ahead is 36.87 degrees', () => {
    expect(found(facing({ point: [4, 1.5, -3] }), 'man', 5).headingDegrees).toBeCloseTo(36.8699, 4);
  });

  test('two who face each other, whatever their headings say', () => {
    const plan = facing({ who: 'woman' });
    expect(found(plan, 'man', 0).headingDegrees).toBeCloseTo(36.8699, 4);
    expect(found(plan, 'woman', 0).headingDegrees).toBeCloseTo(36.8699 - 180, 4);
  });

  test('oneself, or what is at the same spot: the heading', () => {
    expect(found(facing({ who: 'man' }), 'man', 0).headingDegrees).toBe(200);
    expect(found(facing({ point: [1, 3, 1] }), 'man', 0).headingDegrees).toBe(200);
  });
});

describe('somebody who walks by', () => {
  /** She walks along x from −8 to 8 m, `metres` in front of him; at 5 s she is before him. */
  const passing = (metres: number) =>
    troupe([
      { who: MAN, marks: [{ atSeconds: 0, faces: { who: 'woman' } }] },
      {
        who: WOMAN,
        marks: [
          { atSeconds: 0, at: [-8, -metres] },
          { atSeconds: 10, at: [8, -metres] },
        ],
      },
    ]);

  test('is followed exactly', () => {
    const plan = passing(2);
    for (const seconds of [0, 2.345, 4.9, 5, 5.1, 8, 10, 12]) {
      const [x, , z] = found(plan, 'woman', seconds).at;
      const wanted = (Math.atan2(x, -z) * 180) / Math.PI;
      expect(found(plan, 'man', seconds).headingDegrees).toBeCloseTo(wanted, 6);
    }
  });

  test('within a hand’s breadth is followed no faster than people turn, and caught up with', () => {
    const plan = passing(0.06);
    let fastest = 0;
    for (let frame = 0; frame < 240; frame += 1) {
      const turn = turnBetween(
        found(plan, 'man', frame / 24).headingDegrees,
        found(plan, 'man', (frame + 1) / 24).headingDegrees,
      );
      fastest = Math.max(fastest, Math.abs(turn) * 24);
    }
    expect(fastest).toBeCloseTo(FASTEST_TURN_DEGREES_PER_SECOND, 6);
    expect(found(plan, 'man', 10).headingDegrees).toBeCloseTo(89.57, 1);
  });
});

test('a mark is reached facing what it faces there, as it is at that instant', () => {
  const plan = troupe([
    { who: MAN, marks: [{ atSeconds: 0 }, { atSeconds: 6, at: [0, -6], faces: { who: 'woman' } }] },
    {
      who: WOMAN,
      marks: [
        { atSeconds: 0, at: [5, 0] },
        { atSeconds: 12, at: [5, -12] },
      ],
    },
  ]);
  expect(found(plan, 'man', 3).headingDegrees).toBeCloseTo(0, 9);
  // At 6 s she is half way, five metres to his right.
  expect(found(plan, 'man', 6).headingDegrees).toBeCloseTo(90, 6);
});

describe('facing on the way', () => {
  /** Eight metres to the right, the body turned by `turn` degrees from it. */
  const walk = (turn: number | null, seconds = 10) => {
    const way = (90 + (turn ?? 0)) * (Math.PI / 180);
    const point: [number, number, number] = [4 + 4000 * Math.sin(way), 0, -4000 * Math.cos(way)];
    const onTheWay: Partial<Mark> = turn === null ? {} : { facesOnTheWay: { point } };
    return troupe([{ who: MAN, marks: [{ atSeconds: 0 }, { atSeconds: seconds, at: [8, 0], ...onTheWay }] }]);
  };
  const phasesGone = (turn: number | null) => {
    const plan = walk(turn);
    let gone = 0;
    for (let frame = 72; frame < 144; frame += 1) {
      const [one, other] = [found(plan, 'man', frame / 24), found(plan, 'man', (frame + 1) / 24)];
      gone += turnBetween(one.walkPhase * 360, other.walkPhase * 360) / 360;
    }
    return gone;
  };

  test('keeps facing it, and the marks’ headings at both ends', () => {
    const plan = walk(180);
    expect(found(plan, 'man', 0).headingDegrees).toBe(0);
    expect(turnBetween(found(plan, 'man', 5).headingDegrees, 270)).toBeCloseTo(0, 1);
    expect(found(plan, 'man', 10).headingDegrees).toBe(0);
  });

  test('backwards the stride runs backwards, at the same length', () => {
    // 3 s at 8 m in 9.6 s are 2.5 m: in cycles of 0.86 statures, 1.656.
    const cycles = (3 * (8 / 9.6)) / (0.86 * MAN.statureMetres);
    expect(phasesGone(null)).toBeCloseTo(cycles, 2);
    expect(phasesGone(180)).toBeCloseTo(-cycles, 2);
  });

  test('sideways the steps are smaller', () => {
    expect(Math.abs(phasesGone(90))).toBeGreaterThan(2 * Math.abs(phasesGone(null)));
  });

  test.each([null, 180, 90, 45, 135])('turned by %s degrees the standing foot hardly slides', (turn) => {
    const plan = walk(turn);
    const step = 1 / 24;
    const feetAt = (seconds: number) =>
      named(figureParts(plan.cast[0], plan, seconds), 'feet').map((foot) => cornersOf([foot]));
    let before = feetAt(3);
    let [slid, walked] = [0, 0];
    for (let seconds = 3 + step; seconds < 4.6; seconds += step) {
      const feet = feetAt(seconds);
      // The corner of a sole on the floor that moves least: what a standing foot rolls over.
      const moves = feet.flatMap((corners, k) =>
        corners.flatMap(([x, y, z], n) => {
          const [ox, oy, oz] = before[k][n];
          return y < 0.006 && oy < 0.006 ? [Math.hypot(x - ox, z - oz)] : [];
        }),
      );
      expect(moves.length).toBeGreaterThan(0);
      slid += Math.min(...moves);
      walked += (step * 8) / 9.6;
      before = feet;
    }
    expect(slid / walked).toBeLessThan(0.2);
  });
});
