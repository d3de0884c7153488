import { useEffect } from 'react';
import type { NightReport } from '../../core/report/types';
import { chooseSetup, letterOf } from '../../desk/choose';
import { planStore } from '../../desk/planStore';
import { reportStore } from '../../desk/reportStore';
import { sessionStore } from '../../desk/sessionStore';
import { toastStore } from '../../desk/toastStore';
import { outcomeOf } from './outcome';

/** Says what each edit did to the frames, as soon as the night has been read again. */
export function useOutcomes(): void {
  useEffect(() => {
    let before: { readonly night: NightReport; readonly documentNumber: number } | null = null;
    return reportStore.subscribe(({ night, forPlan }, old) => {
      if (!night || night === old.night || !forPlan) return;
      const { documentNumber } = planStore.getState();
      const outcome =
        before?.documentNumber === documentNumber
          ? outcomeOf(before.night, night, (setupId) => letterOf(forPlan, setupId))
          : null;
      before = { night, documentNumber };
      if (!outcome) return;
      toastStore.getState().say(outcome.sentence, {
        about: 'outcome',
        tone: outcome.isWorse ? 'warn' : 'plain',
        // The strip speaks of it.
        isHeard: false,
        action: {
          word: 'See it',
          act: () => {
            chooseSetup(outcome.setupId);
            sessionStore.getState().setSelectedId(outcome.itemId);
          },
        },
      });
    });
  }, []);
}
