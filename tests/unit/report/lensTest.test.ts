import { describe, expect, test } from 'vitest';
import { framingOf } from '../../../src/core/continuity/framing';
import { sameFraming } from '../../../src/core/continuity/sameFraming';
import { whereabouts } from '../../../src/core/form/figure/whereabouts';
import { cameraAt } from '../../../src/core/optics/camera';
import { projectPoint } from '../../../src/core/optics/project';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { type LensTrial, lensAnswer, lensTrialSteps } from '../../../src/core/report/lensTest';
import { allLensTries } from '../../../src/core/report/lensTries';
import { inOneGo } from '../../../src/core/units/steps';
import { alongside } from '../../plans/alongside';

const trialsOf = (plan: Plan): LensTrial[] =>
  allLensTries(plan, plan.setups[0]).map((each) => inOneGo(lensTrialSteps(plan, each, null)));

describe('which lens holds both', () => {
  // Common practice: of a 40, 65, 100 mm set at 2×, alongside two players a metre and a half apart, the 100 is too
  // tight to hold both, and the 65 holds them.
  test('of a 40, 65 and 100 mm set alongside two who walk 1.5 m apart: the 65', () => {
    const trials = trialsOf(alongside(3.6));
    const holds = Object.fromEntries(
      trials.map(({ label, holdings }) => [label, holdings.map(({ heldThroughout }) => heldThroughout)]),
    );
    expect(holds).toEqual({ '40 mm': [true, true], '65 mm': [true, true], '100 mm': [false, false] });
    expect(lensAnswer(trials, ['ana', 'bea'])).toMatch(
      /^65 mm is the tightest that holds Ana and Bea throughout\. 100 mm holds Ana for [0-3]\.\d\u00a0s of 4\.0\u00a0s and Bea for [0-3]\.\d\u00a0s of 4\.0\u00a0s\.$/,
    );
    // Between them they never fit: whenever one is held, the other is cut.
    const [ana, bea] = trials[2].holdings;
    for (const [from, to] of ana.heldSpans)
      for (const [start, end] of bea.heldSpans) expect(end < from || start > to).toBe(true);
    // From farther away the 100 holds them too, though the dolly and the two don't keep quite the same pace.
    expect(lensAnswer(trialsOf(alongside(6)), ['ana', 'bea'])).toBe(
      '100 mm is the tightest that holds Ana and Bea throughout.',
    );
  });

  test('at one instant the answer says when, and whom the next one does not hold', () => {
    const plan = alongside(3.6);
    const trials = allLensTries(plan, plan.setups[0]).map((each) => inOneGo(lensTrialSteps(plan, each, 2)));
    expect(lensAnswer(trials, ['ana', 'bea'])).toMatch(
      /^65 mm is the tightest that holds Ana and Bea at 2\.0\u00a0s\. 100 mm does not hold (Ana|Bea|Ana and Bea)\.$/,
    );
  });

  test('one alone is held by what does not hold two', () => {
    const plan = alongside(3.6);
    const [setup] = plan.setups;
    const aimed = {
      ...plan,
      setups: [{ ...setup, operator: { hold: 'ana', at: [0.5, 0.4] as [number, number] } }],
    };
    expect(lensAnswer(trialsOf(aimed), ['ana'])).toBe('100 mm is the tightest that holds Ana throughout.');
    expect(lensAnswer(trialsOf(aimed), [])).toBe('Nobody is asked for.');
  });

  test('nothing holds who is behind', () => {
    const plan = alongside(3.6);
    const [setup] = plan.setups;
    const keys = setup.move.keys.map((each) => ({ ...each, headingDegrees: 180 }));
    const turned = { ...plan, setups: [{ ...setup, move: { ...setup.move, keys } }] };
    expect(lensAnswer(trialsOf(turned), ['ana', 'bea'])).toBe(
      'No lens of the kit holds Ana and Bea throughout. The widest, 40 mm, never holds Ana and Bea.',
    );
  });
});

test('the same framing on another lens puts the eyes at the same place, as large', () => {
  const plan = alongside(3.6);
  const [setup] = plan.setups;
  const [ana] = plan.cast;
  const found = sameFraming(plan, setup, {
    lensId: 'two-100',
    performerId: 'ana',
    seconds: 0,
    behindMetres: 10,
  });
  if (!found) throw new Error('nobody is there');
  const { position } = found;
  // Two and a half times as long a lens stands two and a half times as far.
  expect(found.distanceMetres[1] / found.distanceMetres[0]).toBeCloseTo(2.5, 12);
  expect(found.fieldBehindMetres[1]).toBeCloseTo(0.44 * (found.distanceMetres[1] + 10), 9);
  const key = {
    ...setup.move.keys[0],
    position: [position[0], position[1], position[2]] as [number, number, number],
  };
  const moved = { ...setup, lens: 'two-100', move: { ...setup.move, keys: [key] } };
  const place = whereabouts(ana, plan, 0);
  if (!place) throw new Error('nobody is there');
  const [before, after] = [setup, moved].map((each) => projectPoint(cameraAt(plan, each, 0), place.eyes));
  expect(after?.x).toBeCloseTo(before?.x ?? Number.NaN, 9);
  expect(after?.y).toBeCloseTo(before?.y ?? Number.NaN, 9);
  const [small, large] = [setup, moved].map((each) => framingOf(cameraAt(plan, each, 0), plan, ana, 0));
  expect((large?.headHeight ?? 0) / (small?.headHeight ?? 1)).toBeCloseTo(1, 1);
});
