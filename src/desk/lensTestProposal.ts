import { createStore } from 'zustand/vanilla';
import type { Spot } from '../core/plan/schema/numbers';

/** Where a camera might stand, and from where it would go there. */
export interface ProposedPlace {
  readonly from: Readonly<Spot>;
  readonly to: Readonly<Spot>;
  readonly headingDegrees: number;
  readonly letter: string;
}

/** What the distance test proposes, for the drawing; null while nothing is. */
export const proposalStore = createStore<{ readonly place: ProposedPlace | null }>()(() => ({ place: null }));
