import { expect, test } from 'vitest';
import { bagsThatHold } from '../../../src/core/cautions/wind/ballast';
import { packingOf } from '../../../src/core/night/packing/packingOf';
import type { PackingLine } from '../../../src/core/night/packing/types';
import type { NightPlan } from '../../../src/core/plan/schema/night';
import { EVEN_NIGHT, nightRoof } from '../../plans/nightRoof';
import { smallRoofDocument } from '../smallRoof';

const packed = (night: NightPlan, more: object = {}): readonly PackingLine[] =>
  packingOf(nightRoof({ ...EVEN_NIGHT, ...night }, {}, more));
const lineOf = (lines: readonly PackingLine[], label: string): PackingLine | undefined =>
  lines.find((line) => line.label.replaceAll('\u00a0', ' ') === label);

const cable = (id: string, path: readonly (readonly [number, number])[]) => ({
  id,
  label: `Cable ${id}`,
  kind: 'cable',
  path,
  baseMetres: 0,
  diameterMetres: 0.014,
  wire: { mm2: 2.5 },
});
const withGear = (...gear: object[]): object => ({ gear: [...smallRoofDocument().gear, ...gear] });

test('what stands on the roof is added up, each thing once', () => {
  const lines = packed({});
  expect(lineOf(lines, 'Large sensor')).toMatchObject({ department: 'camera', count: 1 });
  expect(lineOf(lines, '85 mm')?.detail).toBe('for B, C');
  expect(lineOf(lines, 'Tall stand')).toMatchObject({
    department: 'grip',
    count: 2,
    itemIds: ['stand-in', 'stand-out'],
  });
  expect(lineOf(lines, 'Tall stand')?.detail.replaceAll('\u00a0', ' ')).toBe(
    'Lamp stand 1 at 2.60 m, Lamp stand 2 at 2.00 m',
  );
  expect(lineOf(lines, 'Spot 1 kW')).toMatchObject({ department: 'light', count: 1 });
  // From the first light at 18:10 to the last shot at 21:10 are 3 h.
  expect(lineOf(lines, 'Battery for the camera')?.count).toBe(2);
  expect(lineOf(lines, 'Tape for marks of Ana, a colour of its own')).toMatchObject({
    count: 1.2,
    unit: 'metres',
  });
  expect(new Set(lines.map(({ label }) => label)).size).toBe(lines.length);
});

test('water is the area that mirrors times its depth, for each wetting', () => {
  const water = (night: NightPlan, more: object = {}) =>
    lineOf(packed(night, more), 'Water for the wet-down')?.count;
  // The deck is 20 by 16 m.
  expect(water({})).toBe(320);
  expect(water({ packing: { waterMillimetres: 0.5 } })).toBe(160);
  const wet = (setup: string) => ({ setup, ground: 'wet' }) as const;
  expect(water({ setups: [wet('master'), wet('still')] })).toBe(640);
  const area = {
    id: 'pool',
    wetness: 'puddled',
    outline: [
      [0, 0],
      [4, 0],
      [4, 3],
      [0, 3],
    ],
  };
  expect(water({}, { ground: { surface: 'asphalt', wetness: 'dry', areas: [area] } })).toBe(12);
  expect(water({}, { ground: { surface: 'asphalt', wetness: 'dry' } })).toBeUndefined();
});

test('cords are of their gauge, as long as their way with slack or the next that is made', () => {
  const cables = withGear(
    cable('a', [
      [-8, 6],
      [1, 6],
    ]),
    cable('b', [
      [-8, 5],
      [8, 5],
      [8, -7],
      [-8, -7],
      [-8, 4],
    ]),
  );
  const lines = packed({}, cables);
  // 9 m with a tenth are 9.9 m; 55 m are 60.5 m, a 50 and a 15.
  expect(lineOf(lines, 'Cord, 2.5 mm², 10 m')?.count).toBe(1);
  expect(lineOf(lines, 'Cord, 2.5 mm², 50 m')?.count).toBe(1);
  expect(lineOf(lines, 'Cord, 2.5 mm², 15 m')?.detail.replaceAll('\u00a0', ' ')).toBe('Cable b (60.5 m)');
  const more = packed({ packing: { slack: 0.2 } }, cables);
  expect(lineOf(more, 'Cord, 2.5 mm², 10 m')).toBeUndefined();
  expect(lineOf(more, 'Cord, 2.5 mm², 15 m')?.count).toBe(1);
});

test('whoever walks over a cable has a mat, and every supply a breaker that trips on leakage', () => {
  const generator = {
    id: 'gen',
    label: 'Generator',
    kind: 'generator',
    at: [8, 0, 6],
    headingDegrees: 0,
    size: [0.5, 0.4, 0.3],
  };
  // Ana walks from (0, −2) to (1.5, −1).
  const lines = packed(
    {},
    withGear(
      generator,
      cable('a', [
        [0.7, 6],
        [0.7, -6],
      ]),
      cable('b', [
        [-9, 6],
        [-9, 0],
      ]),
    ),
  );
  expect(lineOf(lines, 'Mat over cable, 1 m')).toMatchObject({ count: 1, detail: 'Ana over Cable a' });
  expect(lines.find(({ label }) => label.startsWith('GFCI'))).toMatchObject({ count: 1, itemIds: ['gen'] });
  expect(lineOf(lines, 'Fire extinguisher')?.count).toBe(2);
});

test('a forecast asks for ballast on top of what lies there', () => {
  const bags = (more: object): number =>
    packed({}, more)
      .filter(({ label }) => label.startsWith('Sandbag'))
      .reduce((sum, { count }) => sum + count, 0);
  expect(bags({})).toBe(0);
  expect(bags({ cautions: { wind: { metresPerSecond: 1 } } })).toBe(0);
  const flag = {
    id: 'flag',
    label: 'Flag',
    kind: 'flag',
    place: { on: 'stand-out' },
    headingDegrees: 0,
    tiltDegrees: 0,
    size: [1.2, 1.2],
  };
  const windy = { ...withGear(flag), cautions: { wind: { metresPerSecond: 8 } } };
  const calm = bags(windy);
  expect(calm).toBeGreaterThan(0);
  // Where bags do, as many as the cautions say that hold, on all stands together.
  const small = { ...windy, ...withGear({ ...flag, size: [0.4, 0.4] }) };
  const plan = nightRoof(EVEN_NIGHT, {}, small);
  const holding = plan.gear.map((gear) => (gear.kind === 'stand' ? bagsThatHold(plan, gear) : null));
  const held = holding.reduce((sum, each) => sum + (each?.count ?? 0), 0);
  expect(held).toBeGreaterThan(0);
  expect(bags(small)).toBe(held);
  expect(bags({ ...withGear(flag), cautions: { wind: { metresPerSecond: 14 } } })).toBeGreaterThan(calm);
});

test('spares go by the rules of the plan: one for every so many, at least one', () => {
  const spares = {
    spares: [
      { of: 'stands', oneFor: 5 },
      { of: 'water', oneFor: 10 },
    ],
  } as const;
  const lines = packed({ packing: { spares: [...spares.spares] } });
  expect(lineOf(lines, 'Tall stand')?.spare).toBe(1);
  expect(lineOf(lines, 'Water for the wet-down')?.spare).toBe(32);
  expect(lineOf(lines, 'Spot 1 kW')?.spare).toBe(0);
});
