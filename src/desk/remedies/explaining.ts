import { createStore } from 'zustand/vanilla';
import type { explain } from '../../core/clearance/explain/explain';
import type { Explanation } from '../../core/clearance/explain/types';
import type { Plan } from '../../core/plan/schema/plan';
import { liveStore } from '../liveStore';
import type { FindingKey } from './remediesStore';

interface Explaining {
  /** The item and the setup whose line of sight is drawn; null while none is. */
  readonly about: FindingKey | null;
  /** What works it out, which comes with whoever asks first: what looks through a lens is no small part of the page. */
  readonly explain: typeof explain | null;
}

/** Which line of sight is drawn: see `explainFinding`. */
export const explainStore = createStore<Explaining>()(() => ({ about: null, explain: null }));

let last: { readonly of: readonly unknown[]; readonly told: Explanation | null } | null = null;

/**
 * The explanation that is asked for, of a plan at an instant, seconds; null where none is, where there is nothing to
 * explain, and while the action plays: a picture has no time for it. Worked out once for all who draw it.
 */
export function explanationNow(plan: Plan, seconds: number): Explanation | null {
  const { about, explain } = explainStore.getState();
  if (!about || !explain || liveStore.getState().playing) return null;
  const of = [plan, seconds, about];
  if (!last || !of.every((each, k) => each === last?.of[k]))
    last = { of, told: explain(plan, { ...about, seconds }) };
  return last.told;
}
