import { createStore } from 'zustand/vanilla';
import type { Caught } from './snapTime';
import type { Thing } from './things';

/** Over what the clock runs, over and over, while the blocking is looked at. */
export type Loop =
  | { readonly type: 'whole' }
  | { readonly type: 'setup' }
  | { readonly type: 'beats'; readonly from: string; readonly to: string };

/** What a hand has hold of: where on the clock, what it caught on, and what is said of it. */
export interface Held {
  readonly seconds: number;
  readonly caught: Caught | null;
  readonly words: string;
}

/** How the blocking is looked at in this sitting; none of it is in the plan. */
export interface BlockingState {
  readonly chosen: Thing | null;
  /** Whether the fields of what is chosen stand beside the timeline. */
  readonly panel: boolean;
  readonly loop: Loop;
  /** Whether a hand catches on beats and whole seconds. */
  readonly snaps: boolean;
  /** Whether a beat that is moved takes along all that comes after it. */
  readonly ripples: boolean;
  /** Whether steady lamps have lanes too. */
  readonly allLamps: boolean;
  /** Pixels for a second; null where all of the action fits. */
  readonly pixelsPerSecond: number | null;
  /** The beat or performer whose name is being typed in its place. */
  readonly naming: string | null;
  readonly held: Held | null;
  /** The performer whose move is shown before it is done. */
  readonly proposing: string | null;
}

export const blockingStore = createStore<BlockingState>()(() => ({
  chosen: null,
  panel: false,
  loop: { type: 'whole' },
  snaps: true,
  ripples: false,
  allLamps: false,
  pixelsPerSecond: null,
  naming: null,
  held: null,
  proposing: null,
}));
