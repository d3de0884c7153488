import { useMemo } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { ContinuityFinding, SetupContinuity } from '../core/continuity/continuity';
import type { Coverage } from '../core/continuity/coverage';
import type { Standing } from '../core/continuity/types';
import type { Plan } from '../core/plan/schema/plan';

/** How the setups cut together, in numbers: the screens put it into words, in the lengths that somebody reads. */
export interface ContinuityState {
  /** One for each setup of `forPlan`; null until it is known. */
  readonly setups: readonly SetupContinuity[] | null;
  /** Who is covered by which setup. */
  readonly coverage: Coverage | null;
  /** Which plan they belong to: a committed one, perhaps that before the last edit. */
  readonly forPlan: Plan | null;
}

export const continuityStore = createStore<ContinuityState>()(() => ({
  setups: null,
  coverage: null,
  forPlan: null,
}));

const NONE: readonly ContinuityFinding[] = [];

export const useContinuity = <Part>(select: (state: ContinuityState) => Part): Part =>
  useStore(continuityStore, select);

/** What is found of a setup, worst first; nothing before it is known. */
export const useSetupContinuity = (setupId: string | null): readonly ContinuityFinding[] =>
  useContinuity(({ setups }) => setups?.find((each) => each.setupId === setupId)?.findings ?? NONE);

/** How many of a setup's findings stand how. */
export function useContinuityTally(setupId: string): Readonly<Record<Standing, number>> {
  const findings = useSetupContinuity(setupId);
  return useMemo(() => {
    const count = (standing: Standing): number =>
      findings.filter((each) => each.standing === standing).length;
    return { breaks: count('breaks'), said: count('said'), holds: count('holds') };
  }, [findings]);
}
