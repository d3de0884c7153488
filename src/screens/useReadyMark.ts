import { useEffect } from 'react';
import { usePlanState, useReports, useViews } from '../desk/hooks';
import { bringTheRest } from './parts/lazily';

/** Marks the document as ready once the first picture (or the reason for none) and the first verdicts are there. */
export function useReadyMark(): void {
  const opened = usePlanState((state) => state.opened);
  const empty = usePlanState((state) => state.plan.setups.length === 0);
  const pictured = useViews((state) => state.pictureReady || state.pictureRefused !== null);
  const judged = useReports(
    (state) => (state.trouble ?? state.instantTrouble) !== null || (state.live?.length ?? 0) > 0,
  );
  const ready = opened && (empty || (pictured && judged));
  useEffect(() => {
    if (!ready) return;
    document.documentElement.dataset.ready = 'true';
    void bringTheRest();
  }, [ready]);
}
