import { expect, it } from 'vitest';
import { clearGround } from '../../../src/core/clearance/ground/clearGround';
import { GROUND_STATES } from '../../../src/core/clearance/ground/types';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupReport } from '../../../src/core/report/setupReport';
import { randomPlan } from '../../plans/crowd';
import { drawFrom } from '../../plans/draw';
import { ALLOWED } from '../../plans/groundTrial';
import { cases } from '../../thorough';
import { movingPlan } from '../sight/movingPlans';

const PLANS: readonly (readonly [string, () => Plan, number, number])[] = [
  ['a camera that moves', () => movingPlan(3), 2.5, 3],
  ['a random roof', () => randomPlan(4), 1.6, 1.9],
  ['another that moves', () => movingPlan(5), 0.3, 2.1],
  ['another roof', () => randomPlan(9), 3.5, 4],
];

it.each(PLANS.slice(0, cases(PLANS.length)))(
  'a box that hangs in the air is never worse in the report than its square is for what hangs there: %s',
  (_, made, lowMetres, highMetres) => {
    const plan = made();
    const answer = clearGround(plan, {
      setupIds: [plan.setups[0].id],
      of: { lowMetres, highMetres, acrossMetres: 0.5 },
    });
    if ('why' in answer) throw new Error(answer.why);
    const { states, columns, corner, stepMetres, deckMetres } = answer.ground;
    const draw = drawFrom(7);
    const deck = [...states.keys()].filter((square) => states[square] > 0);
    const boxes = Array.from({ length: 14 }, (): { square: number; piece: Piece } => {
      const square = draw.pick(deck);
      return {
        square,
        piece: {
          id: `hung-${square}`,
          label: 'Hung',
          kind: 'box',
          at: [
            corner[0] + ((square % columns) + draw.between(0.05, 0.95)) * stepMetres,
            deckMetres[square] + lowMetres,
            corner[1] + (Math.floor(square / columns) + draw.between(0.05, 0.95)) * stepMetres,
          ],
          headingDegrees: draw.between(0, 360),
          size: [0.34, highMetres - lowMetres, 0.34],
          material: 'timber',
        },
      };
    });
    const hung: Plan = { ...plan, pieces: [...plan.pieces, ...boxes.map(({ piece }) => piece)] };
    const { items } = setupReport(hung, hung.setups[0]);
    for (const { square, piece } of boxes) {
      const verdict = items.find(({ id }) => id === piece.id)?.verdict;
      expect(ALLOWED[GROUND_STATES[states[square]]], `square ${square}`).toContain(verdict);
    }
  },
);
