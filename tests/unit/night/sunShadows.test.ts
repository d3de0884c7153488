import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { directionOf } from '../../../src/core/form/build/vector';
import { formsAt } from '../../../src/core/form/formsAt';
import type { ItemForm, PartShape } from '../../../src/core/form/types';
import { lastLight, sunOver } from '../../../src/core/night/dusk/sunOver';
import { type Shadows, sunShadows } from '../../../src/core/night/dusk/sunShadows';
import { timesOfSky } from '../../../src/core/night/times/darkness';
import { nightClock } from '../../../src/core/night/times/nightClock';
import { EVEN_NIGHT, nightRoof } from '../../plans/nightRoof';
import { DEMO, readPlan } from '../../plans/readPlan';

type Spot = readonly [number, number];

/** How often outlines go round a place. */
function winding(outlines: Shadows['outlines'], [x, z]: Spot): number {
  let turns = 0;
  for (const outline of outlines)
    for (const [k, [ax, az]] of outline.entries()) {
      const [bx, bz] = outline[(k + 1) % outline.length];
      if (az <= z === bz <= z) continue;
      const at = ax + ((z - az) / (bz - az)) * (bx - ax);
      if (at > x) turns += bz > az ? 1 : -1;
    }
  return turns;
}

/** Whether anything of forms stands between a place of a level and the sun, triangle by triangle. */
function isShaded(forms: readonly ItemForm[], from: Vec3, way: Vec3): boolean {
  for (const { parts } of forms)
    for (const { shape, worldFromPart: m } of parts) {
      const at = (k: number): Vec3 => {
        const [x, y, z] = [shape.positions[k * 3], shape.positions[k * 3 + 1], shape.positions[k * 3 + 2]];
        if (!m) return [x, y, z];
        const row = (r: number): number => m[r] * x + m[r + 1] * y + m[r + 2] * z + m[r + 3];
        return [row(0), row(4), row(8)];
      };
      for (let k = 0; k < shape.indices.length; k += 3)
        if (hits(from, way, at(shape.indices[k]), at(shape.indices[k + 1]), at(shape.indices[k + 2])))
          return true;
    }
  return false;
}

/** Whether a ray meets a triangle, more than 2 mm over where it begins. */
function hits(from: Vec3, way: Vec3, a: Vec3, b: Vec3, c: Vec3): boolean {
  const minus = (p: Vec3, q: Vec3): Vec3 => [p[0] - q[0], p[1] - q[1], p[2] - q[2]];
  const cross = (p: Vec3, q: Vec3): Vec3 => [
    p[1] * q[2] - p[2] * q[1],
    p[2] * q[0] - p[0] * q[2],
    p[0] * q[1] - p[1] * q[0],
  ];
  const dot = (p: Vec3, q: Vec3): number => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
  const [ab, ac] = [minus(b, a), minus(c, a)];
  const across = cross(way, ac);
  const size = dot(ab, across);
  if (size === 0) return false;
  const to = minus(from, a);
  const u = dot(to, across) / size;
  const over = cross(to, ab);
  const v = dot(way, over) / size;
  const along = dot(ac, over) / size;
  return u >= 0 && v >= 0 && u + v <= 1 && along * way[1] > 0.002;
}

const box = (size: Vec3, at: Vec3): ItemForm => {
  const [w, h, d] = size;
  const positions = new Float32Array(
    [0, 1].flatMap((y) =>
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ].flatMap(([x, z]) => [at[0] + x * w, at[1] + y * h, at[2] + z * d]),
    ),
  );
  const quads = [
    [0, 1, 2, 3],
    [7, 6, 5, 4],
    [0, 4, 5, 1],
    [1, 5, 6, 2],
    [2, 6, 7, 3],
    [3, 7, 4, 0],
  ];
  const shape: PartShape = {
    positions,
    indices: new Uint32Array(quads.flatMap(([a, b, c, e]) => [a, b, c, a, c, e])),
    tubes: [],
    substance: 'timber',
    colour: null,
    openness: null,
    mirror: null,
    smooth: false,
  };
  return {
    id: 'box',
    label: 'Box',
    kind: 'box',
    section: 'piece',
    wish: 'either',
    parts: [{ name: 'box', shape, worldFromPart: null }],
  };
};

describe('shadows under the sun', () => {
  test('a metre under a sun 45 degrees up throws a metre, away from it', () => {
    const shadows = sunShadows([box([1, 1, 1], [0, 0, 0])], directionOf(270, 45), 0);
    expect(shadows).toHaveLength(1);
    const [{ share, outlines }] = shadows;
    expect(share).toBe(1);
    // The box's own metre, and one more to the east.
    expect(winding(outlines, [1.9, 0.5])).not.toBe(0);
    expect(winding(outlines, [2.1, 0.5])).toBe(0);
    expect(winding(outlines, [-0.1, 0.5])).toBe(0);
  });

  test('only what is over the level throws, and a level that is higher has a shorter shadow', () => {
    const form = box([1, 3, 1], [0, 0, 0]);
    const [{ outlines }] = sunShadows([form], directionOf(270, 45), 2);
    expect(winding(outlines, [1.9, 0.5])).not.toBe(0);
    expect(winding(outlines, [2.1, 0.5])).toBe(0);
    expect(sunShadows([form], directionOf(270, 45), 3)).toEqual([]);
  });

  test('a sun that is down throws none', () => {
    expect(sunShadows([box([1, 1, 1], [0, 0, 0])], directionOf(270, -0.5), 0)).toEqual([]);
  });

  test('what lies in shadow on the demo roof is what a ray towards the sun is stopped for', () => {
    const plan = readPlan(DEMO);
    const forms = formsAt(plan, 9).filter(({ kind }) => kind !== 'deck');
    const solid = forms.map((form) => ({
      ...form,
      parts: form.parts.filter(
        ({ shape }) => shape.openness === null && shape.substance !== 'glass' && shape.substance !== 'glow',
      ),
    }));
    const way = directionOf(230, 6);
    const outlines = sunShadows(solid, way, 0).flatMap((each) => each.outlines);
    let [shaded, lit, differ] = [0, 0, 0];
    for (let x = -11.37; x < 12; x += 1.57)
      for (let z = -7.41; z < 8; z += 1.63) {
        const isIn = winding(outlines, [x, z]) !== 0;
        if (isIn !== isShaded(solid, [x, 0, z], way)) differ += 1;
        if (isIn) shaded += 1;
        else lit += 1;
      }
    expect(shaded).toBeGreaterThan(20);
    expect(lit).toBeGreaterThan(20);
    expect(differ).toBe(0);
  });
});

describe('the sun over the roof', () => {
  const at = (more: object) =>
    nightRoof(EVEN_NIGHT, { latitudeDegrees: 0, longitudeDegrees: 0, date: '2026-03-20', ...more });

  test('on the equator at the equinox the last light comes from the west, and along the plan from where that lies', () => {
    const level = lastLight(at({ northDegrees: 0 }), nightClock(at({})));
    expect(level?.azimuth).toBeCloseTo(270, 0);
    expect(level?.way[0]).toBeCloseTo(-1, 2);
    expect(Math.abs(level?.altitude ?? 9)).toBeLessThan(0.5);
    // North to the right of the sheet: west is up.
    const turned = lastLight(at({ northDegrees: 90 }), nightClock(at({})));
    expect(turned?.way[2]).toBeCloseTo(-1, 2);
  });

  test('an hour before sunset on the equator it stands fifteen degrees higher', () => {
    const plan = at({ northDegrees: 0 });
    const clock = nightClock(plan);
    const { sunset } = timesOfSky(plan, clock);
    const { altitude } = sunOver(plan, clock, (sunset ?? 0) - 60);
    expect(altitude).toBeGreaterThan(14);
    expect(altitude).toBeLessThan(15.2);
  });

  test('where it does not set there is no last light', () => {
    const north = at({ latitudeDegrees: 75, date: '2026-06-21' });
    expect(lastLight(north, nightClock(north))).toBeNull();
  });
});
