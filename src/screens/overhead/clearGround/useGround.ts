import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import type { GroundQuestion } from '../../../core/clearance/ground/types';
import type { UsefulQuestion } from '../../../core/clearance/useful/types';
import type { Plan } from '../../../core/plan/schema/plan';
import { clearAsking, limitsAsking, usefulAsking } from '../../../desk/ground/askGround';
import { groundStore } from '../../../desk/ground/groundStore';
import { useGroundState } from '../../../desk/ground/useGroundState';
import { useSession } from '../../../desk/hooks';
import { useShowsLevels } from '../levels/useLevels';
import { useSettledSeconds } from '../useSettledSeconds';
import { groundQuestion, usefulQuestion } from './question';

/** Whether the overhead shows clear ground: where it was asked for, and no levels lie there. */
export function useShowsGround(): boolean {
  const on = useStore(groundStore, (state) => state.on);
  return !useShowsLevels() && on;
}

/** Of equal questions always the first, so that nothing is asked twice. */
function useSame<Question>(question: Question): Question {
  const kept = useRef(question);
  if (JSON.stringify(kept.current) !== JSON.stringify(question)) kept.current = question;
  return kept.current;
}

/** What is asked of the ground now, or a sentence; the same object as long as it is the same question. */
export function useGroundQuestion(plan: Plan): GroundQuestion | string {
  const state = useGroundState();
  const chosenId = useSession((session) => session.selectedId);
  return useSame(groundQuestion(plan, state, chosenId));
}

/** What is asked of a lamp now. */
function useUsefulQuestion(plan: Plan): UsefulQuestion | string | null {
  const state = useGroundState();
  const chosenId = useSession((session) => session.selectedId);
  const setupId = useSession((session) => session.setupId);
  const seconds = useSettledSeconds();
  return useSame(usefulQuestion(plan, state, { chosenId, setupId, seconds }));
}

/** Asks for what the overhead shows of the ground, anew with every change of the plan, as long as it is shown. */
export function useAskGround(plan: Plan): void {
  const shows = useStore(groundStore, (state) => state.shows);
  const question = useGroundQuestion(plan);
  const useful = useUsefulQuestion(plan);
  useEffect(() => {
    if (typeof question === 'string') groundStore.setState({ ground: null, limits: null, why: question });
    else if (shows === 'limits') limitsAsking.ask(plan, { setupIds: question.setupIds });
    else clearAsking.ask(plan, question);
  }, [plan, question, shows]);
  useEffect(() => {
    if (useful === null) groundStore.setState({ useful: null, usefulWhy: null });
    else if (typeof useful === 'string') groundStore.setState({ useful: null, usefulWhy: useful });
    else usefulAsking.ask(plan, useful);
  }, [plan, useful]);
  useEffect(
    () => () => {
      for (const asking of [clearAsking, limitsAsking, usefulAsking]) asking.stop();
    },
    [],
  );
}
