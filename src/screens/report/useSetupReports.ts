import { useMemo } from 'react';
import type { SetupReport } from '../../core/report/types';
import { useLive, useReports } from '../../desk/hooks';
import type { ReportState } from '../../desk/reportStore';

/** True of a report of one instant, which says nothing about the rest of the move. */
export const isInstant = ({ seconds: [from, to] }: SetupReport): boolean => from === to;

/**
 * The reports to show now. While something is dragged, each setup at its instant; else each over its span where that
 * is read already, at its instant where not, and of the plan before the last edit where there is neither.
 */
export function useShownReports(): readonly SetupReport[] {
  const dragging = useLive((state) => state.gesture !== null);
  // While a move plays, instants come all the time: who shows spans does not hear of them.
  const live = useReports((state) => (dragging || !isAllRead(state) ? state.live : null));
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

/** Whether every setup whose instant is known is read over its span. */
const isAllRead = ({ live, partial }: ReportState): boolean =>
  live?.every(({ id }) => partial.has(id)) ?? true;

/** The report to show of one setup; null before it is known. `instant` tells that it is of one instant. */
export function useSetupReport(setupId: string | null): {
  readonly report: SetupReport | null;
  readonly instant: boolean;
} {
  const dragging = useLive((state) => state.gesture !== null);
  const fresh = useReports((state) => (setupId === null ? undefined : state.partial.get(setupId)));
  const live = useReports((state) =>
    dragging || !fresh ? state.live?.find((setup) => setup.id === setupId) : undefined,
  );
  const older = useReports((state) => state.night?.setups.find((setup) => setup.id === setupId));
  const report = (dragging ? (live ?? fresh) : (fresh ?? live)) ?? older ?? null;
  return { report, instant: report !== null && isInstant(report) };
}

/** An instant of a setup with what its whole span, of the same plan, has as lost in the dark: that is so at each instant. */
export function lostAlike(instant: SetupReport, over: SetupReport): SetupReport {
  const lost = new Set(
    over.items.filter(({ verdict }) => verdict === 'lost in the dark').map(({ id }) => id),
  );
  if (lost.size === 0) return instant;
  return {
    ...instant,
    items: instant.items.map((item) =>
      item.verdict === 'showing' && lost.has(item.id) ? { ...item, verdict: 'lost in the dark' } : item,
    ),
  };
}

/** The chosen setup at the instant of the clock, for what is drawn over the picture. */
export function useInstant(setupId: string | null): SetupReport | null {
  const dragging = useLive((state) => state.gesture !== null);
  const instant = useReports((state) => state.live?.find((setup) => setup.id === setupId) ?? null);
  const over = useReports((state) => (setupId === null ? undefined : state.partial.get(setupId)));
  return useMemo(
    () => (instant && over && !dragging ? lostAlike(instant, over) : instant),
    [instant, over, dragging],
  );
}

/** One setup over its whole span, whatever is being dragged; null before it is known. */
export function useReportOverSpan(setupId: string): SetupReport | null {
  const fresh = useReports((state) => state.partial.get(setupId) ?? null);
  const older = useReports((state) => state.night?.setups.find((setup) => setup.id === setupId) ?? null);
  return fresh ?? older;
}
