import { useMemo } from 'react';
import { useStore } from 'zustand';
import type { Night } from '../../core/night/types';
import type { Plan } from '../../core/plan/schema/plan';
import { nightStore } from './nightStore';
import { shownNight } from './shownNight';

/** The night of a plan as it is known, in the order that the plan or a hand has; null until it is. */
export function useNight(plan: Plan): Night | null {
  const answer = useStore(nightStore, (state) => state.answer);
  const draft = useStore(nightStore, (state) => state.draftOrder);
  return useMemo(() => answer && shownNight(plan, answer.plan, answer.night, draft), [plan, answer, draft]);
}
