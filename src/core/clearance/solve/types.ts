import type { Spot } from '../../plan/schema/numbers';
import type { SetupReport } from '../../report/types';
import type { RemedyEdit } from '../remedies/remedyEdits';
import type { Tolerance } from '../remedies/types';

/** What is to be solved: a plan's night, by moving some of its things. */
export interface SolveQuestion {
  /** Ids of what may move, with all that goes along; `movableIds` where left out. */
  readonly movable?: readonly string[];
  readonly tolerance: Tolerance;
  /** Reports of this very plan that are there already; the others are read first. */
  readonly seen?: readonly SetupReport[];
}

/** What becomes of one thing. */
export interface SolvedItem {
  readonly itemId: string;
  readonly label: string;
  /** As: `1.2 m towards the stair house, 0.4 m lower`. */
  readonly words: string;
  /** Where it stood and stands, [x, z]; the same where it stays on its place. */
  readonly from: Spot;
  readonly to: Spot;
  /** How far it goes, over the deck, up and down. */
  readonly metres: number;
  /** How far it, or its arm, turns. */
  readonly degrees: number;
}

/** A changed plan: `withRemedy(plan, solution)` makes it. */
export interface Solution {
  readonly edits: readonly RemedyEdit[];
  /** What changes, in the plan's order. */
  readonly items: readonly SolvedItem[];
  /** How far all of it goes together. */
  readonly metres: number;
  /** How far all of it turns together. */
  readonly degrees: number;
  /** What is minimised: metres, with so much of a turn counted as a metre as among remedies. */
  readonly change: number;
}

/** How far a search is. */
export interface SolveProgress {
  /** 0..1. */
  readonly share: number;
  /** Places and shapes that were tried so far. */
  readonly tried: number;
  /** How many setups the best so far clears, of how many. */
  readonly cleared: number;
  readonly setups: number;
  /** The best so far; null while nothing is found. */
  readonly best: Solution | null;
}

/** Why something cannot be cleared. */
export interface Obstacle {
  readonly itemId: string;
  readonly label: string;
  /** The fewest setups that leave it no place together, in the plan's order; empty where it is not for a camera. */
  readonly setupIds: readonly string[];
  /** The shortest piece found of one setup's span without which there is a place; null where no one piece does it. */
  readonly trim: {
    readonly setupId: string;
    readonly end: 'first' | 'last';
    readonly seconds: number;
  } | null;
  /** As: `B and F together leave no clear ground for Lamp stand 1; without the last 1.0 s of B there is.` */
  readonly sentence: string;
}

/** What a search comes to. */
export interface SolveAnswer {
  /** `clear`: nothing to do; `refused`: what was asked cannot be searched. */
  readonly outcome: 'solved' | 'clear' | 'none' | 'refused';
  /** One or a few sentences that say it. */
  readonly sentence: string;
  /** What solves it; where none does, what clears most of it; null where nothing is to be done, or can be. */
  readonly best: Solution | null;
  readonly obstacles: readonly Obstacle[];
  readonly tried: number;
  /** How many setups `best` clears, or the plan as it is, of how many. */
  readonly cleared: number;
  readonly setups: number;
}

/** A search that can be stopped between its steps: `solveSteps(plan, question)`. */
export type Solving = Generator<SolveProgress, SolveAnswer, void>;
