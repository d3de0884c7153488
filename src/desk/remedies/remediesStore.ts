import { createStore } from 'zustand/vanilla';
import type { Remedy, Tolerance } from '../../core/clearance/remedies/types';
import type { Plan } from '../../core/plan/schema/plan';

/** A finding: one item in one setup. */
export interface FindingKey {
  readonly setupId: string;
  readonly itemId: string;
}

/** Whether a finding is this one. */
export const isFinding = (finding: FindingKey | null, { setupId, itemId }: FindingKey): boolean =>
  finding?.setupId === setupId && finding.itemId === itemId;

export const keyOfFinding = ({ setupId, itemId }: FindingKey): string => `${setupId} ${itemId}`;

/** What was found out about remedies. */
export interface RemediesState {
  /** The finding that is opened; null while none is. */
  readonly open: FindingKey | null;
  /** What `found` is about: a committed plan, and how far lamps may be changed. */
  readonly forPlan: Plan | null;
  readonly tolerance: Tolerance | null;
  /** Remedies by finding, least disturbing first; none for a finding that was looked into and has none. */
  readonly found: ReadonlyMap<string, readonly Remedy[]>;
  /** The done share of the search for the open finding, 0..1; null while none runs. */
  readonly share: number | null;
  /** True after a person stopped the search. */
  readonly stopped: boolean;
  /** Why nothing could be looked for, as a sentence. */
  readonly trouble: string | null;
}

export const remediesStore = createStore<RemediesState>()(() => ({
  open: null,
  forPlan: null,
  tolerance: null,
  found: new Map(),
  share: null,
  stopped: false,
  trouble: null,
}));

/** Whether what was found is about a plan, and for lamps that may be changed so far. */
export const isAbout = (
  { forPlan, tolerance }: Pick<RemediesState, 'forPlan' | 'tolerance'>,
  plan: Plan,
  { levelStops, angleDegrees }: Tolerance,
): boolean =>
  forPlan === plan && tolerance?.levelStops === levelStops && tolerance.angleDegrees === angleDegrees;

/** Opens a finding, or closes the one that is open. */
export const openFinding = (open: FindingKey | null): void =>
  remediesStore.setState({ open, stopped: false });
