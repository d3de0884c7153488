import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { formatArea, formatLength, type LengthSystem } from '../../units/lengths';
import { formatShare } from '../../units/shares';
import { formatStops } from '../../units/stops';
import type { BestSpot } from './bestSpot';
import type { LampRole } from './roles';
import { USEFUL_STATES, type UsefulGround, type UsefulState } from './types';

/** A role as it is said of a lamp: `the edge light of Vera`. */
const ROLE_WORDS: Readonly<Record<LampRole, string>> = {
  key: 'key',
  edge: 'edge light',
  back: 'backlight',
};

const labelOf = (plan: Plan, id: string): string =>
  named([...plan.gear, ...plan.cast].find((each) => each.id === id)?.label ?? id);

/** Why a square is none for a lamp. */
const WHY_NOT: Readonly<Record<Exclude<UsefulState, 'useful'>, string>> = {
  'no deck': 'beside the deck',
  'not clear': 'not clear of these setups',
  'no room': 'no room to stand',
  'out of its role': 'not from there, or not so far off',
  'too weak': 'too little light from there',
  'too strong': 'too much light from there',
  outshone: 'another lamp gives more on that side',
};

/** What a square is to the lamp, without a full stop: `backlight for Nuno at 12 %, +0.1 stops`. */
export function usefulWords(plan: Plan, useful: UsefulGround, square: number): string {
  const { question, states, dims, stops } = useful;
  const state = USEFUL_STATES[states[square]];
  if (state !== 'useful') return WHY_NOT[state];
  const level = formatStops(stops[square]);
  return `${ROLE_WORDS[question.role]} for ${labelOf(plan, question.performerId)} at ${formatShare(dims[square])}, ${level}`;
}

/** Where a lamp can go, in a sentence. */
export function usefulSentence(plan: Plan, useful: UsefulGround, lengths: LengthSystem): string {
  const { question, states, stepMetres } = useful;
  const lamp = labelOf(plan, question.lampId);
  const whom = labelOf(plan, question.performerId);
  const role = ROLE_WORDS[question.role];
  const squares = countOf(states, 'useful');
  if (squares > 0) {
    const area = formatArea(squares * stepMetres * stepMetres, lengths);
    return `${lamp} can be the ${role} of ${whom} from ${area} of the deck.`;
  }
  const nearly = (['not clear', 'too weak', 'too strong', 'outshone', 'no room'] as const)
    .map((state) => ({ state, count: countOf(states, state) }))
    .sort((a, b) => b.count - a.count)[0];
  const why = nearly.count === 0 ? 'the deck is not where it would have to be' : WHY_NOT[nearly.state];
  return `Nowhere on the deck can ${lamp} be the ${role} of ${whom}: ${why}.`;
}

const countOf = (states: Uint8Array, state: UsefulState): number => {
  const code = USEFUL_STATES.indexOf(state);
  return states.reduce((sum, each) => sum + (each === code ? 1 : 0), 0);
};

/** What the best spot is, in a sentence: the least move, how far, with which dim. */
export function bestSentence({ metres, dimThen, stops }: BestSpot, lengths: LengthSystem): string {
  return `The best spot is the least move: ${formatLength(metres, lengths)}, then at ${formatShare(dimThen)} it gives ${formatStops(stops)} from the set stop.`;
}
