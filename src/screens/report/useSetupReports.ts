import { useMemo } from 'react';
import type { SetupReport } from '../../core/report/types';
import { useLive, useReports } from '../../desk/hooks';

/** The reports to show now, in the order that they came, and what they are about. */
export interface ShownReports {
  readonly setups: readonly SetupReport[];
  /** True while something is dragged: then they are of one instant, not of the whole span. */
  readonly instant: boolean;
}

/** While dragging, each setup at its instant; else each over its span, the fresh ones before those of the plan before. */
export function useShownReports(): ShownReports {
  const dragging = useLive((state) => state.gesture !== null);
  const live = useReports((state) => state.live);
  const partial = useReports((state) => state.partial);
  const night = useReports((state) => state.night);
  return useMemo(() => {
    if (dragging && live) return { setups: live, instant: true };
    const older = (night?.setups ?? []).filter((setup) => !partial.has(setup.id));
    return { setups: [...partial.values(), ...older], instant: false };
  }, [dragging, live, partial, night]);
}

/** The report to show of one setup; null before it is known. */
export function useSetupReport(setupId: string | null): {
  readonly report: SetupReport | null;
  readonly instant: boolean;
} {
  const { setups, instant } = useShownReports();
  return { report: setups.find((setup) => setup.id === setupId) ?? null, instant };
}

/** The chosen setup at the instant of the clock, for what is drawn over the picture. */
export function useInstant(setupId: string | null): SetupReport | null {
  return useReports((state) => state.live?.find((setup) => setup.id === setupId) ?? null);
}

/** One setup over its whole span, whatever is being dragged; null before it is known. */
export function useReportOverSpan(setupId: string): SetupReport | null {
  const fresh = useReports((state) => state.partial.get(setupId) ?? null);
  const older = useReports((state) => state.night?.setups.find((setup) => setup.id === setupId) ?? null);
  return fresh ?? older;
}
