import { createStore } from 'zustand/vanilla';
import type { Spot } from '../core/plan/schema/numbers';

/** Where a camera might stand, and from where it would go there. */
export interface ProposedPlace {
  readonly from: Readonly<Spot>;
  readonly to: Readonly<Spot>;
  readonly headingDegrees: number;
  readonly letter: string;
}

/** Where a piece of gear might stand, and from where it would go there. */
export interface ProposedStand {
  readonly from: Readonly<Spot>;
  readonly to: Readonly<Spot>;
  readonly label: string;
  /** What is done to it there, where it is not gone so far: `40 cm lower`. */
  readonly words?: string;
}

/**
 * What is proposed, for the drawing: a camera's place, null while none is, places of gear, and the things that are not as
 * the plan has them, by id.
 */
export const proposalStore = createStore<{
  readonly place: ProposedPlace | null;
  readonly stands: readonly ProposedStand[];
  readonly changed: readonly string[];
}>()(() => ({ place: null, stands: [], changed: [] }));
