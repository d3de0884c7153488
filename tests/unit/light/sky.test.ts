import { describe, expect, test } from 'vitest';
import { length, type Vec3 } from '../../../src/core/form/build/vector';
import { ambientLux, ambientOf, USUAL_AMBIENT } from '../../../src/core/light/ambient';
import { illuminance, strongestWay } from '../../../src/core/light/illuminance';
import { levels } from '../../../src/core/light/levels';
import { lightScene } from '../../../src/core/light/lightScene';
import { probeReading, probesOf } from '../../../src/core/light/probes';
import type { SourceLight } from '../../../src/core/light/sourceLight';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Sky } from '../../../src/core/plan/schema/sky';
import { darkRoof, lampAt } from '../../plans/darkRoof';

const PLACE: Plan['place'] = {
  label: 'Arvela',
  latitudeDegrees: 41.15,
  longitudeDegrees: -8.63,
  timeZone: 'Europe/Lisbon',
  date: '2026-11-24',
  northDegrees: 0,
};
const UP: Vec3 = [0, 1, 0];
/** Two hours before midnight of a night of a full moon, from memory. */
const clock = { time: '22:00', utcOffsetHours: 0 };
const under = (sky: Sky, more: Partial<Plan> = {}): Plan => darkRoof({ place: PLACE, sky, ...more });
const above = (sky: Sky): number => ambientLux(ambientOf(under(sky)), UP);

describe('the sky of a plan', () => {
  test('is the usual one where nothing is said, to the last bit', () => {
    expect(ambientOf(darkRoof({}))).toBe(USUAL_AMBIENT);
    expect(ambientOf(under({ glow: 'cloud over a large town' }))).toEqual(USUAL_AMBIENT);
  });

  test('is darker the smaller the town, and a tenth where it is clear', () => {
    const cloud = ambientOf(under({ glow: 'cloud over a large town' })).zenith;
    const clear = ambientOf(under({ glow: 'clear over a large town' })).zenith;
    expect(cloud / clear).toBeCloseTo(10.1, 6);
    const order = ['clear over a large town', 'clear over a small town', 'clear in the country'] as const;
    const lux = order.map((glow) => above({ glow }));
    expect(lux).toEqual(lux.toSorted((a, b) => b - a));
  });

  test('has what is left of the twilight at its clock time, and by then none', () => {
    const glow = 'clear in the country';
    const at = (time: string) => above({ glow, clock: { time, utcOffsetHours: 0 } });
    expect(at('17:40')).toBeGreaterThan(1);
    expect(at('18:30')).toBeLessThan(at('18:00') / 10);
    expect(at('22:00')).toBe(above({ glow }));
  });
});

describe('the moon', () => {
  const moonlit: Sky = { glow: 'clear in the country', clock, moon: true };

  test('lights what faces it, as much as a full moon does, from where it stands', () => {
    const { moon } = ambientOf(under(moonlit));
    expect(moon?.lux).toBeGreaterThan(0.15);
    expect(moon?.lux).toBeLessThan(0.33);
    expect(length(moon?.way ?? [0, 0, 0])).toBeCloseTo(1, 9);
    // East, before it goes through south: to the right on the plan, and with north turned, turned along.
    expect(moon?.way[0]).toBeGreaterThan(0.5);
    const turned = ambientOf(darkRoof({ place: { ...PLACE, northDegrees: 90 }, sky: moonlit })).moon;
    expect(turned?.way[2]).toBeCloseTo(moon?.way[0] ?? 0, 9);
  });

  test('is not there by day, when it is down, or where it is not said to be out', () => {
    expect(ambientOf(under({ ...moonlit, clock: { time: '12:30', utcOffsetHours: 0 } })).moon).toBeNull();
    expect(ambientOf(under({ ...moonlit, moon: false })).moon).toBeNull();
    expect(ambientOf(under({ glow: moonlit.glow, moon: true })).moon).toBeNull();
  });

  test('casts the shadow of a wall', () => {
    const { moon } = ambientOf(under(moonlit));
    const way = moon?.way ?? UP;
    const wall: Plan['pieces'][number] = {
      id: 'tank',
      label: 'Tank',
      kind: 'box',
      at: [way[0] * 3, way[1] * 3 - 1, way[2] * 3],
      headingDegrees: 0,
      size: [2, 2, 2],
      material: 'brick',
    };
    const open = illuminance(lightScene(under(moonlit), null, 0), [0, 0, 0], way);
    const shaded = illuminance(lightScene(under(moonlit, { pieces: [wall] }), null, 0), [0, 0, 0], way);
    expect(open.lux - shaded.lux).toBeCloseTo(moon?.lux ?? 0, 9);
  });
});

describe('a meter', () => {
  const gear = [
    lampAt('lamp', 'point', [0, 4, 0], [0, -1, 0]),
    lampAt('side', 'point', [-10, 1, 0], [1, 0, 0]),
  ];
  const probes: Plan['probes'] = [
    { id: 'm1', label: 'To the key', at: [0, 0, 0], normal: 'key' },
    { id: 'm2', label: 'Level', at: [0, 1, 0], normal: [270, 0] },
    { id: 'm3', label: 'Up', at: [0, 0, 0], normal: 'up' },
  ];

  test('reads the lamp that it is turned to, by the square of the way', () => {
    const plan = darkRoof({ gear, probes });
    const scene = lightScene(plan, null, 0);
    const [key, level, up] = probesOf(plan).map((probe) => probeReading(scene, probe));
    expect(key.shares[0]).toMatchObject({ itemId: 'lamp', incidenceDegrees: 0 });
    expect(key.shares[0].lux).toBeCloseTo(10000 / 16, 1);
    expect(level.shares[0]).toMatchObject({ itemId: 'side' });
    expect(level.lux - level.ambientLux).toBeCloseTo(100.5, 0);
    expect(up.lux).toBeCloseTo(key.lux, 0);
  });

  test('turns to what gives most, all bulbs of a string together, and to the moon where no lamp gives more', () => {
    const from = (itemId: string, ray: Vec3): SourceLight => ({
      itemId,
      fedBy: null,
      metres: 1,
      offAxisDegrees: 0,
      visible: 1,
      rays: [ray],
    });
    const bulbs = [from('string', [6, 0, 0]), from('string', [5, 0, 0])];
    const light = {
      point: UP,
      sources: [from('lamp', [0, 0, 10]), ...bulbs],
      moon: null,
      ambient: USUAL_AMBIENT,
    };
    expect(strongestWay(light)).toEqual([1, 0, 0]);
    expect(strongestWay({ ...light, moon: [0, 12, 0] })).toEqual([0, 1, 0]);
    expect(strongestWay({ ...light, moon: [0, 0, -4], sources: [] })).toEqual([0, 0, -1]);
    expect(strongestWay({ ...light, sources: [] })).toEqual(UP);
  });

  test('is read at every beat with the faces', () => {
    const plan = darkRoof({ gear, probes, beats: [{ id: 'a', label: 'A', atSeconds: 0 }] });
    const [{ probes: read }] = levels(plan, null).beats;
    expect(read.map(({ lux }) => Math.round(lux))).toEqual([635, 101, 635]);
  });
});
