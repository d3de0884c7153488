import { useMemo } from 'react';
import type { SetupReport } from '../../core/report/types';
import { useLive, useReports } from '../../desk/hooks';

/** True of a report of one instant, which says nothing about the rest of the move. */
export const isInstant = ({ seconds: [from, to] }: SetupReport): boolean => from === to;

/**
 * The reports to show now. While something is dragged, each setup at its instant; else each over its span where that
 * is read already, at its instant where not, and of the plan before the last edit where there is neither.
 */
export function useShownReports(): readonly SetupReport[] {
  const dragging = useLive((state) => state.gesture !== null);
  const live = useReports((state) => state.live);
  const partial = useReports((state) => state.partial);
  const night = useReports((state) => state.night);
  return useMemo(() => {
    const fresh = [...partial.values()];
    const instants = live ?? [];
    const lists = dragging ? [instants, fresh] : [fresh, instants];
    const shown = new Map<string, SetupReport>();
    for (const setup of [...lists.flat(), ...(night?.setups ?? [])]) {
      if (!shown.has(setup.id)) shown.set(setup.id, setup);
    }
    return [...shown.values()];
  }, [dragging, live, partial, night]);
}

/** The report to show of one setup; null before it is known. `instant` tells that it is of one instant. */
export function useSetupReport(setupId: string | null): {
  readonly report: SetupReport | null;
  readonly instant: boolean;
} {
  const report = useShownReports().find((setup) => setup.id === setupId) ?? null;
  return { report, instant: report !== null && isInstant(report) };
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
