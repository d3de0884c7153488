import { clearGround } from '../../src/core/clearance/ground/clearGround';
import { type ClearGround, GROUND_STATES, type GroundState } from '../../src/core/clearance/ground/types';
import type { Plan } from '../../src/core/plan/schema/plan';
import { setupReport } from '../../src/core/report/setupReport';
import type { Verdict } from '../../src/core/report/types';
import { drawFrom } from './draw';
import { standsOn, type TriedPlace, triedId } from './standOn';

/** A square that was tried: what clear ground says of it, and what the report says of a stand that stands there. */
export interface Trial {
  readonly square: number;
  readonly state: GroundState;
  readonly verdict: Verdict;
}

/** The verdicts that a state allows: a thing is never worse than its square. */
export const ALLOWED: Readonly<Record<GroundState, readonly Verdict[]>> = {
  'no deck': [],
  clear: ['clear'],
  close: ['clear', 'close'],
  covered: ['clear', 'close', 'covered'],
  mirrored: ['clear', 'close', 'covered', 'mirrored'],
  showing: ['clear', 'close', 'covered', 'mirrored', 'showing'],
};

/** The ground of a plan's first setup for stands of a height. */
export function groundOf(plan: Plan, heightMetres: number): ClearGround {
  const answer = clearGround(plan, { setupIds: [plan.setups[0].id], of: { heightMetres } });
  if ('why' in answer) throw new Error(answer.why);
  return answer.ground;
}

/** Tries stands on random squares of the deck, turned at random; anywhere in the square, or in its middle. None without a deck. */
export function tryGround(
  plan: Plan,
  heightMetres: number,
  count: number,
  seed: number,
  isAnywhere = true,
): readonly Trial[] {
  if (!plan.pieces.some(({ kind }) => kind === 'deck')) return [];
  const ground = groundOf(plan, heightMetres);
  const draw = drawFrom(seed);
  const deck = [...ground.states.keys()].filter((square) => ground.states[square] > 0);
  if (deck.length === 0) return [];
  const places = Array.from({ length: count }, (): TriedPlace => {
    const off = (): number => (isAnywhere ? draw.between(-1, 1) : 0);
    return { square: draw.pick(deck), headingDegrees: draw.between(0, 360), off: [off(), off()] };
  });
  const tried = standsOn(plan, ground, heightMetres, places);
  const { items } = setupReport(tried, tried.setups[0]);
  return places.map(({ square }, k) => {
    const item = items.find(({ id }) => id === triedId(k));
    if (!item) throw new Error(`no report of ${triedId(k)}`);
    return { square, state: GROUND_STATES[ground.states[square]], verdict: item.verdict };
  });
}
