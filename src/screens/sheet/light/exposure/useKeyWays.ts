import { useEffect } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../../core/plan/schema/plan';
import { useLive, usePlanState } from '../../../../desk/hooks';
import { keyAnswers } from '../../../../desk/light/answers';
import { useSettledSeconds } from '../../../overhead/useSettledSeconds';
import { useResting } from '../useResting';

interface Wanted {
  readonly setupId: string;
  readonly performerId: string | null;
  readonly stopsUnder: number;
}

/** How to have a performer's key so many stops under the exposure at the playhead, and whether that is still so. */
export function useKeyWays({ setupId, performerId, stopsUnder }: Wanted): {
  readonly answer: ReturnType<typeof keyAnswers.store.getState>['answer'];
  readonly trouble: string | null;
  readonly stale: boolean;
} {
  const plan = usePlanState((state): Plan => state.plan);
  const seconds = useSettledSeconds();
  const playing = useLive((state) => state.playing);
  const resting = useResting();
  useEffect(() => {
    if (performerId === null || !resting) return;
    keyAnswers.ask({ plan, asked: [setupId, performerId, seconds, stopsUnder] });
  }, [plan, setupId, performerId, seconds, stopsUnder, resting]);
  const { question, answer, trouble } = useStore(keyAnswers.store);
  const isOfThis = question?.asked[0] === setupId && question.asked[1] === performerId;
  const stale =
    playing || question?.plan !== plan || question.asked[2] !== seconds || question.asked[3] !== stopsUnder;
  return { answer: isOfThis ? answer : null, trouble, stale };
}
