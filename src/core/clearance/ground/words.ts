import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { setupLetter } from '../../plan/setupLetter';
import { type ClearGround, GROUND_STATES, type GroundState } from './types';

/** How many squares of the deck are in a state. */
const squaresThat = ({ states }: ClearGround, state: GroundState): number => {
  const code = GROUND_STATES.indexOf(state);
  return states.reduce((sum, each) => (each === code ? sum + 1 : sum), 0);
};

/** A share in words: whole per cents, and what is neither none nor all never as one of these. */
function percent(some: number, all: number): string {
  if (some === 0 || some === all) return `${some === 0 ? 0 : 100} %`;
  const whole = Math.min(99, Math.round((100 * some) / all));
  return whole === 0 ? 'Less than 1 %' : `${whole} %`;
}

/** Clear ground in a sentence, as: 38 % of Deck stays clear of A, C for a stand of 2.4 m. */
export function groundSentence(plan: Plan, ground: ClearGround): string {
  const decks = plan.pieces.filter(({ kind }) => kind === 'deck');
  const on = decks.length === 1 ? named(decks[0].label) : 'the decks';
  const setups = ground.setupIds.map((id) => setupLetter(plan.setups.findIndex((setup) => setup.id === id)));
  const all = ground.states.length - squaresThat(ground, 'no deck');
  const clear = squaresThat(ground, 'clear');
  return `${percent(clear, all)} of ${on} stays clear of ${setups.join(', ')} for ${ground.thing}.`;
}
