import { expect, test } from 'vitest';
import { lightOf } from '../../../src/core/report/light/lightOf';
import { setupReport } from '../../../src/core/report/setupReport';
import { brokenNumbers } from '../../plans/brokenNumbers';
import { randomPlan } from '../../plans/crowd';

// The first two have a bounce of which some places get nothing: once that was a light without a direction.
test.each([5, 59, 71, 83])('the light of random plan %d is told, in numbers that there are', (seed) => {
  const plan = randomPlan(seed);
  const [setup] = plan.setups;
  const from = setup.move.keys[0].atSeconds;
  const light = lightOf(plan, setup, setupReport(plan, setup, { at: from }));
  expect(brokenNumbers(light)).toEqual([]);
  for (const { text } of light.sentences) expect(text).toMatch(/^\S.*\.$/);
});
