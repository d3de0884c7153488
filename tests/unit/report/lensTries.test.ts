import { describe, expect, test } from 'vitest';
import { stateAt } from '../../../src/core/optics/camera';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { lensAnswer, lensTrialSteps } from '../../../src/core/report/lensTest';
import { allLensTries, lensTries, presentTry } from '../../../src/core/report/lensTries';
import { inOneGo } from '../../../src/core/units/steps';
import { alongside } from '../../plans/alongside';
import { planFrom } from '../../plans/bare';

/** Two abreast and a dolly beside them, with a 2× zoom of 40 to 100 mm in the kit and on the camera. */
function zoomed(focals: readonly [number, number] | null): Plan {
  const plan = alongside(3.6);
  const [prime] = plan.kit.lenses;
  const [setup] = plan.setups;
  const keys = setup.move.keys.map((key, k) => (focals ? { ...key, focalMm: focals[k] } : key));
  return planFrom({
    ...plan,
    kit: { ...plan.kit, lenses: [prime, { ...prime, id: 'zoom', label: 'Zoom', longestMm: 100 }] },
    setups: [{ ...setup, lens: 'zoom', move: { ...setup.move, keys } }],
  });
}
const triesOf = (plan: Plan) => allLensTries(plan, plan.setups[0]);

describe('a zoom in the kit is tried', () => {
  test('at its wide end and at its long end, where the setup has it at one of them', () => {
    expect(triesOf(zoomed(null)).map(({ label, isPresent }) => [label, isPresent])).toEqual([
      ['40 mm', false],
      ['Zoom at its wide end, 40\u00a0mm', true],
      ['Zoom at its long end, 100\u00a0mm', false],
    ]);
    expect(presentTry(zoomed([100, 100]), zoomed([100, 100]).setups[0])?.use).toBe('long end');
  });

  test('and as the setup uses it, where it zooms or is set in between', () => {
    const plan = zoomed([40, 65]);
    expect(triesOf(plan).map(({ label, isPresent }) => [label, isPresent])).toEqual([
      ['40 mm', false],
      ['Zoom at its wide end, 40\u00a0mm', false],
      ['Zoom as it zooms here, 40 to 65\u00a0mm', true],
      ['Zoom at its long end, 100\u00a0mm', false],
    ]);
    const set = zoomed([65, 65]);
    expect(triesOf(set)[2].label).toBe('Zoom as it is set, 65\u00a0mm');
    // Each is that focal length throughout, or goes from one to the other.
    const at = (plan_: Plan, index: number, seconds: number) =>
      stateAt(plan_, triesOf(plan_)[index].setup, seconds).focalMm;
    expect([0, 2, 4].map((seconds) => at(plan, 1, seconds))).toEqual([40, 40, 40]);
    expect([0, 2, 4].map((seconds) => at(plan, 2, seconds))).toEqual([40, 52.5, 65]);
    expect([0, 2, 4].map((seconds) => at(plan, 3, seconds))).toEqual([100, 100, 100]);
  });

  test('within what it has, where the keys ask another zoom for more', () => {
    const plan = zoomed([20, 300]);
    const [, , zooming] = triesOf(plan);
    expect(zooming.label).toBe('Zoom as it zooms here, 40 to 100\u00a0mm');
  });

  test('and the answer says at which end it holds them', () => {
    const plan = zoomed([40, 65]);
    const trials = lensTries(plan, plan.setups[0], plan.kit.lenses[1]).map((each) =>
      inOneGo(lensTrialSteps(plan, each, 4)),
    );
    expect(trials.map(({ holdings }) => holdings.every(({ heldThroughout }) => heldThroughout))).toEqual([
      true,
      true,
      false,
    ]);
    expect(lensAnswer(trials, ['ana', 'bea'])).toMatch(
      /^Zoom as it zooms here, 40 to 65\u00a0mm is the tightest that holds Ana and Bea at 4\.0\u00a0s\. Zoom at its long end, 100\u00a0mm does not hold/,
    );
  });
});
