import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { validateBytes } from 'gltf-validator';
import { expect, test } from 'vitest';
import { parsePlanText } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { planToGlb } from '../../../src/exchange/glb';
import { HOUSE } from '../../../src/workshop/house.mjs';
import { drawFrom } from '../../plans/draw';
import { someAreas } from '../../plans/someAreas';
import { smallRoof } from '../../unit/smallRoof';

function demo(): Plan {
  const parsed = parsePlanText(readFileSync(join(HOUSE, 'assets/loft-night.plan.json'), 'utf8'));
  if (!parsed.ok) throw new Error(parsed.faults[0].sentence);
  return parsed.value;
}

const plan = smallRoof();
const cases: readonly [name: string, plan: Plan, seconds: number][] = [
  ['a small roof at its start', plan, 0],
  ['a small roof during the walk', plan, 1.3],
  ['the demo plan', demo(), 20],
  ['a dry roof', { ...plan, ground: { ...plan.ground, wetness: 'dry' } }, 0],
  ['a roof that is wet in parts', { ...plan, ground: { ...plan.ground, areas: someAreas(drawFrom(3)) } }, 0],
  ['a plan with nothing in it', { ...plan, pieces: [], cast: [], gear: [], setups: [] }, 0],
  ['a plan with only cameras', { ...plan, pieces: [], cast: [], gear: [] }, 0],
];

test.each(cases)("the standard's own validator finds no error in %s", async (_, given, seconds) => {
  const { issues } = await validateBytes(planToGlb(given, seconds), { maxIssues: 100 });
  const serious = issues.messages.filter(({ severity }) => severity <= 1);
  expect(serious).toEqual([]);
  expect(issues.numErrors).toBe(0);
});

test('the validator does find a broken file', async () => {
  const glb = planToGlb(plan, 0);
  const { issues } = await validateBytes(glb.subarray(0, glb.length - 4));
  expect(issues.numErrors).toBeGreaterThan(0);
});
