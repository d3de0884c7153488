import { createStore } from 'zustand/vanilla';
import type { Plan } from '../../core/plan/schema/plan';
import type { LinkAnswer } from './shareApi';

/** A link that was made, and of what. */
export interface MadeLink extends LinkAnswer {
  readonly plan: Plan;
  readonly planId: string;
}

interface ShareState {
  /** The last link; of another plan than the open one it is nobody's business any more. */
  readonly made: MadeLink | null;
  readonly making: boolean;
  /** Whether the last link went to the clipboard; null until that is known. */
  readonly copied: boolean | null;
  /** Why there is no link, a sentence, and of which plan. */
  readonly trouble: { readonly planId: string; readonly sentence: string } | null;
}

/** The link of the plan for the crew. */
export const shareStore = createStore<ShareState>()(() => ({
  made: null,
  making: false,
  copied: null,
  trouble: null,
}));
