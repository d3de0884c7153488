import { createStore } from 'zustand/vanilla';
import type { DarkFrom } from '../../core/night/dusk/darkFrom';
import type { Plan } from '../../core/plan/schema/plan';
import type { NightAnswer, SuggestAnswer, SuggestProgress } from './nightApi';

/** An order that was found for a plan. */
export interface Suggestion extends SuggestAnswer {
  readonly plan: Plan;
  /** Whether somebody stopped the search before its end. */
  readonly isStopped: boolean;
}

/** From when things are lost in the dark, and of which plan that is. */
interface Dark {
  readonly plan: Plan;
  readonly found: readonly DarkFrom[];
}

interface NightState {
  /** The last answer, perhaps still of a moment ago, and the plan that it is about. */
  readonly answer: (NightAnswer & { readonly plan: Plan }) | null;
  /** How far the search for an order is; null where none runs. */
  readonly seeking: (SuggestProgress & { readonly plan: Plan }) | null;
  readonly suggestion: Suggestion | null;
  /** How far the look for the dark is, 0..1; null where none runs. */
  readonly darkening: number | null;
  readonly dark: Dark | null;
  /** Setups as a hand has them while it drags one, by their ids; null while none is dragged. */
  readonly draftOrder: readonly string[] | null;
  /** Why nothing could be worked out, a sentence. */
  readonly trouble: string | null;
}

/** The night as it is worked out in its worker, and what is looked for. */
export const nightStore = createStore<NightState>()(() => ({
  answer: null,
  seeking: null,
  suggestion: null,
  darkening: null,
  dark: null,
  draftOrder: null,
  trouble: null,
}));
