import { createStore } from 'zustand/vanilla';
import type { Caution } from '../../core/cautions/types';
import type { Plan } from '../../core/plan/schema/plan';

/** What is known about cautions, and which of them is looked at. */
interface CautionsState {
  /** Of the plan as it was a moment ago; null until they are first known. */
  readonly found: readonly Caution[] | null;
  /** The plan that `found` is about. */
  readonly forPlan: Plan | null;
  /** Whether somebody looks at them: then they follow a drag, and are marked on the roof. */
  readonly shown: boolean;
  /** The key of the one that is opened; null while none is. */
  readonly openKey: string | null;
  /** Why none could be looked for, as a sentence. */
  readonly trouble: string | null;
}

export const cautionsStore = createStore<CautionsState>()(() => ({
  found: null,
  forPlan: null,
  shown: false,
  openKey: null,
  trouble: null,
}));

/** The caution that somebody looks at now; null while nobody does. */
export function openedCaution(): Caution | null {
  const { shown, found, openKey } = cautionsStore.getState();
  return (shown && found?.find(({ id }) => id === openKey)) || null;
}

/** Whether a caution waits for somebody: it breaks a figure or is to be minded, and nobody has noted it. */
export const isUnnoted = ({ id, standing }: Caution, noted: ReadonlySet<string>): boolean =>
  standing !== 'holds' && !noted.has(id);

/** Keys of the cautions that a plan has notes on. */
export const notedKeys = ({ cautions }: Pick<Plan, 'cautions'>): ReadonlySet<string> =>
  new Set((cautions?.notes ?? []).map(({ key }) => key));
