import { describe, expect, test } from 'vitest';
import { gearParts } from '../../../../src/core/form/gear';
import { cablePath } from '../../../../src/core/form/gear/cable';
import { boundsOf } from '../solids';
import { EVERY_KIND, planOf } from './plans';
import { partsNamed } from './solids';

const plan = planOf(EVERY_KIND);
const partsOf = (id: string) => {
  const gear = EVERY_KIND.find((each) => each.id === id);
  return gear ? gearParts(gear, plan) : [];
};

describe('round members', () => {
  test('a cable lies on its base, as thick as it is, with a tube for each length of it', () => {
    const [cable] = partsOf('cable-1');
    const { low, high } = boundsOf([cable]);
    expect(low[1]).toBeGreaterThanOrEqual(-1e-6);
    expect(high[1]).toBeLessThanOrEqual(0.012 + 1e-6);
    expect(cable.shape.tubes.length).toBeGreaterThan(6);
    expect(new Set(cable.shape.tubes.map(({ radius }) => radius))).toEqual(new Set([0.006]));
  });

  test("a cable's path keeps its ends and rounds its corners", () => {
    const path = cablePath(
      [
        [0, 0],
        [2, 0],
        [2, 2],
      ],
      0.01,
    );
    expect(path[0]).toEqual([0, 0.01, 0]);
    expect(path[path.length - 1]).toEqual([2, 0.01, 2]);
    expect(path).toHaveLength(5);
    expect(path.every(([x, , z]) => x < 2 || z > 0)).toBe(true);
  });

  test('rails stand their gauge apart and run along the heading', () => {
    const rails = partsNamed(partsOf('track-1'), 'rails')[0].shape.tubes;
    expect(rails).toHaveLength(2);
    const [a, b] = rails;
    expect(Math.hypot(a.from[0] - b.from[0], a.from[2] - b.from[2])).toBeCloseTo(0.62, 4);
    const [x, z] = [a.to[0] - a.from[0], a.to[2] - a.from[2]];
    expect(Math.hypot(x, z)).toBeCloseTo(5.4, 4);
    expect((Math.atan2(x, -z) * 180) / Math.PI).toBeCloseTo(70, 3);
  });

  test('a string of bulbs hangs from its ends, its sag below the chord at its middle', () => {
    const wire = partsNamed(partsOf('string-1'), 'wire')[0].shape.tubes;
    expect(wire[0].from).toEqual([-4, 3, -2]);
    expect(wire[wire.length - 1].to).toEqual([4, 2.5, 2]);
    expect(wire[wire.length / 2].from[1]).toBeCloseTo(2.75 - 0.6, 6);
  });
});

describe('things that stand', () => {
  test.each([
    'generator-1',
    'distro-1',
    'track-1',
    'cart-1',
    'ladder-1',
    'sandbag-1',
    'practical-street',
    'practical-sign',
  ])('%s stands on its place', (id) => {
    expect(boundsOf(partsOf(id)).low[1]).toBeCloseTo(0.2, 2);
  });

  test('a ladder is as high as it says, a sandbag as full', () => {
    expect(boundsOf(partsOf('ladder-1')).high[1]).toBeCloseTo(0.2 + 2.4, 2);
    const { low, high } = boundsOf(partsOf('sandbag-1'));
    expect(high[1] - low[1]).toBeLessThan(0.25);
  });

  test('a cart with two monitors has two screens, one with none has none', () => {
    expect(partsNamed(partsOf('cart-1'), 'screens')[0].shape.indices.length / 36).toBe(2);
    const cart = EVERY_KIND.find(({ id }) => id === 'cart-1');
    if (cart?.kind !== 'cart') throw new Error('The fixture has no cart.');
    const bare = gearParts({ ...cart, monitors: 0 }, plan);
    expect(partsNamed(bare, 'screens')).toEqual([]);
    expect(partsNamed(bare, 'monitors')).toEqual([]);
  });

  test('a tint colours what glows, and nothing else', () => {
    for (const { shape } of partsOf('practical-sign')) {
      expect(shape.colour).toBe(shape.substance === 'glow' ? '#3a7bff' : null);
    }
    expect(partsOf('head-sign').every(({ shape }) => shape.colour === null)).toBe(true);
  });
});
