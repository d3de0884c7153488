import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { actionSpan, drawnUntil } from '../../../desk/blocking/clock';
import { isIn, lampIn } from '../../../desk/blocking/things';
import { useLive, useLivePlan, usePlanState, useSession } from '../../../desk/hooks';
import { useElementSize } from '../../parts/useElementSize';
import { BlockingSwitch } from './coverage/CoverageView';
import { addBeatHere } from './doing';
import { type Drawn, DrawnContext } from './drawing';
import { Foot } from './Foot';
import { BlockingPanel } from './panel/BlockingPanel';
import { fitted, widthOf, withinReach } from './scale';
import { Timeline } from './Timeline';
import { Toolbar } from './Toolbar';
import { useZoom } from './useZoom';
import { momentText } from './words';
import './blocking.css';
import './timeline.css';
import './lanes.css';

/** The column of the lanes' names, pixels. */
const NAMES = { fine: 128, touch: 92 };
/** With so much room the fields stand beside the timeline without being asked for, pixels. */
const ROOM_FOR_BOTH = 1180;

/** In the one column of a phone the fields stand below the timeline; beside it they would take its room. */
const isOneColumn = (): boolean => matchMedia('(max-width: 767px)').matches;

const isTouch = (): boolean => matchMedia('(pointer: coarse)').matches;

/** In the tabs' line: how long the action is, and which way it is looked at. */
export function BlockingHead() {
  const plan = useLivePlan();
  const count = plan.beats.length;
  const [from, to] = actionSpan(plan);
  const words = count === 1 ? 'one beat' : `${count} beats, ${momentText(to - from)}`;
  return (
    <div className="blocking-head">
      <span className="q">{count === 0 ? 'no beats' : words}</span>
      <BlockingSwitch />
    </div>
  );
}

/** Keeps what is chosen here together with what is chosen on the roof and with what the plan still has. */
function useChoices(plan: Plan): void {
  const selectedId = useSession((state) => state.selectedId);
  useEffect(() => {
    const { chosen } = blockingStore.getState();
    const isPerformer = plan.cast.some(({ id }) => id === selectedId);
    const isOf = (id: string): boolean =>
      chosen !== null &&
      (('performerId' in chosen && chosen.performerId === id) ||
        ('itemId' in chosen && chosen.itemId === id));
    if (selectedId !== null && isPerformer && !isOf(selectedId))
      blockingStore.setState({ chosen: { type: 'performer', performerId: selectedId } });
    else if (selectedId !== null && !isOf(selectedId) && lampIn(plan, selectedId))
      blockingStore.setState({ chosen: { type: 'lamp', itemId: selectedId } });
    else if (chosen && !isIn(plan, chosen)) blockingStore.setState({ chosen: null });
  }, [selectedId, plan]);
}

/** The action along its clock, with the fields of what is chosen beside or below it. */
export function BlockingSheet() {
  const plan = useLivePlan();
  const committed = usePlanState((state) => state.plan);
  const lengths = useSession((state) => state.lengths);
  const asked = useStore(blockingStore, (state) => state.pixelsPerSecond);
  const panelAsked = useStore(blockingStore, (state) => state.panel);
  const proposing = useStore(blockingStore, (state) => state.proposing);
  const isHeld = useLive((state) => state.gesture !== null);
  const [whole, setWhole] = useState<HTMLElement | null>(null);
  const [outer, setOuter] = useState<HTMLDivElement | null>(null);
  const scroller = useRef<HTMLDivElement | null>(null);
  const [page, setPage] = useState(0);
  const takeOuter = useCallback((element: HTMLDivElement | null): void => {
    scroller.current = element;
    setOuter(element);
  }, []);
  const { width: wholeWidth } = useElementSize(whole);
  const { width: outerWidth } = useElementSize(outer);
  useChoices(committed);

  const touch = isTouch();
  const names = touch ? NAMES.touch : NAMES.fine;
  const seen = Math.max(120, outerWidth - names);
  // Under a hand the scale stays as it was, whatever the hand does to the length of the action.
  const settled = drawnUntil(committed);
  const until = Math.max(settled, drawnUntil(plan));
  const pixelsPerSecond = asked === null ? fitted(settled, seen) : withinReach(asked, settled, seen);
  const drawn = useMemo((): Drawn => {
    const scale = { pixelsPerSecond, until };
    const width = Math.max(seen, widthOf(scale));
    return { scale, width, left: (page - 1) * seen, right: (page + 2) * seen, touch, lengths };
  }, [pixelsPerSecond, until, seen, page, touch, lengths]);
  const zoom = useZoom(scroller, names, drawn.scale);

  const panel = panelAsked || (wholeWidth > 0 && isOneColumn()) || wholeWidth >= ROOM_FOR_BOTH;
  return (
    <div className={panel ? 'blocking with-panel' : 'blocking'} ref={setWhole} data-held={isHeld}>
      <Toolbar plan={plan} {...zoom} />
      <div className="blocking-main">
        {plan.beats.length === 0 ? (
          <div className="blocking-empty">
            <p>No beat yet. A beat is a named moment of the action: who stands where hangs on it.</p>
            <button type="button" className="do" onClick={addBeatHere}>
              Add the first beat
            </button>
          </div>
        ) : (
          <DrawnContext value={drawn}>
            <div
              className="timeline"
              ref={takeOuter}
              onScroll={(event) => setPage(Math.floor(event.currentTarget.scrollLeft / seen))}
            >
              {outerWidth > 0 ? (
                <Timeline plan={plan} scroller={scroller} names={names} proposed={proposing} />
              ) : null}
            </div>
          </DrawnContext>
        )}
        <Foot plan={plan} />
      </div>
      {panel ? <BlockingPanel plan={plan} /> : null}
    </div>
  );
}
