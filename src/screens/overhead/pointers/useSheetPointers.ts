import { type MouseEvent, type PointerEvent, useEffect, useMemo, useRef } from 'react';
import { chosenAreaStore } from '../../../desk/chosenArea';
import type { Spot } from '../geometry/spots';
import type { Target } from '../targets';
import { chooseForMenu, handUse, openContext } from './hand';
import { toolPointer } from './tool';
import { type PointerOptions, type PointerUse, type SheetPointer, spotIn } from './types';
import { viewUse, wheelZoom } from './view';

/** Half of the least area to hit: 32 pixels with a mouse, 48 with a finger. */
export const REACH = { mouse: 16, touch: 24 };

/** Whether a finger takes hold of what it touches; what is only wet it scrolls over, until it is chosen. */
const takesFinger = (target: Target | null): boolean =>
  target !== null && (target.type !== 'area' || target.areaId === chosenAreaStore.getState().areaId);

/**
 * The sheet under the pointers. Two fingers pan and zoom, the wheel zooms about the pointer, the middle button pans;
 * everything else goes to the picked tool, or to the hand where none is picked.
 */
export function useSheetPointers(options: PointerOptions) {
  const latest = useRef(options);
  latest.current = options;
  const { view, hand } = useMemo(() => {
    const now = (): PointerOptions => latest.current;
    const moving = viewUse(() => now().sheet);
    return { view: moving, hand: handUse(now, moving) };
  }, []);
  const middleButton = useMemo(
    (): PointerUse => ({
      down: ({ at }) => view.take(at),
      move: ({ at }) => view.panTo(at),
      up: () => view.letGo(),
      cancel: () => view.letGo(),
    }),
    [view],
  );
  const fingers = useRef(new Map<number, Spot>());
  const using = useRef<PointerUse | 'pinch' | null>(null);

  const pointerOf = (event: PointerEvent<SVGSVGElement>): SheetPointer => {
    const at = spotIn(event.currentTarget, event);
    const { sheet } = latest.current;
    const touch = event.pointerType !== 'mouse';
    return {
      at,
      spot: sheet.roofAt(at),
      clientX: event.clientX,
      clientY: event.clientY,
      touch,
      pressed: fingers.current.has(event.pointerId),
      shift: event.shiftKey,
      alt: event.altKey,
      command: event.ctrlKey || event.metaKey,
      when: event.timeStamp,
      reachMetres: (touch ? REACH.touch : REACH.mouse) / sheet.perMetre,
    };
  };
  const drop = (): void => {
    if (using.current && using.current !== 'pinch') using.current.cancel();
    using.current = null;
    view.letGo();
  };

  const { svg } = options;
  useEffect(() => {
    if (!svg) return;
    const wheel = (event: WheelEvent): void => wheelZoom(latest.current.sheet, svg, event);
    const key = (event: KeyboardEvent): void => {
      if (!hand.key(event)) return;
      event.stopPropagation();
      event.preventDefault();
    };
    // Without this a browser that is behind with its frames takes a drag for a scroll of its own and cancels it.
    const touch = (event: TouchEvent): void => {
      const [finger] = event.touches;
      const { scrolls, hit } = latest.current;
      const onHandle = event.target instanceof Element && event.target.closest('[data-handle]') !== null;
      const leavesIt =
        scrolls &&
        !onHandle &&
        !toolPointer.active() &&
        event.touches.length === 1 &&
        finger !== undefined &&
        !takesFinger(hit(spotIn(svg, finger), true)?.target ?? null);
      if (!leavesIt) event.preventDefault();
    };
    // A finger that rested on the empty ground draws a rectangle there: the page does not scroll under it.
    const touchMove = (event: TouchEvent): void => {
      if (using.current === hand && hand.holds() && event.cancelable) event.preventDefault();
    };
    svg.addEventListener('touchstart', touch, { passive: false });
    svg.addEventListener('touchmove', touchMove, { passive: false });
    svg.addEventListener('wheel', wheel, { passive: false });
    window.addEventListener('keydown', key, true);
    window.addEventListener('keyup', key, true);
    return () => {
      svg.removeEventListener('touchstart', touch);
      svg.removeEventListener('touchmove', touchMove);
      svg.removeEventListener('wheel', wheel);
      window.removeEventListener('keydown', key, true);
      window.removeEventListener('keyup', key, true);
    };
  }, [svg, hand]);
  // A sheet that is taken away in the middle of a drag leaves nothing half moved.
  const dropLater = useRef(drop);
  dropLater.current = drop;
  useEffect(() => () => dropLater.current(), []);

  const onPointerDown = (event: PointerEvent<SVGSVGElement>): void => {
    const isMouse = event.pointerType === 'mouse';
    if (isMouse && event.button > 1) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    fingers.current.set(event.pointerId, spotIn(event.currentTarget, event));
    if (fingers.current.size > 2) return;
    if (fingers.current.size === 2) {
      drop();
      using.current = 'pinch';
      view.pinchTo(fingers.current);
      return;
    }
    using.current = isMouse && event.button === 1 ? middleButton : toolPointer.active() ? toolPointer : hand;
    using.current.down(pointerOf(event));
  };

  const onPointerMove = (event: PointerEvent<SVGSVGElement>): void => {
    if (!fingers.current.has(event.pointerId)) {
      if (toolPointer.active()) toolPointer.move(pointerOf(event));
      return;
    }
    fingers.current.set(event.pointerId, spotIn(event.currentTarget, event));
    if (using.current === 'pinch') {
      if (fingers.current.size >= 2) view.pinchTo(fingers.current);
    } else using.current?.move(pointerOf(event));
  };

  const onPointerUp = (event: PointerEvent<SVGSVGElement>): void => {
    const pointer = pointerOf(event);
    fingers.current.delete(event.pointerId);
    if (using.current !== 'pinch') {
      using.current?.up(pointer);
      using.current = null;
      return;
    }
    // The finger that stays goes on as a pan, from where it is.
    const [rest] = fingers.current.values();
    using.current = rest ? middleButton : null;
    if (rest) view.take(rest);
    else view.letGo();
  };

  const onPointerCancel = (event: PointerEvent<SVGSVGElement>): void => {
    fingers.current.delete(event.pointerId);
    drop();
  };

  /** The right button and the menu key; a finger asks by resting, which the hand knows of. */
  const onContextMenu = (event: MouseEvent<SVGSVGElement>): void => {
    event.preventDefault();
    const { nativeEvent } = event;
    const byFinger = nativeEvent instanceof window.PointerEvent && nativeEvent.pointerType === 'touch';
    if (byFinger || toolPointer.active()) return;
    const at = spotIn(event.currentTarget, event);
    const found = latest.current.hit(at, false);
    if (found) chooseForMenu(latest.current, found.target);
    openContext(found?.target ?? null, latest.current.sheet.roofAt(at), event);
  };

  return { onPointerDown, onPointerMove, onPointerUp, onPointerCancel, onContextMenu };
}
