import { liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { sessionStore } from '../../../desk/sessionStore';
import { distance, type Spot } from '../geometry/spots';
import { snapMetres, snapped } from '../snapping';
import { anchorOfTarget, keyOf, movedTo, moveName, type Target } from '../targets';
import { type PointerOptions, type PointerUse, slackOf } from './types';
import type { ViewUse } from './view';

const DOUBLE_TAP_MS = 350;

interface Hold {
  readonly target: Target;
  readonly anchor: Spot | null;
  readonly from: Spot;
  last: Spot;
  moved: boolean;
}

interface Pan {
  readonly target: null;
  readonly from: Spot;
  moved: boolean;
}

/** The bare hand, and its keys. */
export interface HandUse extends PointerUse {
  /** Says whether a key was meant for the drag that is going on. */
  readonly key: (event: KeyboardEvent) => boolean;
}

/**
 * The hand: a press chooses, a drag moves what was pressed (snapped, Shift keeps it on one axis, Escape drops it),
 * a drag of the empty ground pans, two taps of it fit the whole roof.
 */
export function handUse(now: () => PointerOptions, view: ViewUse): HandUse {
  let held: Hold | Pan | null = null;
  let shift = false;
  let lastTap = 0;

  const end = (commit: boolean): void => {
    const before = held;
    held = null;
    view.letGo();
    if (!before?.target || !before.moved || !before.anchor) return;
    const { gesture, commitGesture, dropGesture } = liveStore.getState();
    if (commit && gesture) commitGesture(moveName(planStore.getState().plan, before.target));
    else dropGesture();
    now().drag(null);
  };

  const carry = (hold: Hold): void => {
    if (!hold.anchor) return;
    const { sheet } = now();
    const [from, to] = [sheet.roofAt(hold.from), sheet.roofAt(hold.last)];
    const snap = snapMetres(sessionStore.getState().lengths);
    const place = snapped(hold.anchor, [to[0] - from[0], to[1] - from[1]], snap, shift);
    liveStore.getState().moveGesture(movedTo(planStore.getState().plan, hold.target, place));
  };

  /** Two taps of the empty ground are what a double click is to a mouse. */
  const tap = (when: number): void => {
    if (when - lastTap < DOUBLE_TAP_MS) now().sheet.fitAll();
    lastTap = when;
  };

  return {
    down: ({ at, touch, shift: withShift }) => {
      const { hit, choose } = now();
      const found = hit(at, touch);
      shift = withShift;
      view.take(at);
      if (!found) {
        held = { target: null, from: at, moved: false };
        return;
      }
      const anchor = anchorOfTarget(planStore.getState().plan, found.target);
      // What stays where it is may have been pressed to pan: it is chosen when it is let go.
      if (anchor) choose(found.target);
      held = { target: found.target, anchor, from: at, last: at, moved: false };
    },
    move: (pointer) => {
      if (!held) return;
      const { at, touch } = pointer;
      const starts = !held.moved && distance(at, held.from) >= slackOf(pointer);
      if (!held.moved && !starts) return;
      held.moved = true;
      shift = pointer.shift;
      // What does not let itself be moved lets the sheet be moved instead.
      if (!held.target || !held.anchor) {
        if (held.target || !now().scrolls || !touch) view.panTo(at);
        return;
      }
      if (starts) {
        liveStore.getState().beginGesture(keyOf(held.target));
        now().drag(held.target);
      }
      held.last = at;
      carry(held);
    },
    up: ({ touch, when }) => {
      if (held && !held.moved) {
        if (!held.target) {
          now().choose(null);
          if (touch) tap(when);
        } else if (!held.anchor) now().choose(held.target);
      }
      end(true);
    },
    cancel: () => end(false),
    key: (event) => {
      if (event.key === 'Shift') {
        shift = event.type === 'keydown';
        if (held?.target && held.moved) carry(held);
      }
      const drops =
        event.key === 'Escape' && event.type === 'keydown' && held?.target !== null && held?.moved === true;
      if (drops) end(false);
      return drops;
    },
  };
}
