import { useEffect } from 'react';
import { useStore } from 'zustand';
import { hintStore } from '../../desk/hints/hintStore';
import { HINT_IDS, HINTS, MOST_HINTS, nextHint } from '../../desk/hints/hints';
import { useLive, usePlanState, useSession } from '../../desk/hooks';
import { planStore } from '../../desk/planStore';
import './hints.css';

/** One line over the roof that says the next act, as long as somebody is new here. It takes nothing over. */
export function Hints() {
  const plan = usePlanState((state) => state.plan);
  const opened = usePlanState((state) => state.opened);
  const edits = useStore(planStore.temporal, (state) => state.pastStates.length);
  const playing = useLive((state) => state.playing);
  const setupId = useSession((state) => state.setupId);
  const gone = useStore(hintStore, (state) => state.gone);
  const readKeys = useStore(hintStore, (state) => state.readKeys);
  const looksElsewhere = setupId !== null && setupId !== plan.setups[0]?.id;
  const doings = { plan, edits, playing, looksElsewhere, readKeys };
  const hint = opened ? nextHint(doings, gone) : null;

  // What was shown and has been done since does not come back when the act is undone.
  const shown = hint?.id ?? null;
  useEffect(() => {
    if (shown === null) return;
    return () => {
      const { gone: before, putAway } = hintStore.getState();
      if (!before.includes(shown) && HINTS.some(({ id }) => id === shown)) putAway([shown]);
    };
  }, [shown]);

  if (!hint) return null;
  return (
    <div className="hint" role="note">
      <p>{hint.words}</p>
      <span className="q">
        {gone.length + 1} of {MOST_HINTS}
      </span>
      <button type="button" className="bare" onClick={() => hintStore.getState().putAway([hint.id])}>
        Next
      </button>
      <button type="button" className="bare" onClick={() => hintStore.getState().putAway(HINT_IDS)}>
        No more
      </button>
    </div>
  );
}
