import type { Vec3 } from '../../form/build/vector';
import type { Spot } from '../../plan/schema/numbers';
import type { GroundSquares } from '../ground/types';
import type { LampRole, RoleRange } from './roles';

/** What a square is to a lamp with a role, by its code in `UsefulGround.states`. */
export const USEFUL_STATES = [
  'no deck',
  'not clear',
  'no room',
  'out of its role',
  'too weak',
  'too strong',
  'outshone',
  'useful',
] as const;
export type UsefulState = (typeof USEFUL_STATES)[number];

/** What useful ground is asked for. */
export interface UsefulQuestion {
  readonly lampId: string;
  readonly performerId: string;
  /** Through which setup the level counts, and as it plays the performer. */
  readonly setupId: string;
  /** On the action's clock. */
  readonly seconds: number;
  readonly role: LampRole;
  readonly range: RoleRange;
  /** The face's own side that it has to come from. */
  readonly side: 'left' | 'right' | 'either';
  /** The level that is wanted, over what the set stop asks for, and how far from there is still well; stops. */
  readonly stops: number;
  readonly toleranceStops: number;
  /** Whether the dimmer may be set for it. */
  readonly mayDim: boolean;
  /** Of which setups it has to stay clear. */
  readonly clearOf: readonly string[];
  /** Side of a square, metres; 0.25 where left out. */
  readonly stepMetres?: number;
}

/** Where a lamp can go and do what it should. All lists are row by row from the corner. */
export interface UsefulGround extends GroundSquares {
  readonly question: UsefulQuestion;
  /** What the lamp would be aimed at: between the eyes; and where its foot is now. */
  readonly aim: Vec3;
  readonly foot: Spot;
  /** Places in `USEFUL_STATES`. */
  readonly states: Uint8Array;
  /** Whether its dim is set for it; else it stays, and cues may play. */
  readonly setsDim: boolean;
  /** The dim that it has its level with at that moment; NaN where it is not useful. */
  readonly dims: Float64Array;
  /** The level that it has then, over what the set stop asks for; NaN where it was not asked. */
  readonly stops: Float64Array;
}

/** The ground, or a sentence that says why there is no answer. */
export type UsefulAnswer = { readonly useful: UsefulGround } | { readonly why: string };
