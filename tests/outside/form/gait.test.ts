import { describe, expect, test } from 'vitest';
import { NECK_LIMITS } from '../../../src/core/form/figure/looking';
import { walksOf } from '../../../src/core/form/figure/walks';
import { acted, MAN, WOMAN } from '../../unit/form/figure/people';

/** The reading of a walk of ten metres at a cruising speed. */
function at(speed: number, who = MAN) {
  // The ramps at both ends cost 0.4 s.
  const { plan, performer } = acted(who, [{ atSeconds: 0 }, { atSeconds: 10 / speed + 0.4, at: [10, 0] }]);
  const [walk] = walksOf(performer, plan);
  expect(walk.cruisingMetresPerSecond).toBeCloseTo(speed, 9);
  return walk;
}

describe('gaits by their speed', () => {
  /**
   * Means of 230 adults from the twenties to the seventies: comfortable from women in their seventies to men in their
   * forties, and the fastest of women in their seventies.
   * Source: [walking-speed]
   */
  test.each([1.272, 1.462, 1.749])('%d m/s, as adults walk, is a walk', (speed) => {
    for (const who of [MAN, WOMAN]) expect(at(speed, who)).toMatchObject({ gait: 'walk', tooFast: false });
  });

  /** The fastest walk of men in their twenties, 2.533 m/s, is beyond where people begin to run by themselves. */
  test('2.533 m/s, which young men walk at most, is a run', () => {
    expect(at(2.533)).toMatchObject({ gait: 'run', tooFast: false });
  });

  /** People change over at about 2 m/s. Source: [walk-to-run] */
  test('the change lies within a quarter of 2 m/s', () => {
    expect(at(1.75).gait).toBe('walk');
    expect(at(2.25).gait).toBe('run');
  });

  /** Boys under 14 who train: 5.18 m/s over ten metres from standing. Source: [sprint-speed] */
  test('what trained boys average over ten metres is too fast for a scene', () => {
    expect(at(5.18).tooFast).toBe(true);
    expect(at(4.5).tooFast).toBe(false);
  });
});

/** Healthy young adults: 80 degrees of rotation, 50 down, 80 up. Source: [neck-range] */
test('necks turn no farther than people’s', () => {
  expect(NECK_LIMITS.turnDegrees).toBeLessThanOrEqual(80);
  expect(NECK_LIMITS.downDegrees).toBeLessThanOrEqual(50);
  expect(NECK_LIMITS.upDegrees).toBeLessThanOrEqual(80);
});
