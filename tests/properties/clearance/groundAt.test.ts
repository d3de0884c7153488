import { expect, it } from 'vitest';
import { clearGround } from '../../../src/core/clearance/ground/clearGround';
import { groundAt } from '../../../src/core/clearance/ground/groundAt';
import { GROUND_STATES, type GroundQuestion } from '../../../src/core/clearance/ground/types';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { crowdedPlan, randomPlan } from '../../plans/crowd';
import { drawFrom } from '../../plans/draw';
import { cases } from '../../thorough';
import { smallRoof } from '../../unit/smallRoof';
import { movingPlan } from '../sight/movingPlans';

const PLANS: readonly (readonly [string, () => Plan, GroundQuestion['of']])[] = [
  ['the small roof', smallRoof, { heightMetres: 2.4 }],
  ['a camera that moves', () => movingPlan(3), { heightMetres: 1.8 }],
  ['many setups', () => crowdedPlan(30, 3, 7), { lowMetres: 2.2, highMetres: 2.8 }],
  ['a random roof', () => randomPlan(5), { heightMetres: 3 }],
  ['another that moves', () => movingPlan(2), { lowMetres: 2.6, highMetres: 3 }],
];

it.each(PLANS.slice(0, cases(PLANS.length)))(
  'a square read by itself is what it is on the map, from the same moment on: %s',
  (_, made, of) => {
    const plan = made();
    const question = { setupIds: plan.setups.map(({ id }) => id), of };
    const answer = clearGround(plan, question);
    if ('why' in answer) throw new Error(answer.why);
    const { states, worstSetup, worstSeconds, columns, corner, stepMetres } = answer.ground;
    const draw = drawFrom(11);
    // Some of each state, so that the rare ones are read too.
    const squares = GROUND_STATES.slice(1).flatMap((_state, k) => {
      const all = [...states.keys()].filter((square) => states[square] === k + 1);
      return all.length === 0 ? [] : Array.from({ length: 6 }, () => draw.pick(all));
    });
    for (const square of squares) {
      const read = groundAt(plan, question, [
        corner[0] + ((square % columns) + draw.between(0.1, 0.9)) * stepMetres,
        corner[1] + (Math.floor(square / columns) + draw.between(0.1, 0.9)) * stepMetres,
      ]);
      if (read === null || typeof read === 'string') throw new Error(`square ${square}: ${read}`);
      expect(read.state, `square ${square}`).toBe(GROUND_STATES[states[square]]);
      const worst = read.setups.find(({ state }) => state === read.state);
      if (read.state === 'clear') {
        expect(read.setups.every(({ state, spans }) => state === 'clear' && spans.length === 0)).toBe(true);
        continue;
      }
      expect(worst?.setupId).toBe(question.setupIds[worstSetup[square]]);
      expect(worst?.spans[0]?.[0]).toBe(worstSeconds[square]);
      for (const { spans } of read.setups) {
        for (const [k, [from, to]] of spans.entries()) {
          expect(to).toBeGreaterThanOrEqual(from);
          if (k > 0) expect(from).toBeGreaterThan(spans[k - 1][1]);
        }
      }
    }
    expect(groundAt(plan, question, [1e4, 0])).toBeNull();
  },
);
