import type { Spot } from '../../plan/schema/numbers';
import type { Wind } from './compassWords';

/** What a tape is held to: a corner that one hooks it on, the middle of a post, or a corner of the deck. */
export type Hold = 'corner' | 'post' | 'deck';

/** A place that stays where it is, from which a tape is drawn. */
export interface Anchor {
  /** In words that no other anchor of the plan has: `the stair house’s south-east corner`. */
  readonly label: string;
  readonly at: Spot;
  /** Heights of the floors on which it can be reached, metres. */
  readonly levels: readonly number[];
  readonly pieceId: string;
  readonly hold: Hold;
  /** How far from it the tape comes out of what it is, metres: half a post. */
  readonly withinMetres: number;
  /** How much tape would rather be drawn than use this one, metres: posts are round, decks have soft edges, boxes move. */
  readonly reluctance: number;
}

/** An anchor before all of the plan are told apart. */
export interface RawAnchor extends Omit<Anchor, 'label'> {
  /** Whose it is, in words: `the stair house`. */
  readonly owner: string;
  readonly wind: Wind;
  /** On which face of it, where that tells it from another. */
  readonly face?: Wind;
  /** What it is of it: `corner`, `end`, `inner corner`; a post by itself has none and no wind is said. */
  readonly what: string;
}

/** Floors so near to each other in height are measured on as one, metres. Source: common practice, no source */
const LEVEL_METRES = 0.3;

/** Whether two floors are measured on as one, heights in metres. */
export const isOnLevel = (one: number, other: number): boolean => Math.abs(one - other) <= LEVEL_METRES;
