import { useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import { askedLux, type ExposureSettings } from '../../../core/light/exposure';
import type { Plan } from '../../../core/plan/schema/plan';
import { setupOf } from '../../../desk/choose';
import { useSession } from '../../../desk/hooks';
import { askMap, stopLevels } from '../../../desk/levelMap/askLevels';
import { levelMapStore } from '../../../desk/levelMap/levelMapStore';
import { type Squares, squaresOf } from './bands';

/** What stops are counted from where no setup is looked through, as a new one is set. Source: common practice, no source */
const NO_SETUP: ExposureSettings = {
  stop: 2.8,
  iso: 800,
  shutterDegrees: 180,
  framesPerSecond: 24,
  ndStops: 0,
};

/** What the levels are counted from: the setup that is looked through, or a usual night's exposure. */
export const exposureOf = (plan: Plan, setupId: string | null): ExposureSettings =>
  setupOf(plan, setupId) ?? NO_SETUP;

/** Whether the overhead shows levels in place of throws: with the Light sheet open, when it was chosen. */
export function useShowsLevels(): boolean {
  const open = useSession((state) => state.sheet) === 'light';
  return useStore(levelMapStore, ({ roof }) => roof) === 'levels' && open;
}

/** Asks for the level map of what is seen as long as it is shown; the last that is known, in stops. */
export function useLevels(plan: Plan, setupId: string | null, seconds: number): Squares | null {
  const of = useStore(levelMapStore, (state) => state.of);
  const grid = useStore(levelMapStore, (state) => state.grid);
  useEffect(() => askMap({ plan, setupId, seconds, of }), [plan, setupId, seconds, of]);
  useEffect(() => () => stopLevels('map'), []);
  const asked = askedLux(exposureOf(plan, setupId));
  return useMemo(() => grid && squaresOf(grid, asked), [grid, asked]);
}
