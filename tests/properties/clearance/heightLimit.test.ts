import { expect, it } from 'vitest';
import { clearGround } from '../../../src/core/clearance/ground/clearGround';
import { type HeightLimits, heightLimitSteps } from '../../../src/core/clearance/ground/heightLimit';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { inOneGo } from '../../../src/core/units/steps';
import { crowdedPlan, randomPlan } from '../../plans/crowd';
import { cases } from '../../thorough';
import { smallRoof } from '../../unit/smallRoof';
import { movingPlan } from '../sight/movingPlans';

const STEP = 0.5;
/** Some of each class of stand, lowest first. */
const HEIGHTS = [0.7, 1.1, 1.15, 1.7, 2.4, 2.45, 3, 3.15, 3.4, 3.5, 4.4, 6.5];

function limitsOf(plan: Plan): HeightLimits {
  const setupIds = plan.setups.map(({ id }) => id);
  const answer = inOneGo(heightLimitSteps(plan, { setupIds, stepMetres: STEP }));
  if ('why' in answer) throw new Error(answer.why);
  return answer.limits;
}

const dry = (plan: Plan): Plan => ({ ...plan, ground: { ...plan.ground, wetness: 'dry' } });

const PLANS: readonly (readonly [string, () => Plan])[] = [
  ['the small roof, dry', () => dry(smallRoof())],
  ['a camera that moves', () => movingPlan(3)],
  ['a random roof', () => randomPlan(5)],
  ['many setups', () => dry(crowdedPlan(30, 4, 7))],
  ['another that moves', () => movingPlan(8)],
  ['another roof', () => randomPlan(12)],
];

it.each(PLANS.slice(0, cases(PLANS.length)))(
  'every stand up to the limit of its square is clear by clear ground itself, and hardly any above it: %s',
  (_, made) => {
    const plan = made();
    const { limitMetres } = limitsOf(plan);
    const setupIds = plan.setups.map(({ id }) => id);
    let [clear, wasted, limited] = [0, 0, 0];
    const wasClear = limitMetres.map(() => 1);
    for (const heightMetres of HEIGHTS) {
      const answer = clearGround(plan, { setupIds, of: { heightMetres }, stepMetres: STEP });
      if ('why' in answer) throw new Error(answer.why);
      for (const [square, state] of answer.ground.states.entries()) {
        const limit = limitMetres[square];
        if (state === 0) expect(limit).toBeNaN();
        else if (heightMetres <= limit) expect(state, `square ${square}, ${heightMetres} m`).toBe(1);
        if (state !== 1) wasClear[square] = 0;
        // Shorter ones of another class may have wider legs: those count too.
        if (wasClear[square]) {
          clear += 1;
          // A hand's breadth under what would still be clear is the price of one outline for all columns.
          if (limit < heightMetres - 0.1) wasted += 1;
        } else if (state > 0) limited += 1;
      }
    }
    expect(clear + limited).toBeGreaterThan(0);
    expect(wasted / Math.max(1, clear)).toBeLessThan(0.04);
  },
);
