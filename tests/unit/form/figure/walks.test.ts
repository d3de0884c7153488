import { describe, expect, test } from 'vitest';
import { type WalkReading, walksOf } from '../../../../src/core/form/figure/walks';
import type { Mark } from '../../../../src/core/plan/schema/cast';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { found, MAN, troupe } from './people';

const going = (to: Partial<Mark>, seconds = 7, from: Partial<Mark> = {}): Plan =>
  troupe([
    {
      who: MAN,
      marks: [
        { atSeconds: 0, ...from },
        { atSeconds: seconds, ...to },
      ],
    },
  ]);
const at = (plan: Plan, seconds: number) => found(plan, 'man', seconds);
const only = (plan: Plan): WalkReading => {
  const [walk, ...more] = walksOf(plan.cast[0], plan);
  expect(more).toEqual([]);
  return walk;
};
const apart = (a: readonly number[], b: readonly number[]) => Math.hypot(a[0] - b[0], a[1] - b[1]);
const level = ({ at: [x, , z] }: { readonly at: readonly number[] }) => [x, z];

describe('round a corner in straight lines', () => {
  // 3 m to the right, then 4 m towards the reader.
  const plan = going({ at: [3, 4], way: { through: [[3, 0]], line: 'straight' } }, 7.4);

  test('the lengths add up, and the pace follows from them and the ramps', () => {
    expect(only(plan)).toEqual({
      fromMark: 'man-0',
      toMark: 'man-1',
      path: [
        [0, 0],
        [3, 0],
        [3, 4],
      ],
      metres: 7,
      leaveSeconds: 0,
      arriveSeconds: 7.4,
      cruisingMetresPerSecond: 1,
      gait: 'walk',
      tooFast: false,
    });
  });

  test('half of it at half time, at an even pace between the ramps', () => {
    // 3.5 m gone: half a metre past the corner.
    expect(level(at(plan, 3.7))).toEqual([3, expect.closeTo(0.5, 9)]);
    // The ramp of 0.4 s costs 0.2 m.
    expect(level(at(plan, 2.2))).toEqual([expect.closeTo(2, 9), 0]);
    expect(at(plan, 2.2).speedMetresPerSecond).toBeCloseTo(1, 9);
    expect(level(at(plan, 3.2))).toEqual([expect.closeTo(3, 9), expect.closeTo(0, 9)]);
    expect(level(at(plan, 7.4))).toEqual([3, 4]);
  });

  test('the body faces each of the lines, and half way between them at the corner', () => {
    expect(at(plan, 2).headingDegrees).toBeCloseTo(90, 9);
    expect(at(plan, 3.2).headingDegrees).toBeCloseTo(135, 6);
    expect(at(plan, 4.5).headingDegrees).toBeCloseTo(180, 9);
  });

  test('the floor rises evenly with what is gone of the way', () => {
    const up = going({ at: [3, 4], floorMetres: 0.7, way: { through: [[3, 0]], line: 'straight' } }, 7.4);
    expect(at(up, 3.2).at[1]).toBeCloseTo(0.3, 9);
    expect(at(up, 7.4).at[1]).toBe(0.7);
  });
});

describe('on a curve', () => {
  const RADIUS = 2;
  // Clockwise round the origin from straight ahead (−z), an eighth of the circle at a time.
  const spot = (eighths: number): [number, number] => [
    RADIUS * Math.sin((eighths * Math.PI) / 4),
    -RADIUS * Math.cos((eighths * Math.PI) / 4),
  ];
  const plan = going({ at: spot(7), way: { through: [1, 2, 3, 4, 5, 6].map(spot), line: 'curved' } }, 10.4, {
    at: spot(0),
  });
  const { path, metres } = only(plan);

  test('passes exactly through its places and both marks', () => {
    for (let k = 0; k <= 7; k += 1) expect(path).toContainEqual(spot(k));
    expect(path[0]).toEqual(spot(0));
    expect(path[path.length - 1]).toEqual(spot(7));
  });

  test('is as long as the arc that the places lie on, to a hundredth', () => {
    expect(metres / ((7 / 8) * 2 * Math.PI * RADIUS)).toBeGreaterThan(0.99);
    expect(metres / ((7 / 8) * 2 * Math.PI * RADIUS)).toBeLessThan(1.005);
    for (const place of path) expect(Math.abs(apart(place, [0, 0]) - RADIUS)).toBeLessThan(0.02);
  });

  test('is walked at an even pace, facing along it', () => {
    for (let seconds = 2; seconds < 8; seconds += 0.25) {
      const [one, other] = [at(plan, seconds), at(plan, seconds + 0.25)];
      const pace = apart(level(one), level(other)) / 0.25;
      expect(pace).toBeGreaterThan(0.985 * (metres / 10));
      expect(pace).toBeLessThan(1.0001 * (metres / 10));
      const tangent = (Math.atan2(one.at[0], -one.at[2]) * 180) / Math.PI + 90;
      expect(Math.abs(((one.headingDegrees - tangent + 540) % 360) - 180)).toBeLessThan(3);
    }
  });

  test('does not loop however unevenly its places lie', () => {
    const uneven = only(
      going({
        at: [6, 0.2],
        way: {
          through: [
            [5, 0],
            [5.1, 0.3],
          ],
          line: 'curved',
        },
      }),
    );
    // All of it within a step of the straight lines through the places, and no longer than a tenth more.
    const straight = 5 + apart([5, 0], [5.1, 0.3]) + apart([5.1, 0.3], [6, 0.2]);
    expect(uneven.metres).toBeLessThan(1.1 * straight);
    for (const [x, z] of uneven.path) {
      expect(x).toBeGreaterThan(-0.01);
      expect(x).toBeLessThan(6.01);
      expect(Math.abs(z)).toBeLessThan(0.6);
    }
  });

  test('of no places is straight', () => {
    const twice = going({
      at: [4, 0],
      way: {
        through: [
          [0, 0],
          [4, 0],
        ],
        line: 'curved',
      },
    });
    expect(only(twice)).toMatchObject({
      metres: 4,
      path: [
        [0, 0],
        [4, 0],
      ],
    });
  });
});

test('round a way back to the same spot is a walk, the same spot alone is none', () => {
  expect(only(going({ at: [0, 0], way: { through: [[2, 0]], line: 'straight' } })).metres).toBe(4);
  const turn = going({ headingDegrees: 90 });
  expect(walksOf(turn.cast[0], turn)).toEqual([]);
});

test.each([
  [7.4 * 1.3, 'walk', false],
  [7.4 * 3, 'run', false],
  [7.4 * 5.2, 'run', true],
])('%d m in 7.8 s: a %s, too fast: %s', (metres, gait, tooFast) => {
  expect(only(going({ at: [metres, 0] }, 7.8))).toMatchObject({
    gait,
    tooFast,
    cruisingMetresPerSecond: expect.closeTo(metres / 7.4, 9),
  });
});

test('a hold leaves half a second to turn and to change stance in', () => {
  const plan = going({ headingDegrees: 90, stance: 'reach' }, 4, { holdSeconds: 4 });
  expect(at(plan, 3.5)).toMatchObject({ headingDegrees: 0, stance: 'stand' });
  expect(at(plan, 3.75).headingDegrees).toBeCloseTo(45, 9);
  expect(at(plan, 4)).toMatchObject({ headingDegrees: 90, stance: 'reach' });
});
