import { describe, expect, test } from 'vitest';
import { gearParts, standTop } from '../../../../src/core/form/gear';
import { boundsOf } from '../solids';
import { ARM_STAND, LOW_STAND, planOf, STAND, TALL_STAND } from './plans';
import { partsNamed } from './solids';

const plan = planOf([STAND, ARM_STAND]);

describe('a stand', () => {
  const parts = gearParts(STAND, plan);
  const columnTubes = partsNamed(parts, 'column')[0].shape.tubes;

  test('ends with its spigot at its height above the foot, also beyond its reach or below its collar', () => {
    for (const heightMetres of [0.4, 1, 3.2, 6]) {
      const stand = { ...STAND, heightMetres };
      const { high } = boundsOf(gearParts(stand, planOf([stand])));
      expect(high[1]).toBeCloseTo(STAND.at[1] + heightMetres, 3);
      expect(standTop(stand).at).toEqual([STAND.at[0], STAND.at[1] + heightMetres, STAND.at[2]]);
    }
  });

  test('has risers each thinner than the one below by the step', () => {
    const radii = columnTubes.slice(0, TALL_STAND.sections).map(({ radius }) => radius);
    expect(radii).toHaveLength(4);
    radii.forEach((radius, k) => {
      expect(radius).toBeCloseTo(0.0175 - 0.0025 * k, 9);
    });
  });

  test('has risers that overlap, and none hang in the air', () => {
    for (let k = 1; k < columnTubes.length; k += 1) {
      expect(columnTubes[k].from[1]).toBeLessThanOrEqual(columnTubes[k - 1].to[1] + 1e-6);
    }
  });

  test('stands on three rubber feet on the circle of its footprint, the first towards its heading', () => {
    const feet = partsNamed(parts, 'legs').find(({ shape }) => shape.substance === 'rubber')?.shape.tubes;
    expect(feet).toHaveLength(3);
    const headings = (feet ?? []).map(({ from }) => {
      const [x, y, z] = [from[0] - STAND.at[0], from[1] - STAND.at[1], from[2] - STAND.at[2]];
      expect(Math.hypot(x, z)).toBeCloseTo(TALL_STAND.footprintMetres / 2, 4);
      expect(y).toBeCloseTo(0, 5);
      return ((Math.atan2(x, -z) * 180) / Math.PI + 360) % 360;
    });
    [30, 150, 270].forEach((heading, k) => {
      expect(headings[k]).toBeCloseTo(heading, 2);
    });
  });

  test('never goes below its foot', () => {
    for (const stand of [STAND, ARM_STAND]) {
      expect(boundsOf(gearParts(stand, plan)).low[1]).toBeGreaterThanOrEqual(stand.at[1] - 1e-6);
    }
  });

  test('has legs as thick as its class says', () => {
    expect(partsNamed(parts, 'legs')[0].shape.tubes.map(({ radius }) => radius)).toContain(
      TALL_STAND.legTubeMetres / 2,
    );
  });

  test('with a low collar has legs that bend down to their feet, and no braces', () => {
    const tubes = partsNamed(gearParts(ARM_STAND, plan), 'legs')[0].shape.tubes;
    expect(tubes.filter(({ radius }) => radius === LOW_STAND.legTubeMetres / 2)).toHaveLength(6);
    expect(tubes.filter(({ radius }) => radius < LOW_STAND.legTubeMetres / 2)).toHaveLength(0);
  });
});

describe('an arm', () => {
  test('goes from the spigot along its own heading and tilt, and carries at its end', () => {
    const top = standTop(ARM_STAND);
    expect(top.headingDegrees).toBe(90);
    expect(top.at[0]).toBeCloseTo(-1 + Math.cos((20 * Math.PI) / 180), 9);
    expect(top.at[1]).toBeCloseTo(1.5 + Math.sin((20 * Math.PI) / 180), 9);
    expect(top.at[2]).toBeCloseTo(1, 9);
    const [rod] = partsNamed(gearParts(ARM_STAND, plan), 'arm')[0].shape.tubes;
    rod.to.forEach((value, axis) => {
      expect(value).toBeCloseTo(top.at[axis], 9);
    });
  });

  test('is not there on a stand without one', () => {
    expect(partsNamed(gearParts(STAND, plan), 'arm')).toEqual([]);
  });
});

test('a class that the plan does not have is said by name', () => {
  const stray = { ...STAND, stand: 'nowhere' };
  expect(() => gearParts(stray, planOf([stray]))).toThrow(
    "Gear “Lamp stand 1”, stand: found “nowhere”, expected the id of a stand class in the plan's kit",
  );
});
