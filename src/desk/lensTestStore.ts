import { createStore } from 'zustand/vanilla';
import type { LensTrial } from '../core/report/lensTest';

/** What the lens test has found out. */
export interface LensTestState {
  /** What the trials were made on; see LensTester. */
  readonly basis: readonly unknown[] | null;
  /** By the id of the way to try a lens; those that were not tried yet are missing. */
  readonly trials: ReadonlyMap<string, LensTrial>;
  /** What is being tried: how many are done, of how many, and how far this one is, 0..1. */
  readonly running: {
    readonly tryId: string;
    readonly done: number;
    readonly of: number;
    readonly share: number;
  } | null;
  /** True after a person stopped it. */
  readonly stopped: boolean;
  /** Why it failed, as a sentence. */
  readonly trouble: string | null;
  /** Whom each setup is to hold, by setup id, where somebody said so. */
  readonly wanted: ReadonlyMap<string, readonly string[]>;
  /** Along the whole move, or at the instant of the clock. */
  readonly along: 'whole move' | 'this instant';
  readonly want: (setupId: string, performerIds: readonly string[]) => void;
}

export const lensTestStore = createStore<LensTestState>()((set) => ({
  basis: null,
  trials: new Map(),
  running: null,
  stopped: false,
  trouble: null,
  wanted: new Map(),
  along: 'whole move',
  want: (setupId, performerIds) =>
    set(({ wanted }) => ({ wanted: new Map(wanted).set(setupId, performerIds) })),
}));
