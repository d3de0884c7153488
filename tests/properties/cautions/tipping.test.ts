import { expect, test } from 'vitest';
import { pressureOf } from '../../../src/core/cautions/wind/drag';
import {
  ballastNeeded,
  type Mass,
  NEWTONS_PER_KILOGRAM,
  type Standing,
  tippingWind,
} from '../../../src/core/cautions/wind/tipping';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { type Draw, drawFrom } from '../../plans/draw';
import { cases } from '../../thorough';

/** Three feet round the middle, some masses over them, a sheet and a tube in the wind. */
function someStanding(draw: Draw): Standing {
  const reach = draw.between(0.3, 0.9);
  const turn = draw.between(0, 360);
  const foot = (k: number): Vec3 => {
    const angle = ((turn + 120 * k) * Math.PI) / 180;
    return [reach * Math.sin(angle), 0, -reach * Math.cos(angle)];
  };
  const heading = draw.between(0, 2 * Math.PI);
  const tilt = draw.between(-1, 1);
  return {
    feet: [foot(0), foot(1), foot(2)],
    masses: [
      { kilograms: draw.between(2, 10), at: [0, 0, 0] },
      { kilograms: draw.between(0, 3), at: [draw.between(-0.4, 0.4), 2, draw.between(-0.4, 0.4)] },
    ],
    sails: [
      {
        dragArea: draw.between(0.05, 3),
        at: [draw.between(-0.5, 0.5), draw.between(0.5, 4), draw.between(-0.5, 0.5)],
        normal: [Math.sin(heading) * Math.cos(tilt), Math.sin(tilt), -Math.cos(heading) * Math.cos(tilt)],
      },
      { dragArea: draw.between(0.01, 0.1), at: [0, 1.5, 0], normal: null },
    ],
  };
}

const CASES = cases(300);
const standings = Array.from({ length: CASES }, (_, k) => ({ seed: k + 1, draw: drawFrom(k + 1) }));
const ballastOf = (kilograms: number): Mass => ({ kilograms, at: [0, 0, 0] });

test('ballast brings the wind of tipping to exactly the wind that it is reckoned for', () => {
  let weighed = 0;
  for (const { seed, draw } of standings) {
    const standing = someStanding(draw);
    const wind = draw.between(3, 20);
    const kilograms = ballastNeeded(standing, pressureOf(wind), 1);
    if (kilograms === 0) {
      expect(tippingWind(standing), `seed ${seed}`).toBeGreaterThanOrEqual(wind * (1 - 1e-9));
      continue;
    }
    weighed += 1;
    expect(tippingWind(standing), `seed ${seed}`).toBeLessThan(wind);
    const held = { ...standing, masses: [...standing.masses, ballastOf(kilograms)] };
    expect(tippingWind(held) / wind, `seed ${seed}`).toBeCloseTo(1, 9);
  }
  expect(weighed).toBeGreaterThan(CASES / 3);
});

test('more ballast over the middle holds in more wind, more cloth and a higher one in less', () => {
  for (const { seed, draw } of standings) {
    const standing = someStanding(draw);
    const tipping = tippingWind(standing);
    const heavier = { ...standing, masses: [...standing.masses, ballastOf(5)] };
    expect(tippingWind(heavier), `seed ${seed}`).toBeGreaterThan(tipping);
    const larger = {
      ...standing,
      sails: standing.sails.map((sail) => ({ ...sail, dragArea: sail.dragArea * 1.5 })),
    };
    if (tipping > 0) expect(tippingWind(larger) / tipping, `seed ${seed}`).toBeCloseTo(Math.sqrt(1 / 1.5), 9);
    const upright = {
      ...standing,
      sails: standing.sails.map((sail) => ({ ...sail, normal: null })),
    };
    const higher = {
      ...upright,
      sails: upright.sails.map((sail): Standing['sails'][number] => ({
        ...sail,
        at: [sail.at[0], sail.at[1] + 1, sail.at[2]],
      })),
    };
    if (tippingWind(upright) > 0)
      expect(tippingWind(higher), `seed ${seed}`).toBeLessThan(tippingWind(upright));
  }
});

test('it does not matter where on the roof it stands, nor which way it and its cloth are turned together', () => {
  for (const { seed, draw } of standings.slice(0, 40)) {
    const standing = someStanding(draw);
    // The winds that are tried lie 5 degrees apart: turned by a multiple of that, they are the same.
    const angle = (5 * draw.whole(0, 71) * Math.PI) / 180;
    const turned = ([x, y, z]: Vec3): Vec3 => [
      x * Math.cos(angle) - z * Math.sin(angle),
      y,
      x * Math.sin(angle) + z * Math.cos(angle),
    ];
    const moved = (at: Vec3): Vec3 => {
      const [x, y, z] = turned(at);
      return [x + 7, y + 2.5, z - 3];
    };
    const elsewhere: Standing = {
      feet: standing.feet.map(moved),
      masses: standing.masses.map((mass) => ({ ...mass, at: moved(mass.at) })),
      sails: standing.sails.map((sail) => ({
        ...sail,
        at: moved(sail.at),
        normal: sail.normal && turned(sail.normal),
      })),
    };
    const tipping = tippingWind(standing);
    expect(tippingWind(elsewhere), `seed ${seed}`).toBeCloseTo(tipping, 7);
  }
});

test('what leans out over its feet falls by itself, and its ballast only just holds it', () => {
  const standing: Standing = {
    feet: [
      [-0.5, 0, -0.5],
      [0.5, 0, -0.5],
      [0.5, 0, 0.5],
      [-0.5, 0, 0.5],
    ],
    masses: [{ kilograms: 10, at: [1.5, 2, 0] }],
    sails: [],
  };
  expect(tippingWind(standing)).toBe(0);
  // 10 kg at 1 m outside against 0.5 m inside.
  expect(ballastNeeded(standing, 0, 1)).toBeCloseTo(20, 9);
  const held = { ...standing, masses: [...standing.masses, ballastOf(20.001)] };
  expect(tippingWind(held)).toBe(Number.POSITIVE_INFINITY);
  expect(NEWTONS_PER_KILOGRAM).toBeCloseTo(9.81, 2);
});
