import { describe, expect, test } from 'vitest';
import { gearParts } from '../../../../src/core/form/gear';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import { trackMiddleLine, trackPointAt } from '../../../../src/core/plan/trackLine';
import { boundsOf } from '../solids';
import { planOf } from './plans';
import { partsNamed } from './solids';

type Track = Extract<Gear, { kind: 'track' }>;
const TRACK: Track = {
  kind: 'track',
  id: 'track',
  label: 'Track',
  at: [1, 0.4, 2],
  headingDegrees: 0,
  lengthMetres: Math.PI * 2,
  gaugeMetres: 0.6,
  bendMetres: 4,
};
const railsOf = (track: Track) => partsNamed(gearParts(track, planOf([track])), 'rails')[0].shape.tubes;
const lengthOf = (tubes: ReturnType<typeof railsOf>) =>
  tubes.reduce((sum, { from, to }) => sum + Math.hypot(...from.map((value, axis) => to[axis] - value)), 0);

describe('curved track', () => {
  test.each([4, -4])(
    'of radius %d m: a quarter of a circle, its rails as long as their arcs',
    (bendMetres) => {
      const rails = railsOf({ ...TRACK, bendMetres });
      // 2π m along a radius of 4 m turns by 90 degrees: rails of 3.7 m and 4.3 m of radius.
      expect(Math.abs(lengthOf(rails) - (Math.PI / 2) * (3.7 + 4.3))).toBeLessThan(0.01);
      const centre = [1 + bendMetres, 2];
      for (const { from, to } of rails) {
        for (const [x, y, z] of [from, to]) {
          const radius = Math.hypot(x - centre[0], z - centre[1]);
          expect(Math.min(Math.abs(radius - 3.7), Math.abs(radius - 4.3))).toBeLessThan(1e-6);
          expect(y).toBeCloseTo(0.46, 9);
        }
      }
    },
  );

  test('passes its middle along its heading and bends to the right of it', () => {
    const middle = trackPointAt(TRACK, Math.PI);
    expect(middle.at).toEqual([1, 0.4, 2]);
    expect(middle.headingDegrees).toBe(0);
    const end = trackPointAt(TRACK, Math.PI * 2);
    expect(end.headingDegrees).toBeCloseTo(45, 9);
    expect(end.at[0]).toBeCloseTo(1 + 4 - 4 * Math.SQRT1_2, 9);
    expect(end.at[2]).toBeCloseTo(2 - 4 * Math.SQRT1_2, 9);
  });

  test('has its rails on either side of its middle line, and its sleepers under both', () => {
    const track = { ...TRACK, headingDegrees: 70 };
    const line = trackMiddleLine(track);
    for (const { from } of railsOf(track)) {
      const nearest = Math.min(...line.map(({ at }) => Math.hypot(at[0] - from[0], at[2] - from[2])));
      expect(nearest).toBeGreaterThan(0.29);
      expect(nearest).toBeLessThan(0.34);
    }
    const { low, high } = boundsOf(partsNamed(gearParts(track, planOf([track])), 'sleepers'));
    expect([low[1], high[1]].map((value) => Number(value.toFixed(6)))).toEqual([0.4, 0.44]);
  });

  test('bent ever less becomes the straight one', () => {
    const { bendMetres: _, ...plain } = TRACK;
    const straight = boundsOf(gearParts(plain, planOf([plain])));
    const bent = boundsOf(gearParts({ ...TRACK, bendMetres: 1000 }, planOf([TRACK])));
    straight.low.forEach((value, axis) => {
      expect(Math.abs(value - bent.low[axis])).toBeLessThan(0.01);
    });
  });
});
