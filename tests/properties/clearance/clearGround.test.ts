import { describe, expect, it } from 'vitest';
import { clearGround } from '../../../src/core/clearance/ground/clearGround';
import { GROUND_STATES } from '../../../src/core/clearance/ground/types';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { setupReport } from '../../../src/core/report/setupReport';
import { randomPlan } from '../../plans/crowd';
import { drawFrom } from '../../plans/draw';
import { ALLOWED, groundOf, tryGround } from '../../plans/groundTrial';
import { cases } from '../../thorough';
import { smallRoof } from '../../unit/smallRoof';
import { movingPlan } from '../sight/movingPlans';

const SHOWING = GROUND_STATES.indexOf('showing');

describe('a stand in the report is never worse than clear ground says of its square', () => {
  it.each([3, 2, 5, 8].slice(0, cases(4)))('while the camera moves, seed %i', (seed) => {
    const height = 1.3 + (seed % 5) * 0.5;
    for (const { square, state, verdict } of tryGround(movingPlan(seed), height, 12, seed))
      expect(ALLOWED[state], `square ${square} is ${state}`).toContain(verdict);
  });

  it.each([4, 9, 12, 31].slice(0, cases(4)))('through any lens, seed %i', (seed) => {
    for (const { square, state, verdict } of tryGround(randomPlan(seed), 2.1, 20, seed))
      expect(ALLOWED[state], `square ${square} is ${state}`).toContain(verdict);
  });

  it.each([1, 2, 3, 4, 5, 6].slice(0, cases(6)))('nor is an item with what it carries, place %i', (seed) => {
    const plan = smallRoof();
    const answer = clearGround(plan, { setupIds: ['single'], of: { itemId: 'head-in' } });
    if ('why' in answer) throw new Error(answer.why);
    const { columns, corner, stepMetres, states } = answer.ground;
    const draw = drawFrom(seed);
    const [column, row] = [draw.whole(1, columns - 2), draw.whole(1, answer.ground.rows - 2)];
    const to: [number, number] = [
      corner[0] + (column + 0.5) * stepMetres,
      corner[1] + (row + 0.5) * stepMetres,
    ];
    const moved = moveItem(plan, { id: 'stand-in', to });
    const { items } = setupReport(moved, moved.setups[1]);
    for (const { id, verdict } of items.filter((item) => item.id === 'stand-in' || item.id === 'head-in'))
      expect(ALLOWED[GROUND_STATES[states[row * columns + column]]], `${id} at ${to}`).toContain(verdict);
  });
});

it('what is taller is nowhere better off, and the limit says from which height on a square is not clear', () => {
  const plan = movingPlan(4);
  const [low, high] = [groundOf(plan, 1.4), groundOf(plan, 3.4)];
  for (const square of low.states.keys()) {
    expect(high.states[square]).toBeGreaterThanOrEqual(low.states[square]);
    expect(high.limitMetres[square]).toBe(low.limitMetres[square]);
    if (low.states[square] === 1) expect(low.limitMetres[square]).toBeGreaterThanOrEqual(1.3);
  }
});

it('of several setups the worst counts, and is named with its first moment', () => {
  const plan = smallRoof();
  const ids = plan.setups.map(({ id }) => id);
  const of = { heightMetres: 2.4 };
  const grounds = ids.map((id) => clearGround(plan, { setupIds: [id], of, stepMetres: 0.5 }));
  const all = clearGround(plan, { setupIds: ids, of, stepMetres: 0.5 });
  if ('why' in all) throw new Error(all.why);
  for (const square of all.ground.states.keys()) {
    const each = grounds.map((answer) => ('ground' in answer ? answer.ground.states[square] : Number.NaN));
    expect(all.ground.states[square]).toBe(Math.max(...each));
    if (all.ground.states[square] <= 1) expect(all.ground.worstSetup[square]).toBe(-1);
    else expect(each[all.ground.worstSetup[square]]).toBe(all.ground.states[square]);
    if (all.ground.states[square] === SHOWING) expect(all.ground.worstSeconds[square]).not.toBeNaN();
  }
});
