import { describe, expect, test } from 'vitest';
import { gustOf } from '../../../src/core/cautions/wind/gust';
import { headKilograms, standKilograms } from '../../../src/core/cautions/wind/masses';
import { BUILT_IN_KIT } from '../../../src/core/kit/builtInKit';
import { about, figureOf, flagOn, roof, standAt } from './roof';

const gear = (more: object = {}, ...rest: unknown[]) => [
  standAt('stand', [0, 0, 0], more),
  flagOn('flag', 'stand'),
  ...rest,
];
const blowing = (metresPerSecond: number, gustMetresPerSecond?: number) => ({
  more: { cautions: { wind: { metresPerSecond, ...(gustMetresPerSecond && { gustMetresPerSecond }) } } },
});
const TIPS = 'tips in a wind of';
const NEEDS = 'ballast needed beside what it has';

describe('wind', () => {
  test('without a forecast it says in which wind a stand tips', () => {
    const [found] = about(roof({ gear: gear() }), 'wind');
    expect(found).toMatchObject({ id: 'wind/stand', standing: 'said', itemIds: ['stand', 'flag'] });
    const [speed, miles, beaufort] = found?.figures ?? [];
    expect(miles?.value).toBeCloseTo((speed?.value ?? 0) / 0.44704, 9);
    expect(beaufort).toMatchObject({ unit: 'Beaufort', value: 2 });
  });

  test('a gust is 1.53 times the mean unless one is entered, and never less than the mean', () => {
    expect(gustOf(roof(blowing(5)))).toBeCloseTo(7.65, 9);
    expect(gustOf(roof(blowing(5, 12)))).toBe(12);
    expect(gustOf(roof(blowing(5, 1)))).toBe(5);
    expect(gustOf(roof({}))).toBeNull();
  });

  test('the ballast that it asks for, put on the legs, makes it hold, and a bag less does not', () => {
    const before = about(roof({ gear: gear(), ...blowing(3) }), 'wind')[0];
    expect(before?.standing).toBe('breaks');
    const kilograms = figureOf(before, NEEDS);
    // Three bags, one on each leg, lie about the middle as the ballast does.
    const withBags = (each: number) =>
      about(roof({ gear: gear({ bags: { count: 3, kilograms: each } }), ...blowing(3) }), 'wind')[0];
    expect(withBags(kilograms / 3 + 0.01)?.standing).toBe('holds');
    const less = withBags(kilograms / 3 - 0.5);
    expect(less?.standing).toBe('breaks');
    expect(figureOf(less, NEEDS)).toBeCloseTo(1.5, 1);
    expect(less?.sentence).toContain('more');
  });

  test('a sandbag that lies between the feet counts, one beside the stand does not', () => {
    const bag = (x: number) => ({
      id: 'bag',
      label: 'Bag',
      kind: 'sandbag',
      at: [x, 0, 0],
      headingDegrees: 0,
      kilograms: 15,
    });
    const tips = (...more: unknown[]) => figureOf(about(roof({ gear: gear({}, ...more) }), 'wind')[0], TIPS);
    expect(tips(bag(0.1))).toBeGreaterThan(tips() * 1.2);
    expect(tips(bag(1))).toBe(tips());
  });

  test('higher, larger and farther out on an arm it tips sooner; a net later', () => {
    const tips = (stand: object, flag: object = {}) =>
      figureOf(
        about(roof({ gear: [standAt('stand', [0, 0, 0], stand), flagOn('flag', 'stand', flag)] }), 'wind')[0],
        TIPS,
      );
    const plain = tips({});
    expect(tips({ heightMetres: 3 })).toBeLessThan(plain);
    expect(tips({}, { size: [1.8, 1.8] })).toBeLessThan(plain);
    const onArm = (lengthMetres: number) =>
      tips({ arm: { lengthMetres, tiltDegrees: 0, headingDegrees: 0 } });
    expect(onArm(0.5)).toBeLessThan(onArm(0.2));
    expect(tips({}, { kilograms: 8 })).toBeGreaterThan(plain);
    expect(tips({}, { transmission: 0.5 })).toBeGreaterThan(plain);
    expect(tips({ spreadMetres: 0.6 })).toBeLessThan(plain);
  });

  test('what hangs too far out falls by itself', () => {
    const heavy = {
      ...BUILT_IN_KIT,
      bodies: [],
      lenses: [],
      heads: BUILT_IN_KIT.heads.map((head) => ({ ...head, kilograms: 20 })),
    };
    const plan = roof({
      gear: [
        standAt('stand', [0, 0, 0], { arm: { lengthMetres: 2, tiltDegrees: 0, headingDegrees: 60 } }),
        {
          id: 'head',
          label: 'Head',
          kind: 'head',
          head: 'led-spot-300',
          place: { on: 'stand' },
          aim: [0, 0, 0],
          dim: 1,
        },
      ],
      more: { kit: heavy },
    });
    const [found] = about(plan, 'wind');
    expect(found?.standing).toBe('breaks');
    expect(found?.sentence).toContain('falls over by itself');
  });

  test('a cloth in the air of which nobody knows what holds it is told with its push', () => {
    const loose = flagOn('flag', 'x', { place: { at: [0, 3, 0] } });
    const [found] = about(roof({ gear: [loose], ...blowing(8, 8) }), 'wind-unheld');
    expect(figureOf(found, 'push of a gust')).toBeCloseTo(66.04, 1);
  });

  test('masses are what a class says, else about what such a thing weighs', () => {
    const [flagStand] = BUILT_IN_KIT.stands.filter(({ id }) => id === 'flag-stand');
    expect(standKilograms(flagStand)).toBe(5.5);
    for (const { kilograms, ...unsaid } of BUILT_IN_KIT.stands) {
      const guess = standKilograms(unsaid);
      // On the light side, which is the safe one, and not absurd.
      expect(guess / (kilograms ?? Number.NaN), unsaid.id).toBeGreaterThan(0.4);
      expect(guess / (kilograms ?? Number.NaN), unsaid.id).toBeLessThan(1.15);
    }
    const [spot] = BUILT_IN_KIT.heads;
    expect(headKilograms(spot)).toBeGreaterThan(2);
    expect(headKilograms({ ...spot, kilograms: 7 })).toBe(7);
  });
});
