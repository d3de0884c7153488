import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import { hintStore } from '../../desk/hints/hintStore';
import { HINT_IDS, type Hint, MOST_HINTS, nextHint } from '../../desk/hints/hints';
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

  // What was shown and has been done since does not come back when the act is undone; what only fits no longer may.
  const shown = useRef<Hint | null>(null);
  useEffect(() => {
    const before = shown.current;
    shown.current = hint;
    if (!before || before.id === hint?.id || gone.includes(before.id)) return;
    if (before.done(doings)) hintStore.getState().putAway([before.id]);
  });

  if (!hint) return null;
  return (
    <div className="hints">
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
    </div>
  );
}
