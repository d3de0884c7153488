import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { placesOn } from '../../../src/core/light/glowFace';
import { illuminance } from '../../../src/core/light/illuminance';
import { lightScene } from '../../../src/core/light/lightScene';
import type { Gear } from '../../../src/core/plan/schema/gear';
import { darkRoof, lampAt } from '../../plans/darkRoof';
import { keyedFace, keyOn } from '../../plans/keyedFace';

const UP: Vec3 = [0, 1, 0];

describe('what is a lamp’s own', () => {
  test('housing, yoke and stand are not in its light where it is aimed', () => {
    const plan = keyedFace({ gear: keyOn('1', [3, 3], [0, 0], 1, 3), cameras: [] });
    for (const point of [
      [0, 0, 0.5],
      [1, 0, 1],
      [-1, 0, 0],
    ] as const) {
      const { shares } = illuminance(lightScene(plan, null, 0), point, UP);
      expect(shares.map(({ itemId, visible }) => [itemId, visible])).toEqual([['1', 1]]);
    }
  });

  test('a lamp that is dimmed to nothing gives nothing', () => {
    const plan = keyedFace({ gear: keyOn('1', [3, 3], [0, 0], 0), cameras: [] });
    expect(illuminance(lightScene(plan, null, 0), [0, 0, 0], UP).shares).toEqual([]);
  });

  test('barn doors cut it: far off the axis of a lamp that spills all round its front', () => {
    const bare = lampAt('a', 'panel', [0, 3, 0], [0, 0, -1]);
    const visible = (gear: Gear): number => {
      const scene = lightScene(darkRoof({ gear: [gear] }), null, 0);
      return illuminance(scene, [0, 0, -0.4], UP).shares[0].visible;
    };
    expect(visible(bare)).toBe(1);
    expect(visible({ ...bare, modifier: 'barn doors' })).toBeLessThan(0.5);
  });
});

describe('a scene', () => {
  test('takes over what has not changed from the one before', () => {
    const plan = keyedFace({ gear: keyOn('1', [3, 3], [0, 0]), cameras: [] });
    const before = lightScene(plan, null, 0);
    expect(lightScene(plan, null, 0.1, before).blockers).toBe(before.blockers);
  });

  test('says how far off, how far off the axis and at what incidence each share comes', () => {
    const scene = lightScene(darkRoof({ gear: [lampAt('a', 'point', [0, 3, 0], [0, -1, 0])] }), null, 0);
    const [share] = illuminance(scene, [4, 0, 0], UP).shares;
    expect(share.metres).toBeCloseTo(5, 6);
    const degrees = (Math.acos(3 / 5) * 180) / Math.PI;
    expect(share.offAxisDegrees).toBeCloseTo(degrees, 4);
    expect(share.incidenceDegrees).toBeCloseTo(degrees, 2);
  });
});

describe('places on a lamp’s face', () => {
  const scene = lightScene(darkRoof({ gear: [lampAt('a', 'panel', [0, 0, 0], [0, 0, -1])] }), null, 0);
  const [{ face }] = scene.lamps;

  test('are sixteen near by, one in each cell of four by four, no two in a line', () => {
    const places = placesOn(face, [0, 0, -4]);
    expect(places).toHaveLength(16);
    const cell = (metres: number, cells: number) => Math.floor(((metres + 0.3) / 0.6) * cells);
    expect(new Set(places.map(([x, y]) => cell(x, 4) * 4 + cell(y, 4))).size).toBe(16);
    expect(new Set(places.map(([x]) => cell(x, 16))).size).toBe(16);
    expect(new Set(places.map(([, y]) => cell(y, 16))).size).toBe(16);
  });

  test('are fewer where it looks small, and its middle at last', () => {
    expect(placesOn(face, [0, 0, -60])).toHaveLength(4);
    expect(placesOn(face, [0, 0, -2000])).toEqual([face.middle]);
  });
});
