import { useMemo, useRef } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { powerStore } from '../../../desk/power/powerStore';
import { type PowerOnRoof, powerOnRoof } from './powerOnRoof';

/** What the roof shows of a plan's power while it is looked at; null while it is not. The same object as long as it is the same. */
export function usePowerOnRoof(plan: Plan): PowerOnRoof | null {
  const answer = useStore(powerStore, (state) => state.answer);
  const shown = useStore(powerStore, (state) => state.shown);
  const stopId = useStore(powerStore, (state) => state.stopId);
  const kept = useRef<PowerOnRoof | null>(null);
  return useMemo(() => {
    const found = shown && answer ? powerOnRoof(plan, answer, stopId) : null;
    // Names are placed anew only where something reads otherwise, not with every answer.
    if (JSON.stringify(kept.current) !== JSON.stringify(found)) kept.current = found;
    return kept.current;
  }, [plan, answer, shown, stopId]);
}
