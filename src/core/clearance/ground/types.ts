import type { Spot } from '../../plan/schema/numbers';

/** What a square of the deck is to a thing that would stand there, by its code in `ClearGround.states`. */
export const GROUND_STATES = ['no deck', 'clear', 'close', 'covered', 'mirrored', 'showing'] as const;
/** One of them. */
export type GroundState = (typeof GROUND_STATES)[number];

/**
 * What is to be somewhere: a stand of a height, turned any way; an item of the plan as it is turned now; or what hangs
 * from an arm with nothing below it, turned any way, so far across (0.6 m where left out) between two heights.
 */
export type GroundThing =
  | { readonly heightMetres: number }
  | { readonly itemId: string }
  | { readonly lowMetres: number; readonly highMetres: number; readonly acrossMetres?: number };

/** What clear ground is asked for. */
export interface GroundQuestion {
  /** For which setups it has to stay clear, over their whole spans. */
  readonly setupIds: readonly string[];
  readonly of: GroundThing;
  /** Side of a square, metres; 0.25 where left out. */
  readonly stepMetres?: number;
}

/** The decks of a plan in squares. */
export interface GroundSquares {
  readonly stepMetres: number;
  /** The corner of the first square, [x, z]. */
  readonly corner: Spot;
  readonly columns: number;
  readonly rows: number;
  /** Height of the deck under the middle of each square, row by row from the corner; NaN where there is none. */
  readonly deckMetres: Float64Array;
}

/** Where a thing may stand. All lists are row by row from the corner. */
export interface ClearGround extends GroundSquares {
  /** What it was asked for, in words: `a stand of 2.4 m`, or the item's label. */
  readonly thing: string;
  readonly setupIds: readonly string[];
  /**
   * Places in `GROUND_STATES`: the worst for any of the setups, at any of their frames, wherever in the square the
   * thing's foot is.
   */
  readonly states: Uint8Array;
  /** Which of `setupIds` sees it there, or comes near it: the first of those that are worst; −1 where it is clear. */
  readonly worstSetup: Int16Array;
  /** When, on the action's clock: the first such frame; NaN where it is clear. */
  readonly worstSeconds: Float64Array;
  /**
   * How tall something thin may be there, over the deck, and stay out of every frame and every mirror in it, metres:
   * what reaches 50 mm to each side. Infinity where nothing limits it; NaN where there is no deck.
   */
  readonly limitMetres: Float64Array;
}

/** The ground, or a sentence that says why there is no answer. */
export type GroundAnswer = { readonly ground: ClearGround } | { readonly why: string };
