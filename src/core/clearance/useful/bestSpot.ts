import { carrierOf } from '../../plan/edits/anchorOf';
import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { hypot } from '../../units/steadyMath';
import { middleOf } from '../ground/squares';
import type { LampPlace } from './putLamp';
import { USEFUL_STATES, type UsefulGround } from './types';

const USEFUL = USEFUL_STATES.indexOf('useful');

/** The place that a lamp would be put, how far that is from where it stands, metres, and the level that it has there. */
export interface BestSpot extends LampPlace {
  readonly metres: number;
  /** The dim that it has that level with: by its cues where those play, and then not set. */
  readonly dimThen: number;
  /** Over what the set stop asks for. */
  readonly stops: number;
}

/**
 * The spot that is best for a lamp: of the middles of useful squares the one that it has to be moved least to. Null where
 * no square is useful.
 */
export function bestSpot(useful: UsefulGround): BestSpot | null {
  const { states, dims, setsDim, stops, foot, aim, question } = useful;
  let best: BestSpot | null = null;
  for (const [square, state] of states.entries()) {
    if (state !== USEFUL) continue;
    const to = middleOf(useful, square);
    const metres = hypot(to[0] - foot[0], to[1] - foot[1]);
    if (best && best.metres <= metres) continue;
    const dimThen = dims[square];
    const dim = setsDim ? dimThen : null;
    best = { lampId: question.lampId, to, aim, dim, dimThen, metres, stops: stops[square] };
  }
  return best;
}

/** Why a lamp cannot be put anywhere, as a sentence; null where it can. */
export function heldFast(plan: Plan, lampId: string): string | null {
  const ids = [lampId, carrierOf(plan, lampId)];
  const held = plan.gear.find(({ id, locked }) => locked && ids.includes(id));
  return held ? `${named(held.label)} is locked in its place: unlock it to put it elsewhere.` : null;
}
