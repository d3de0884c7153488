import { useMemo } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { useSession } from '../../../desk/hooks';
import { duskStore, duskSun } from '../../../desk/night/duskStore';
import { nightViewStore } from '../../../desk/night/nightView';

/** The sun and its last light while the sky of the night is looked at; null otherwise, and where the sun does not set. */
export function useSunShown(plan: Plan): ReturnType<typeof duskSun> {
  const isNight = useSession((state) => state.sheet === 'night');
  const isSky = useStore(nightViewStore, (state) => state.view === 'sky');
  const minutes = useStore(duskStore, (state) => state.minutes);
  const { place, sky, night } = plan;
  return useMemo(
    () =>
      isNight && isSky ? duskSun({ place, ...(sky && { sky }), ...(night && { night }) }, minutes) : null,
    [isNight, isSky, minutes, place, sky, night],
  );
}
