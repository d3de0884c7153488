import '../styles/handles.css';
import {
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { chosenAreaStore } from '../../../desk/chosenArea';
import { useLive, useSession } from '../../../desk/hooks';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { change } from '../../actions/doing';
import { AS_BUTTON } from '../asButton';
import { ARROWS } from '../geometry/arrows';
import { plus, type Spot } from '../geometry/spots';
import { type Held, pulledTo, takeHold, takes } from '../pointers/held';
import { REACH } from '../pointers/useSheetPointers';
import type { SheetView } from '../useSheetView';
import { FigureInput, figureAtBoard, historyName } from './FigureInput';
import { Figure, Grip } from './Grip';
import { handlesOf } from './handlesOf';
import { RowEnd } from './RowEnd';
import type { Handle, Pull } from './types';

/** How near what is pulled catches on something, pixels. */
const CATCH = 8;
/** The gesture of a pulled handle is told from a drag by this id. */
const PULL = 'handle';

/** A handle in the hand: as it was when it was taken, and where. */
interface HeldHandle extends Held {
  readonly handle: Handle;
  /** From the pointer to the handle's own place, pixels. */
  readonly offset: Spot;
}

interface Props {
  readonly plan: Plan;
  readonly sheet: SheetView;
  readonly svg: SVGSVGElement | null;
  readonly seconds: number;
  readonly setupId: string | null;
  readonly touch: boolean;
  readonly master: Plan;
  readonly markId: string | null;
  readonly onlyIn: string | null;
}

/** Ring, lead, corners and what else of the chosen things can be pulled, typed or moved by keys. */
export function HandlesLayer(props: Props) {
  const { plan, sheet, svg, seconds, setupId, touch, master, markId, onlyIn } = props;
  const ids = useSession((state) => state.selectedIds);
  const areaId = useStore(chosenAreaStore, (state) => state.areaId);
  const lengths = useSession((state) => state.lengths);
  const gestureId = useLive((state) => state.gesture?.itemId ?? null);
  const [active, setActive] = useState<string | null>(null);
  const [typing, setTyping] = useState<string | null>(null);
  const held = useRef<HeldHandle | null>(null);
  const { at, perMetre, roofAt } = sheet;
  const handles = useMemo(
    () =>
      handlesOf({
        plan,
        ids,
        setupId,
        seconds,
        lengths,
        perMetre,
        at,
        markId,
        areaId,
        onlyIn,
        master,
        pulling: gestureId === PULL,
      }),
    [plan, ids, setupId, seconds, lengths, perMetre, at, markId, areaId, onlyIn, master, gestureId],
  );
  const placeOf = (handle: Handle): Spot => plus(at(handle.at), handle.off ?? [0, 0]);

  const end = (commit: boolean): void => {
    const before = held.current;
    held.current = null;
    const { gesture, commitGesture, dropGesture } = liveStore.getState();
    if (gesture?.itemId !== PULL) return;
    if (commit) commitGesture(before ? historyName(before.handle) : 'move it by its handle');
    else dropGesture();
  };
  const endNow = useRef(end);
  endNow.current = end;
  useEffect(() => {
    const onEscape = (event: globalThis.KeyboardEvent): void => {
      if (event.key !== 'Escape' || !held.current?.moved) return;
      event.stopPropagation();
      event.preventDefault();
      endNow.current(false);
    };
    window.addEventListener('keydown', onEscape, true);
    return () => {
      window.removeEventListener('keydown', onEscape, true);
      endNow.current(false);
    };
  }, []);

  const down = (handle: Handle, event: PointerEvent<SVGGElement>): void => {
    if (!svg || !takes(event)) return;
    event.stopPropagation();
    if (event.target instanceof Element && event.target.closest('[data-figure]') && handle.typed) {
      setTyping(handle.key);
      return;
    }
    const hold = takeHold(svg, event);
    const place = placeOf(handle);
    held.current = { ...hold, handle, offset: [place[0] - hold.from[0], place[1] - hold.from[1]] };
  };

  const pullOf = (now: HeldHandle, event: PointerEvent<SVGGElement>, spot: Spot): Pull => ({
    to: roofAt(plus(spot, now.offset)),
    moved: [spot[0] - now.from[0], spot[1] - now.from[1]],
    straight: event.shiftKey,
    free: event.altKey,
    reachMetres: CATCH / perMetre,
  });

  const move = (event: PointerEvent<SVGGElement>): void => {
    const now = held.current;
    const spot = svg && now && pulledTo(svg, now, event, PULL);
    if (!spot) return;
    liveStore.getState().moveGesture(now.handle.pull(planStore.getState().plan, pullOf(now, event, spot)));
  };

  const up = (event: PointerEvent<SVGGElement>): void => {
    const now = held.current;
    if (now?.pointerId !== event.pointerId) return;
    event.stopPropagation();
    const { handle, moved } = now;
    end(true);
    if (moved) return;
    if (handle.press) change(historyName(handle), handle.press);
    else if (handle.typed) setTyping(handle.key);
  };

  const key = (handle: Handle, event: KeyboardEvent<SVGGElement>): void => {
    const way = ARROWS[event.key];
    if (way) {
      const live = liveStore.getState();
      if (live.gesture && live.gesture.itemId !== PULL) return;
      if (!live.gesture) live.beginGesture(PULL);
      const size = event.shiftKey ? 10 : event.altKey ? 0.2 : 1;
      live.moveGesture(handle.step(livePlan(), [way[0] * size, way[1] * size]));
    } else if (event.key === 'Enter' || event.key === ' ') {
      end(true);
      if (handle.press) change(historyName(handle), handle.press);
      else if (handle.typed) setTyping(handle.key);
    } else if (event.key === 'Delete' || event.key === 'Backspace') {
      if (!handle.remove) return;
      change(`take out ${historyName(handle)}`, handle.remove);
    } else if (event.key === 'Escape') {
      end(false);
      const [id] = ids;
      svg?.querySelector<SVGElement>(`[data-target="${id}"]`)?.focus({ preventScroll: true });
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const keyUp = (handle: Handle, event: KeyboardEvent<SVGGElement>): void => {
    if (!ARROWS[event.key] || liveStore.getState().gesture?.itemId !== PULL) return;
    event.stopPropagation();
    liveStore.getState().commitGesture(historyName(handle));
  };

  const holdOf = (handle: Handle) => ({
    onPointerDown: (event: PointerEvent<SVGGElement>) => down(handle, event),
    onPointerMove: move,
    onPointerUp: up,
    onPointerCancel: () => end(false),
    onDoubleClick: (event: MouseEvent) => {
      event.stopPropagation();
      if (handle.doubled && handle.remove) change(`take out ${historyName(handle)}`, handle.remove);
    },
    onKeyDown: (event: KeyboardEvent<SVGGElement>) => key(handle, event),
    onKeyUp: (event: KeyboardEvent<SVGGElement>) => keyUp(handle, event),
    onFocus: () => setActive(handle.key),
    onBlur: () => {
      setActive((before) => (before === handle.key ? null : before));
      if (held.current === null) end(true);
    },
    onPointerEnter: () => setActive(handle.key),
  });

  // While something else is dragged or drawn, what could be pulled would only be in the way.
  if (gestureId !== null && gestureId !== PULL)
    return <RowEnd plan={plan} sheet={sheet} svg={svg} touch={touch} />;
  const typed = handles.find((handle) => handle.key === typing);
  return (
    <g className="handles">
      {handles.map((handle) => {
        const place = placeOf(handle);
        const shows = handle.kind === 'raise' || handle.kind === 'press' || active === handle.key;
        return (
          <g
            key={handle.key}
            className={`handle ${handle.kind}`}
            data-handle={handle.key}
            aria-label={handle.figure ? `${handle.name}, ${handle.figure}` : handle.name}
            {...AS_BUTTON}
            {...holdOf(handle)}
          >
            <Grip
              kind={handle.kind}
              at={place}
              lead={handle.lead ? at(handle.lead) : null}
              reach={touch ? REACH.touch : REACH.mouse}
            />
            {shows && handle.figure && (
              <Figure words={handle.figure} at={place} touch={touch} button={handle.kind === 'press'} />
            )}
          </g>
        );
      })}
      {typed && svg?.parentElement && (
        <FigureInput
          key={typed.key}
          handle={typed}
          at={figureAtBoard(placeOf(typed), sheet.pane)}
          board={svg.parentElement}
          done={() => setTyping(null)}
        />
      )}
    </g>
  );
}
