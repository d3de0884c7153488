import { describe, expect, test } from 'vitest';
import { fluxLumens } from '../../../src/core/form/beam';
import { flickerShare } from '../../../src/core/form/flicker';
import { gearParts } from '../../../src/core/form/gear';
import { lampsAt } from '../../../src/core/form/lamps';
import { candelaTable } from '../../../src/core/form/photometry/candelaTable';
import { conversionShare } from '../../../src/core/form/photometry/conversion';
import type { Before } from '../../../src/core/plan/schema/before';
import type { Gear } from '../../../src/core/plan/schema/gear';
import { EVERY_KIND, HEAD, HEADS, planOf, STAND } from './gear/plans';
import { boundsOf } from './solids';

const PRACTICAL: Extract<Gear, { kind: 'practical' }> = {
  kind: 'practical',
  id: 'sign',
  label: 'Sign',
  at: [4, 1, -6],
  headingDegrees: 180,
  head: 'sign',
  dim: 0.5,
  tint: '#3a7bff',
  flicker: { seed: 7, perSecond: 6, depth: 0.8 },
};
const { flicker: _, ...STEADY } = PRACTICAL;
const STRING = EVERY_KIND.find((gear) => gear.kind === 'bulb string');

describe('lampsAt', () => {
  test('gives one lamp for each head and practical and one for each bulb, in the order of the plan', () => {
    const plan = planOf(EVERY_KIND);
    const expected = EVERY_KIND.flatMap((gear) => {
      if (gear.kind === 'bulb string') return Array.from({ length: gear.bulbs }, () => gear.id);
      return gear.kind === 'head' || gear.kind === 'practical' ? [gear.id] : [];
    });
    expect(lampsAt(plan, 0).map(({ itemId }) => itemId)).toEqual(expected);
  });

  test('puts each lamp at what glows, with a unit direction and finite numbers', () => {
    const plan = planOf(EVERY_KIND);
    for (const lamp of lampsAt(plan, 1)) {
      const gear = EVERY_KIND.find(({ id }) => id === lamp.itemId);
      if (!gear) throw new Error(`There is no gear ${lamp.itemId}.`);
      const glow = gearParts(gear, plan).filter(({ shape }) => shape.substance === 'glow');
      const { low, high } = boundsOf(glow);
      lamp.position.forEach((value, axis) => {
        expect(value).toBeGreaterThan(low[axis] - 0.01);
        expect(value).toBeLessThan(high[axis] + 0.01);
      });
      expect(Math.hypot(...lamp.direction)).toBeCloseTo(1, 9);
      expect(Number.isFinite(lamp.peakCandela)).toBe(true);
    }
  });

  test('points a head at its aim and dims it', () => {
    const plan = planOf([STAND, { ...HEAD, dim: 0.25 }]);
    const [lamp] = lampsAt(plan, 0);
    const way = HEAD.aim.map((value, axis) => value - lamp.position[axis]);
    const distance = Math.hypot(...way);
    lamp.direction.forEach((value, axis) => {
      expect(value).toBeCloseTo(way[axis] / distance, 6);
    });
    expect(lamp.peakCandela).toBe(5000);
    expect(lamp.beamDegrees).toBe(40);
    expect(lamp.tint).toBeNull();
  });

  test('gives a practical its tint, its heading and its flicker', () => {
    const plan = planOf([PRACTICAL]);
    const lamps = Array.from({ length: 200 }, (_, k) => lampsAt(plan, k / 24)[0]);
    expect(lamps[0].tint).toBe('#3a7bff');
    [0, 0, 1].forEach((value, axis) => {
      expect(lamps[0].direction[axis]).toBeCloseTo(value, 9);
    });
    const levels = lamps.map(({ peakCandela }) => peakCandela);
    expect(Math.max(...levels)).toBeLessThanOrEqual(10000);
    expect(Math.min(...levels)).toBeGreaterThanOrEqual(10000 * 0.2);
    expect(new Set(levels).size).toBeGreaterThan(10);
  });

  test('lets a street lamp shine down from its post', () => {
    const plan = planOf([{ ...PRACTICAL, head: 'street' }]);
    const [lamp] = lampsAt(plan, 0);
    expect(lamp.direction[1]).toBeLessThan(-0.98);
    expect(lamp.position[1]).toBeCloseTo(1 + 6, 0);
  });

  test('lets the bulbs of a string shine all round, below the wire', () => {
    if (STRING?.kind !== 'bulb string') throw new Error('The fixture has no string.');
    const lamps = lampsAt(planOf([STRING]), 0);
    expect(lamps).toHaveLength(12);
    for (const { beamDegrees, peakCandela, position } of lamps) {
      expect(beamDegrees).toBe(360);
      expect(peakCandela).toBe(20000 * 0.5);
      expect(position[1]).toBeLessThan(3);
    }
  });
});

describe('modifiers', () => {
  const spot = HEADS[0];
  const lampWith = (modifier: 'softbox' | 'lantern' | 'grid' | 'barn doors' | 'snoot') =>
    lampsAt(planOf([STAND, { ...HEAD, modifier }]), 0)[0];

  test('give no light of their own', () => {
    const bare = fluxLumens(spot);
    for (const modifier of ['softbox', 'lantern', 'grid', 'barn doors', 'snoot'] as const) {
      expect(fluxLumens(lampWith(modifier))).toBeLessThanOrEqual(bare * 1.001);
    }
  });

  test('a grid and a snoot narrow the beam, and barn doors leave it', () => {
    const bare = lampsAt(planOf([STAND, HEAD]), 0)[0];
    const wide = { ...spot, beamDegrees: 90, fieldDegrees: 120 };
    const plan = planOf([STAND, HEAD]);
    const wideWith = (modifier?: 'grid' | 'snoot') => {
      const gear = [STAND, { ...HEAD, ...(modifier && { modifier }) }];
      return lampsAt({ ...plan, gear, kit: { ...plan.kit, heads: [wide] } }, 0)[0];
    };
    expect(wideWith().beamDegrees).toBe(90);
    for (const modifier of ['grid', 'snoot'] as const) {
      expect(wideWith(modifier).beamDegrees).toBeLessThan(wideWith().beamDegrees);
      expect(wideWith(modifier).fieldDegrees).toBeLessThan(wideWith().fieldDegrees);
    }
    expect(lampWith('barn doors')).toMatchObject({
      beamDegrees: bare.beamDegrees,
      fieldDegrees: bare.fieldDegrees,
      peakCandela: bare.peakCandela,
    });
  });

  test('spread a softbox as a diffuse area and a lantern all round', () => {
    expect(lampWith('softbox').peakCandela).toBeCloseTo((fluxLumens(spot) * 0.5) / Math.PI, 6);
    expect(lampWith('lantern').beamDegrees).toBe(360);
    expect(lampWith('softbox').sizeMetres[0]).toBeGreaterThan(0.5);
  });
});

test('lumens agree with the closed form of a lamp that is even all round, and nearly of a diffuse area', () => {
  expect(fluxLumens({ peakCandela: 10, beamDegrees: 360, fieldDegrees: 360 })).toBeCloseTo(40 * Math.PI, 9);
  const diffuse = { peakCandela: 100, beamDegrees: 120, fieldDegrees: 168.522 };
  // The fitted curve meets the cosine at a half and a tenth only, and holds 5 % more in all.
  expect(Math.abs(fluxLumens(diffuse) / (100 * Math.PI) - 1)).toBeLessThan(0.051);
});

describe('flickerShare', () => {
  const flicker = { seed: 42, perSecond: 8, depth: 0.6 };
  const moments = Array.from({ length: 5000 }, (_, k) => k / 250 - 2);

  test('stays within its depth and always gives the same for the same moment', () => {
    for (const seconds of moments) {
      const share = flickerShare(flicker, seconds);
      expect(share).toBeLessThanOrEqual(1);
      expect(share).toBeGreaterThanOrEqual(0.4);
      expect(flickerShare(flicker, seconds)).toBe(share);
    }
  });

  test('changes as often as it says, at uneven times', () => {
    const changes = moments
      .slice(1)
      .filter((seconds, k) => flickerShare(flicker, seconds) !== flickerShare(flicker, moments[k]));
    const perSecond = changes.length / 20;
    expect(perSecond).toBeGreaterThan(7.5);
    expect(perSecond).toBeLessThan(8.5);
    const gaps = new Set(changes.slice(1).map((seconds, k) => Math.round((seconds - changes[k]) * 250)));
    expect(gaps.size).toBeGreaterThan(8);
  });

  test('uses all of its depth, is mostly near full, and another seed goes another way', () => {
    const shares = moments.map((seconds) => flickerShare(flicker, seconds));
    expect(Math.min(...shares)).toBeLessThan(0.45);
    expect(shares.filter((share) => share > 0.7).length).toBeGreaterThan(shares.length / 2);
    const other = moments.map((seconds) => flickerShare({ ...flicker, seed: 43 }, seconds));
    expect(other).not.toEqual(shares);
    expect(flickerShare({ ...flicker, depth: 0 }, 1.23)).toBe(1);
  });
});

describe('what is put before a lamp', () => {
  const lampWith = (before: Before) => lampsAt(planOf([STAND, { ...HEAD, before }]), 0)[0];
  const bare = lampsAt(planOf([STAND, HEAD]), 0)[0];

  test('takes its stops of the candela, and leaves the beam', () => {
    for (const [before, stops] of [
      [{ density: 0.30103 }, 1],
      [{ doubles: 2, singles: 1 }, 2.5],
      [{ density: 0.60206, doubles: 1 }, 3],
      [{}, 0],
    ] as const) {
      const lamp = lampWith(before);
      expect(Math.log2(bare.peakCandela / lamp.peakCandela)).toBeCloseTo(stops, 4);
      expect(lamp).toEqual({ ...bare, peakCandela: lamp.peakCandela });
    }
  });

  test('makes the white of a gel, and takes what that costs', () => {
    const blue = lampWith({ mired: -131 });
    expect(1e6 / blue.kelvin - 1e6 / bare.kelvin).toBeCloseTo(-131, 6);
    expect(blue.peakCandela).toBeCloseTo(bare.peakCandela * conversionShare(bare.kelvin, -131), 6);
  });

  test('spreads the beam, modifier and all, with the lumens that come through', () => {
    for (const modifier of [undefined, 'snoot', 'softbox'] as const) {
      const head = { ...HEAD, ...(modifier && { modifier }) };
      const [without] = lampsAt(planOf([STAND, head]), 0);
      const before = { diffusion: { transmission: 0.6, spreadDegrees: 40 } };
      const [behind] = lampsAt(planOf([STAND, { ...head, before }]), 0);
      const table = behind.distribution && candelaTable(behind.distribution);
      const lumens = ((table?.lumens ?? 0) * behind.peakCandela) / (table?.peakCandela ?? 1);
      expect(lumens / fluxLumens(without)).toBeCloseTo(0.6, 3);
      // A softbox is as wide as a face can be already.
      expect(behind.beamDegrees).toBeGreaterThan(without.beamDegrees * (modifier === 'softbox' ? 0.99 : 1.1));
    }
  });

  test('gives the same table for the same records, so that the picture keeps it', () => {
    const plan = planOf([STAND, { ...HEAD, before: { diffusion: { transmission: 1, spreadDegrees: 30 } } }]);
    expect(lampsAt(plan, 1)[0].distribution).toBe(lampsAt(plan, 0)[0].distribution);
  });

  test('gels a practical and every bulb of a string', () => {
    const gel = { before: { mired: 100, density: 0.3 } };
    if (STRING?.kind !== 'bulb string') throw new Error('There is no string.');
    for (const gear of [STEADY, STRING]) {
      const [plain, gelled] = [gear, { ...gear, ...gel }].map((each) => lampsAt(planOf([each]), 0));
      gelled.forEach((lamp, k) => {
        expect(lamp.kelvin).toBeLessThan(plain[k].kelvin);
        expect(lamp.peakCandela).toBeLessThan(plain[k].peakCandela * 0.501);
      });
    }
  });
});
