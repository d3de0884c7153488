import type { Verdict } from '../../report/types';
import type { RemedyEdit } from './remedyEdits';

/** Ways to be rid of a finding, in the order in which they are looked for. */
export const REMEDY_KINDS = [
  'move',
  'lower',
  'raise',
  'swing the arm',
  'turn',
  'cheat in front',
  'put in front',
  'pan',
  'another lens',
  'nudge the camera',
  'shorten the move',
  'dry the floor',
  'flag',
  'black',
  'let it show',
] as const;
export type RemedyKind = (typeof REMEDY_KINDS)[number];

/** What the verdict of one item in one setup becomes. */
export interface VerdictChange {
  readonly setupId: string;
  readonly itemId: string;
  readonly before: Verdict;
  readonly after: Verdict;
}

/** What a remedy disturbs; 0 for what stays as it is. */
export interface RemedyCost {
  /** How far things or the camera go, or how much shorter its move gets. */
  readonly metres: number;
  /** What the lamp loses on its subject, negative where it gains. */
  readonly stops: number;
  /** How far the light, a thing or the camera turns. */
  readonly degrees: number;
  /** What it changes in other setups, or of other items that should keep out. */
  readonly otherSetups: readonly VerdictChange[];
}

/**
 * What a remedy rests on: geometry holds whatever the light; the dark holds as long as the light stays; likeness rests
 * on what an eye takes the thing for.
 */
export type ReliesOn = 'geometry' | 'dark' | 'likeness';

/** A change of the plan that takes care of a finding, and was judged before it is offered. */
export interface Remedy {
  readonly kind: RemedyKind;
  /** One or two sentences. */
  readonly words: string;
  /** Edits in their order; `withRemedy` makes the plan of them. Plain data, so that a worker can hand it over. */
  readonly edits: readonly RemedyEdit[];
  readonly cost: RemedyCost;
  /** The item's verdict in the setup once it is done. */
  readonly after: Verdict;
  readonly relies: ReliesOn;
  readonly proved: true;
  /** Whether somebody has to say why first: see `withReason`. */
  readonly asksReason?: true;
}

/** So much of a turn weighs as much as a metre; an estimate, no source. */
export const DEGREES_A_METRE = 20;

/** How far a lamp may be changed for a remedy. */
export interface Tolerance {
  /** On its subject, either way. */
  readonly levelStops: number;
  /** Of its light on its subject. */
  readonly angleDegrees: number;
}
