import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { glassOf } from '../../../src/core/optics/camera';
import { deliveryWithin } from '../../../src/core/optics/frameLines';
import { extraction } from '../../../src/core/optics/gate';
import { parsePlanText } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { planToFdl } from '../../../src/exchange/fdl/fdl';
import { wholeRatio } from '../../../src/exchange/fdl/ratio';
import type { FramingDecisionList } from '../../../src/exchange/fdl/types';
import { HOUSE } from '../../../src/workshop/house.mjs';
import { smallRoof } from '../../unit/smallRoof';
import { FDL_RULES } from './fdlRules';

/** Another program's validator goes by the format's rules. */
const validate = new Ajv2020({ allErrors: true }).compile(FDL_RULES);

function demo(): Plan {
  const parsed = parsePlanText(readFileSync(join(HOUSE, 'assets/loft-night.plan.json'), 'utf8'));
  if (!parsed.ok) throw new Error(parsed.faults[0].sentence);
  return parsed.value;
}

const plain = smallRoof();
/** A second delivery, lines of somebody's own, and a lens whose circle is smaller than the gate. */
const rich: Plan = {
  ...plain,
  setups: plain.setups.map((setup, k) => ({ ...setup, secondDelivery: [9 / 16, 1.85, 4 / 3][k % 3] })),
  frameLines: [{ id: 'face', label: 'Face', rect: [0.25, 0.1, 0.6, 0.9] }],
  kit: { ...plain.kit, lenses: plain.kit.lenses.map((lens) => ({ ...lens, imageCircleMm: 27 })) },
};

const read = async (plan: Plan): Promise<FramingDecisionList> => JSON.parse(await planToFdl(plan));

const cases: readonly (readonly [string, Plan])[] = [
  ['a small roof', plain],
  ['a roof with second deliveries, own lines and a small circle', rich],
  ['the demo plan', demo()],
  ['a plan without setups', { ...plain, setups: [] }],
];

test.each(cases)("the rules of the format hold for %s, and ids are each other's", async (_, plan) => {
  const list = await read(plan);
  expect(validate(list), JSON.stringify(validate.errors)).toBe(true);
  const intents = list.framing_intents.map(({ id }) => id);
  expect(new Set(intents).size).toBe(intents.length);
  if (list.default_framing_intent !== undefined) expect(intents).toContain(list.default_framing_intent);
  const canvases = list.contexts.flatMap((context) => context.canvases);
  expect(canvases).toHaveLength(plan.setups.length);
  const decisions = canvases.flatMap((canvas) =>
    canvas.framing_decisions.map((decision) => {
      expect(decision.id).toBe(`${canvas.id}-${decision.framing_intent_id}`);
      expect(intents).toContain(decision.framing_intent_id);
      return decision.id;
    }),
  );
  expect(new Set([...canvases.map(({ id }) => id), ...decisions]).size).toBe(
    canvases.length + decisions.length,
  );
});

test('the validator does find what the format does not allow', async () => {
  const list = await read(plain);
  for (const spoilt of [
    { ...list, version: { major: 3, minor: 0 } },
    { ...list, framing_intents: [{ id: 'A-B', aspect_ratio: { width: 2.39, height: 1 } }] },
    { ...list, more: 1 },
  ])
    expect(validate(spoilt)).toBe(false);
});

/** A canvas's rectangle as the part of the gate, millimetres, by its physical dimensions alone. */
test('each line read back is the one that core/optics draws, in the gate', async () => {
  const list = await read(rich);
  rich.setups.forEach((setup, k) => {
    const { lens, gateMm } = glassOf(rich, setup);
    const [canvas] = list.contexts[k].canvases;
    expect(canvas.anamorphic_squeeze).toBe(lens.squeeze);
    expect([canvas.physical_dimensions.width, canvas.physical_dimensions.height]).toEqual([...gateMm]);
    const { usedMm } = extraction(gateMm, lens.focalMm, lens.squeeze, setup.delivery);
    const rects = [
      [0, 0, 1, 1] as const,
      deliveryWithin(setup.delivery, setup.secondDelivery ?? 1),
      ...(rich.frameLines ?? []).map(({ rect }) => rect),
    ];
    expect(canvas.framing_decisions).toHaveLength(rects.length);
    canvas.framing_decisions.forEach(({ dimensions, anchor_point, framing_intent_id }, at) => {
      const [left, top, right, bottom] = rects[at];
      const mm = [canvas.dimensions.width / gateMm[0], canvas.dimensions.height / gateMm[1]];
      expect(dimensions.width / mm[0]).toBeCloseTo(usedMm[0] * (right - left), 9);
      expect(dimensions.height / mm[1]).toBeCloseTo(usedMm[1] * (bottom - top), 9);
      expect(anchor_point.x / mm[0]).toBeCloseTo((gateMm[0] - usedMm[0]) / 2 + usedMm[0] * left, 9);
      expect(anchor_point.y / mm[1]).toBeCloseTo((gateMm[1] - usedMm[1]) / 2 + usedMm[1] * top, 9);
      expect(anchor_point.x + dimensions.width).toBeLessThanOrEqual(canvas.dimensions.width + 1e-6);
      expect(anchor_point.y + dimensions.height).toBeLessThanOrEqual(canvas.dimensions.height + 1e-6);
      // Unsqueezed, the line has the shape that its intent asks for.
      const { width, height } = list.framing_intents.find(({ id }) => id === framing_intent_id)
        ?.aspect_ratio ?? { width: 0, height: 1 };
      const shape = (lens.squeeze * (dimensions.width / mm[0])) / (dimensions.height / mm[1]);
      expect(shape / (width / height)).toBeCloseTo(1, 7);
      const { effective_dimensions: lit, effective_anchor_point: from } = canvas;
      if (!lit || !from) throw new Error(`${canvas.id} has no part that is lit`);
      expect(from.x).toBeLessThanOrEqual(anchor_point.x + 1e-6);
      expect(from.x + lit.width).toBeGreaterThanOrEqual(anchor_point.x + dimensions.width - 1e-6);
      expect(lit.height).toBeLessThanOrEqual(canvas.dimensions.height);
    });
  });
});

test('ratios are of whole numbers: equal where there are such, else the nearest up to 10,000', () => {
  expect(wholeRatio(1.85)).toEqual([37, 20]);
  expect(wholeRatio(2.39)).toEqual([239, 100]);
  expect(wholeRatio(16 / 9)).toEqual([16, 9]);
  expect(wholeRatio(9 / 16)).toEqual([9, 16]);
  expect(wholeRatio(1)).toEqual([1, 1]);
  const [width, height] = wholeRatio(Math.PI);
  expect(width).toBeLessThanOrEqual(10000);
  expect(Math.abs(width / height - Math.PI)).toBeLessThan(1e-6);
  expect(wholeRatio(1e-9)).toEqual([1, 10000]);
});

test('the same plan has the same list, another plan another name', async () => {
  expect(await planToFdl(smallRoof())).toBe(await planToFdl(plain));
  expect((await read(rich)).uuid).not.toBe((await read(plain)).uuid);
});
