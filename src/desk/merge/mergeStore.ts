import { createStore } from 'zustand/vanilla';
import type { Choices } from '../../core/plan/merge/differences';
import type { Plan } from '../../core/plan/schema/plan';
import type { Beginning } from './beginnings';

/** A second copy of the open plan, beside it. */
interface Beside {
  readonly planId: string;
  readonly theirs: Plan;
  /** Where it came from: the name of a file, or `a link`. */
  readonly from: string;
  /** What both may have begun with. */
  readonly beginnings: readonly Beginning[];
  /** Which of them counts; null while none is known. */
  readonly base: Beginning | null;
  /** What somebody chose, by the keys of differences; the rest is as suggested. */
  readonly chosen: Choices;
}

interface MergeState {
  /** Whether a copy is asked for, or one is compared. */
  readonly open: boolean;
  readonly beside: Beside | null;
  /** Why the last file or link could not be compared, a sentence. */
  readonly trouble: string | null;
}

const CLOSED: MergeState = { open: false, beside: null, trouble: null };

/** What is compared with the open plan, and what is chosen of it. */
export const mergeStore = createStore<MergeState>()(() => CLOSED);

/** Asks for a copy to compare the open plan with. */
export const askForCopy = (): void => mergeStore.setState({ ...CLOSED, open: true });

/** Drops the comparison; the plan stays as it is. */
export const leaveMerge = (): void => mergeStore.setState(CLOSED);
