import { type PointerEvent, useEffect, useRef } from 'react';
import { liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { sessionStore } from '../../desk/sessionStore';
import type { HitShape } from './geometry/hits';
import type { Spot } from './geometry/spots';
import { snapMetres, snapped } from './snapping';
import { anchorOfTarget, keyOf, movedTo, moveName, type Target } from './targets';
import type { SheetView } from './useSheetView';

/** Less than this is an unsteady press, not a drag; pixels. */
const SLACK = { mouse: 4, touch: 8 };
const DOUBLE_TAP_MS = 350;

type Press =
  | { readonly type: 'pan'; last: Spot; readonly from: Spot; moved: boolean }
  | {
      readonly type: 'hold';
      readonly target: Target;
      readonly anchor: Spot | null;
      readonly from: Spot;
      moved: boolean;
      last: Spot;
    }
  | { readonly type: 'pinch'; middle: Spot; span: number };

interface Options {
  readonly sheet: SheetView;
  readonly svg: SVGSVGElement | null;
  /** Whether a finger on the empty ground scrolls the page instead of panning the sheet. */
  readonly scrolls: boolean;
  readonly hit: (at: Spot, touch: boolean) => HitShape<Target> | null;
  readonly choose: (target: Target | null) => void;
  readonly drag: (target: Target | null) => void;
}

/**
 * The sheet under the hand: a press chooses, a drag moves what was pressed (snapped, Shift keeps it on one axis,
 * Escape drops it), a drag of the empty ground pans, two fingers pan and zoom, the wheel zooms about the pointer.
 */
export function useSheetPointers(options: Options) {
  const now = useRef(options);
  now.current = options;
  const fingers = useRef(new Map<number, Spot>());
  const press = useRef<Press | null>(null);
  const shift = useRef(false);

  const end = (commit: boolean): void => {
    const held = press.current;
    press.current = null;
    if (held?.type !== 'hold' || !held.moved || !held.anchor) return;
    const { gesture, commitGesture, dropGesture } = liveStore.getState();
    if (commit && gesture) commitGesture(moveName(planStore.getState().plan, held.target));
    else dropGesture();
    now.current.drag(null);
  };

  const lastTap = useRef(0);
  /** Two taps of the empty ground are what a double click is to a mouse. */
  const tap = (when: number): void => {
    if (when - lastTap.current < DOUBLE_TAP_MS) options.sheet.fitAll();
    lastTap.current = when;
  };

  const carry = (held: Extract<Press, { type: 'hold' }>): void => {
    if (!held.anchor) return;
    const { sheet } = now.current;
    const [from, to] = [sheet.roofAt(held.from), sheet.roofAt(held.last)];
    const { lengths } = sessionStore.getState();
    const place = snapped(
      held.anchor,
      [to[0] - from[0], to[1] - from[1]],
      snapMetres(lengths),
      shift.current,
    );
    liveStore.getState().moveGesture(movedTo(planStore.getState().plan, held.target, place));
  };

  const { svg } = options;
  useEffect(() => {
    if (!svg) return;
    const wheel = (event: WheelEvent): void => {
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      // A pinch on a touch pad comes as a wheel with Control and small steps.
      const strength = event.ctrlKey ? 0.01 : 0.0015;
      now.current.sheet.zoom(spotIn(svg, event), Math.exp(-event.deltaY * lines * strength));
    };
    const key = (event: KeyboardEvent): void => {
      const held = press.current;
      if (event.key === 'Shift') {
        shift.current = event.type === 'keydown';
        if (held?.type === 'hold' && held.moved) carry(held);
      }
      if (event.key === 'Escape' && event.type === 'keydown' && held?.type === 'hold' && held.moved) {
        event.stopPropagation();
        event.preventDefault();
        end(false);
      }
    };
    // Without this a browser that is behind with its frames takes a drag for a scroll of its own and cancels it.
    const touch = (event: TouchEvent): void => {
      const [finger] = event.touches;
      const { scrolls, hit } = now.current;
      const leavesIt = scrolls && event.touches.length === 1 && !hit(spotIn(svg, finger), true);
      if (!leavesIt) event.preventDefault();
    };
    svg.addEventListener('touchstart', touch, { passive: false });
    svg.addEventListener('wheel', wheel, { passive: false });
    window.addEventListener('keydown', key, true);
    window.addEventListener('keyup', key, true);
    return () => {
      svg.removeEventListener('touchstart', touch);
      svg.removeEventListener('wheel', wheel);
      window.removeEventListener('keydown', key, true);
      window.removeEventListener('keyup', key, true);
    };
  });
  // A sheet that is taken away in the middle of a drag leaves nothing half moved.
  const drop = useRef(end);
  drop.current = end;
  useEffect(() => () => drop.current(false), []);

  const onPointerDown = (event: PointerEvent<SVGSVGElement>): void => {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    const at = spotIn(event.currentTarget, event);
    event.currentTarget.setPointerCapture(event.pointerId);
    fingers.current.set(event.pointerId, at);
    if (fingers.current.size === 2) {
      end(false);
      press.current = { type: 'pinch', ...pinchOf(fingers.current) };
      return;
    }
    if (fingers.current.size > 2) return;
    const found = options.hit(at, event.pointerType !== 'mouse');
    shift.current = event.shiftKey;
    if (!found) {
      press.current = { type: 'pan', from: at, last: at, moved: false };
      return;
    }
    const anchor = anchorOfTarget(planStore.getState().plan, found.target);
    // What stays where it is may have been pressed to pan: it is chosen when it is let go.
    if (anchor) options.choose(found.target);
    press.current = { type: 'hold', target: found.target, anchor, from: at, last: at, moved: false };
  };

  const onPointerMove = (event: PointerEvent<SVGSVGElement>): void => {
    const held = press.current;
    if (!fingers.current.has(event.pointerId) || !held) return;
    const at = spotIn(event.currentTarget, event);
    fingers.current.set(event.pointerId, at);
    if (held.type === 'pinch') {
      if (fingers.current.size < 2) return;
      const { middle, span } = pinchOf(fingers.current);
      options.sheet.pan([middle[0] - held.middle[0], middle[1] - held.middle[1]]);
      if (held.span > 0) options.sheet.zoom(middle, span / held.span);
      Object.assign(held, { middle, span });
      return;
    }
    const slack = event.pointerType === 'mouse' ? SLACK.mouse : SLACK.touch;
    const starts = !held.moved && Math.hypot(at[0] - held.from[0], at[1] - held.from[1]) >= slack;
    if (!held.moved && !starts) return;
    held.moved = true;
    shift.current = event.shiftKey;
    // What does not let itself be moved lets the sheet be moved instead.
    if (held.type === 'pan' || !held.anchor) {
      if (held.type === 'pan' && options.scrolls && event.pointerType !== 'mouse') return;
      options.sheet.pan([at[0] - held.last[0], at[1] - held.last[1]]);
      held.last = at;
      return;
    }
    if (starts) {
      liveStore.getState().beginGesture(keyOf(held.target));
      options.drag(held.target);
    }
    held.last = at;
    carry(held);
  };

  const onPointerUp = (event: PointerEvent<SVGSVGElement>): void => {
    const held = press.current;
    fingers.current.delete(event.pointerId);
    if (held?.type === 'pinch') {
      // The finger that stays goes on as a pan, from where it is.
      const [rest] = fingers.current.values();
      press.current = rest ? { type: 'pan', from: rest, last: rest, moved: true } : null;
      return;
    }
    if (held && !held.moved) {
      if (held.type === 'pan') {
        options.choose(null);
        if (event.pointerType !== 'mouse') tap(event.timeStamp);
      } else if (!held.anchor) options.choose(held.target);
    }
    end(true);
  };

  const onPointerCancel = (event: PointerEvent<SVGSVGElement>): void => {
    fingers.current.delete(event.pointerId);
    end(false);
  };

  return { onPointerDown, onPointerMove, onPointerUp, onPointerCancel };
}

/** Where an event happened, in pixels of the pane. */
export function spotIn(svg: Element, event: { readonly clientX: number; readonly clientY: number }): Spot {
  const { left, top } = svg.getBoundingClientRect();
  return [event.clientX - left, event.clientY - top];
}

function pinchOf(fingers: ReadonlyMap<number, Spot>): { middle: Spot; span: number } {
  const [a, b] = fingers.values();
  return {
    middle: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2],
    span: Math.hypot(a[0] - b[0], a[1] - b[1]),
  };
}
