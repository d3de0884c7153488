import { useEffect } from 'react';
import { useStore } from 'zustand';
import { useLive, usePlanState } from '../../../../desk/hooks';
import { highlightAnswers } from '../../../../desk/light/answers';
import { useSettledSeconds } from '../../../overhead/useSettledSeconds';
import { useResting } from '../useResting';

/** Where a lamp has to be for its highlight to lie before somebody's feet at the playhead, and whether that is still so. */
export function useHighlightPlace(
  setupId: string,
  lampId: string,
  performerId: string,
): {
  readonly answer: ReturnType<typeof highlightAnswers.store.getState>['answer'];
  readonly trouble: string | null;
  readonly stale: boolean;
} {
  const plan = usePlanState((state) => state.plan);
  const seconds = useSettledSeconds();
  const playing = useLive((state) => state.playing);
  const resting = useResting();
  useEffect(() => {
    if (resting) highlightAnswers.ask({ plan, asked: [setupId, lampId, performerId, seconds] });
  }, [plan, setupId, lampId, performerId, seconds, resting]);
  const { question, answer, trouble } = useStore(highlightAnswers.store);
  const isOfThis =
    question?.asked[0] === setupId && question.asked[1] === lampId && question.asked[2] === performerId;
  return {
    answer: isOfThis ? answer : null,
    trouble,
    stale: playing || question?.plan !== plan || question.asked[3] !== seconds,
  };
}
