import { expect, it } from 'vitest';
import { remediesFor } from '../../../../src/core/clearance/remedies/remediesFor';
import { withRemedy } from '../../../../src/core/clearance/remedies/remedyEdits';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { setupReport } from '../../../../src/core/report/setupReport';
import { inOneGo } from '../../../../src/core/units/steps';
import { LOOSE, standAt, stillRoof } from './remedied';

/** A stand outside the right frame line, turned so far. */
function beside(headingDegrees: number): Plan {
  const stand = standAt({ at: [1.7, 0, -4], headingDegrees });
  const roof = stillRoof([stand], { span: { from: 'start', to: 'start' } }, -11);
  return { ...roof, safety: { metres: 0.02, frameWidths: 0.002 } };
}

const verdictOf = (plan: Plan): string | undefined =>
  setupReport(plan, plan.setups[0]).items.find(({ id }) => id === 'stand')?.verdict;

it('turns the legs of a stand of which one reaches in, and leaves it where it stands', () => {
  const plan = beside(40);
  expect([verdictOf(plan), verdictOf(beside(0))]).toEqual(['showing', 'clear']);
  const [turn, ...others] = inOneGo(
    remediesFor(plan, { setupId: 'single', itemId: 'stand', tolerance: LOOSE, ways: ['turns'] }),
  );
  expect(others).toEqual([]);
  expect(turn.words).toMatch(/^Its legs turned [\d.]+.degrees (anti)?clockwise clears it in A\.$/);
  const after = withRemedy(plan, turn);
  expect(verdictOf(after)).toBe('clear');
  // Three legs: no more than a sixth of a round, and here no more than to where the other one is known to be clear.
  expect(turn.cost).toMatchObject({ metres: 0, stops: 0 });
  expect(turn.cost.degrees).toBeLessThanOrEqual(40.2);
  const [was, is] = [plan, after].map(({ gear }) => gear[0]);
  expect(is).toEqual({ ...was, headingDegrees: 'headingDegrees' in is ? is.headingDegrees : null });
});
