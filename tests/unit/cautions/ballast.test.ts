import { describe, expect, test } from 'vitest';
import { bagsThatHold } from '../../../src/core/cautions/wind/ballast';
import { standingOf } from '../../../src/core/cautions/wind/standingOf';
import { tippingOf } from '../../../src/core/cautions/wind/tipping';
import { setBags } from '../../../src/core/plan/edits/setBags';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { about, figureOf, flagOn, roof, standAt } from './roof';

const standOf = (plan: Plan) => {
  const found = plan.gear.find(({ id }) => id === 'stand');
  if (found?.kind !== 'stand') throw new Error('no stand');
  return found;
};
const windy = (metresPerSecond: number, stand: object = {}, flag: object = {}) =>
  roof({
    gear: [standAt('stand', [0, 0, 0], stand), flagOn('flag', 'stand', flag)],
    more: { cautions: { wind: { metresPerSecond } } },
  });
const laid = (plan: Plan, count: number, kilograms: number) =>
  setBags(plan, { id: 'stand', bags: { count, kilograms } });

describe('bags that hold a stand', () => {
  test('with them it holds, with one less it does not, and the sentence says as many', () => {
    const plan = windy(4);
    const found = bagsThatHold(plan, standOf(plan));
    if (!found) throw new Error('no bags');
    const { count, kilograms, added } = found;
    expect([kilograms, added]).toEqual([10, count]);
    expect(about(laid(plan, count, kilograms), 'wind')[0]?.standing).toBe('holds');
    expect(about(laid(plan, count - 1, kilograms), 'wind')[0]?.standing).toBe('breaks');
    const [told] = about(plan, 'wind');
    expect(figureOf(told, 'ballast needed in bags of 10\u00a0kg')).toBe(count);
    expect(told?.sentence).toContain(`${count} bags of 10\u00a0kg`);
  });

  test('bags that lie there stay, and more of them come', () => {
    const plan = windy(4, { bags: { count: 2, kilograms: 12 } });
    const found = bagsThatHold(plan, standOf(plan));
    expect(found?.kilograms).toBe(12);
    expect(found?.count).toBe(2 + (found?.added ?? 0));
    const half = about(windy(4, { bags: { count: 2, kilograms: 12.5 } }), 'wind')[0];
    expect(half?.sentence).toContain('of 12.5\u00a0kg');
    // Whoever puts on what the sentence says has put on enough.
    const [, told] = /at least (\d+)\u00a0kg/.exec(half?.sentence ?? '') ?? [];
    const needed = figureOf(half, 'ballast needed beside what it has');
    expect(Number(told)).toBeGreaterThanOrEqual(needed);
    expect(Number(told)).toBeLessThan(needed + 1);
    expect(about(laid(plan, found?.count ?? 0, 12), 'wind')[0]?.standing).toBe('holds');
  });

  test('where a plan takes no more of those that lie there, heavier ones lie in their place', () => {
    const plan = windy(3.4, { bags: { count: 20, kilograms: 0.5 } });
    const found = bagsThatHold(plan, standOf(plan));
    expect(found?.kilograms).toBe(10);
    expect(found?.added).toBe(found?.count);
    expect(about(plan, 'wind')[0]?.sentence).toContain('in place of those');
    expect(about(laid(plan, found?.count ?? 0, 10), 'wind')[0]?.standing).toBe('holds');
  });

  test('none without a forecast, where it holds as it is, and beyond what anybody would put on a stand', () => {
    const calm = roof({ gear: [standAt('stand', [0, 0, 0]), flagOn('flag', 'stand')] });
    expect(bagsThatHold(calm, standOf(calm))).toBeNull();
    for (const wind of [0.5, 20]) expect(bagsThatHold(windy(wind), standOf(windy(wind)))).toBeNull();
    expect(about(windy(20), 'wind')[0]?.sentence).toContain('strike it');
  });
});

test('the wind that tips a flag blows square to it, near enough', () => {
  const plan = windy(4, {}, { headingDegrees: 40, size: [2, 2] });
  const { headingDegrees } = tippingOf(standingOf(plan, standOf(plan)));
  const off = Math.abs(((((headingDegrees ?? 0) - 40) % 180) + 180) % 180);
  expect(Math.min(off, 180 - off)).toBeLessThanOrEqual(60);
});

test('what falls by itself falls to where its weight lies', () => {
  const plan = roof({
    gear: [
      standAt('stand', [0, 0, 0], { arm: { lengthMetres: 2.5, tiltDegrees: 0, headingDegrees: 90 } }),
      flagOn('flag', 'stand', { kilograms: 12 }),
    ],
  });
  const { metresPerSecond, headingDegrees } = tippingOf(standingOf(plan, standOf(plan)));
  expect(metresPerSecond).toBe(0);
  expect(Math.abs((headingDegrees ?? 0) - 90)).toBeLessThanOrEqual(60);
});
