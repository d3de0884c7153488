import { fc, test as prop } from '@fast-check/vitest';
import { expect, test } from 'vitest';
import { itemsOf } from '../../../src/core/plan/items';
import { parsePlanText } from '../../../src/core/plan/parse';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { crowdedPlan, randomPlan } from '../../plans/crowd';
import { CROWDED, DEMO, PAPER, readPlan, textOf } from '../../plans/readPlan';

test.each([DEMO, PAPER, CROWDED])('%s comes back byte for byte', (path) => {
  expect(serialisePlan(readPlan(path))).toBe(textOf(path));
});

prop.prop([fc.integer({ min: 0, max: 2 ** 31 - 1 })])('any plan comes back as it went', (seed) => {
  const plan = randomPlan(seed);
  const text = serialisePlan(plan);
  const parsed = parsePlanText(text);
  expect(parsed).toEqual({ ok: true, value: plan });
  if (parsed.ok) expect(serialisePlan(parsed.value)).toBe(text);
});

prop.prop([fc.integer({ min: 0, max: 2 ** 31 - 1 })])(
  'the order of keys in a file does not matter',
  (seed) => {
    const plan = randomPlan(seed);
    const turned = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(turned);
      if (value === null || typeof value !== 'object') return value;
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([key, inner]) => [key, turned(inner)]),
      );
    };
    const parsed = parsePlanText(JSON.stringify(turned(plan)));
    expect(parsed.ok && serialisePlan(parsed.value)).toBe(serialisePlan(plan));
  },
);

test('a plan that would not be read back is not written', () => {
  const plan = readPlan(PAPER);
  const broken = { ...plan, safety: { metres: Number.POSITIVE_INFINITY, frameWidths: 0 } };
  expect(() => serialisePlan(broken)).toThrow(
    'serialisePlan: safety.metres: found Infinity, expected a finite number.',
  );
});

test('the crowded plan is the one that its seed draws', () => {
  expect(serialisePlan(crowdedPlan(60, 20, 1))).toBe(textOf(CROWDED));
});

test.each([8, 60, 180, 600])('a crowd of %d has as many items, of ids of their own', (count) => {
  const items = itemsOf(crowdedPlan(count, 1, 3));
  expect(items).toHaveLength(count);
  expect(new Set(items.map(({ record }) => record.id)).size).toBe(count);
});
