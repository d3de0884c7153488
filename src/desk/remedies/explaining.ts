import { createStore } from 'zustand/vanilla';
import { explain } from '../../core/clearance/explain/explain';
import type { Explanation } from '../../core/clearance/explain/types';
import type { Plan } from '../../core/plan/schema/plan';
import { liveStore } from '../liveStore';
import type { FindingKey } from './remediesStore';

/** The item and the setup whose line of sight is drawn; null while none is. */
export const explainStore = createStore<{ readonly about: FindingKey | null }>()(() => ({ about: null }));

export const explainFinding = (about: FindingKey | null): void => explainStore.setState({ about });

let last: { readonly of: readonly unknown[]; readonly told: Explanation | null } | null = null;

/**
 * The explanation that is asked for, of a plan at an instant, seconds; null where none is, where there is nothing to
 * explain, and while the action plays: a picture has no time for it. Worked out once for all who draw it.
 */
export function explanationNow(plan: Plan, seconds: number): Explanation | null {
  const { about } = explainStore.getState();
  if (!about || liveStore.getState().playing) return null;
  const of = [plan, seconds, about];
  if (!last || !of.every((each, k) => each === last?.of[k]))
    last = { of, told: explain(plan, { ...about, seconds }) };
  return last.told;
}
