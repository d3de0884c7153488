import { describe, expect, test } from 'vitest';
import { gearParts, standTop } from '../../../../src/core/form/gear';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import { boundsOf, windings } from '../solids';
import { ARM_STAND, FLAG, HEAD, LOW_STAND, planOf, STAND, TALL_STAND } from './plans';
import { partsNamed, pieceVolumes } from './solids';

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

describe('legs drawn in', () => {
  const legsAt = (change: Partial<typeof STAND>) => {
    const stand = { ...STAND, ...change };
    return partsNamed(gearParts(stand, planOf([stand])), 'legs');
  };
  const footLegs = (change: Partial<typeof STAND>) =>
    legsAt(change)[0].shape.tubes.filter(({ radius }) => radius === TALL_STAND.legTubeMetres / 2);

  test.each([1.2, 0.9, 0.6, 0.3])('to %d m stand on that circle and keep their length', (spreadMetres) => {
    const feet = legsAt({ spreadMetres }).find(({ shape }) => shape.substance === 'rubber')?.shape.tubes;
    for (const { from } of feet ?? []) {
      expect(Math.hypot(from[0] - STAND.at[0], from[2] - STAND.at[2])).toBeCloseTo(spreadMetres / 2, 4);
    }
    // Of the class: 0.6 m − 0.0175 m aside, 0.9 m − 0.04 m down.
    for (const { from, to } of footLegs({ spreadMetres })) {
      expect(Math.hypot(...from.map((value, axis) => to[axis] - value))).toBeCloseTo(1.0387, 3);
    }
  });

  test('meet the column the higher the narrower they stand, the spigot staying where it is', () => {
    const collars = [2, 1.2, 0.9, 0.6, 0.3].map(
      (spreadMetres) => footLegs({ spreadMetres })[0].from[1] - STAND.at[1],
    );
    expect(collars.toSorted((a, b) => a - b)).toEqual(collars);
    expect(collars[1]).toBeCloseTo(0.9, 9);
    for (const spreadMetres of [0.1, 0.6, 5]) {
      for (const heightMetres of [0.4, 1.5, 4]) {
        const stand = { ...STAND, spreadMetres, heightMetres };
        const { low, high } = boundsOf(gearParts(stand, planOf([stand])));
        expect(high[1]).toBeCloseTo(STAND.at[1] + heightMetres, 3);
        expect(low[1]).toBeGreaterThanOrEqual(STAND.at[1] - 1e-6);
      }
    }
  });

  test('as wide as the class lets them are those of a stand that says nothing', () => {
    const [said, silent] = [{ ...STAND, spreadMetres: 1.2 }, STAND].map((stand) =>
      gearParts(stand, plan).flatMap(({ shape }) => [...shape.positions]),
    );
    expect(said).toEqual(silent.map((value) => expect.closeTo(value, 6)));
  });
});

describe('sandbags over the legs', () => {
  const bagged = (count: number, change: Partial<typeof STAND> = {}) => {
    const stand = { ...STAND, ...change, bags: { count, kilograms: 9 } };
    return partsNamed(gearParts(stand, planOf([stand])), 'bags');
  };

  test('are as many as the plan says, none below the ground, all within the feet', () => {
    for (const count of [1, 3, 4, 20]) {
      const [lobes, straps] = bagged(count);
      expect(pieceVolumes(lobes.shape)).toHaveLength(2 * count);
      expect(pieceVolumes(straps.shape)).toHaveLength(count);
      const { low, high } = boundsOf([lobes]);
      expect(low[1]).toBeGreaterThanOrEqual(STAND.at[1] - 1e-6);
      expect(high[1]).toBeLessThan(STAND.at[1] + 1);
      expect(Math.max(high[0] - STAND.at[0], STAND.at[0] - low[0])).toBeLessThan(0.8);
    }
  });

  test('hold their weight of sand, at 1.6 kg a litre', () => {
    // A ball of few sides holds some four fifths of the ellipsoid that it stands for.
    const litres = pieceVolumes(bagged(1)[0].shape).reduce((sum, volume) => sum + volume * 1000, 0);
    expect(litres).toBeGreaterThan((9 / 1.6) * 0.7);
    expect(litres).toBeLessThan(9 / 1.6);
  });

  test('are not there on a stand without any, and hang low where the legs are low', () => {
    expect(partsNamed(gearParts(STAND, plan), 'bags')).toEqual([]);
    expect(boundsOf(bagged(3, { stand: 'low' })).high[1]).toBeLessThan(STAND.at[1] + 0.4);
  });
});

test('a stand on a riser stands on it', () => {
  const stand = { ...STAND, at: [2, 1.2, -3] as [number, number, number], spreadMetres: 0.7 };
  const { low, high } = boundsOf(gearParts(stand, planOf([stand])));
  expect(low[1]).toBeCloseTo(1.2, 5);
  expect(high[1]).toBeCloseTo(1.2 + stand.heightMetres, 3);
});

describe('an arm', () => {
  test.each([-90, -70, -45, -21, -20, 0, 30, 60, 90])(
    'tilted by %d degrees holds what it carries at its end',
    (tilt) => {
      const stand = { ...STAND, arm: { lengthMetres: 1, tiltDegrees: tilt, headingDegrees: 80 } };
      const onArm = { on: stand.id };
      const carriedThings: Gear[] = [
        { ...HEAD, place: onArm },
        { ...HEAD, head: 'panel', place: onArm, yokeMetres: 0.5 },
        { ...FLAG, place: onArm },
        { ...FLAG, place: onArm, headingDegrees: 80, tiltDegrees: -90 },
      ];
      const end = standTop(stand).at;
      for (const gear of carriedThings) {
        const all = gearParts(gear, planOf([stand, gear]));
        const held = all.filter(({ name }) => name === 'yoke' || name === 'arm');
        expect(held.some(({ shape }) => windings(shape, end) > 0.5)).toBe(true);
        if (gear.kind !== 'head') continue;
        const { low, high } = boundsOf(all.filter(({ name }) => name !== 'yoke'));
        // Above the end of an arm that rises, below that of one that falls.
        const middle = (low[1] + high[1]) / 2;
        expect(Math.sign(middle - end[1])).toBe(tilt < -20 ? -1 : 1);
      }
    },
  );

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
    'Gear “Lamp stand 1”, stand: found “nowhere”, expected the id of a stand class in the plan’s kit',
  );
});
