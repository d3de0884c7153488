import { type RefObject, useEffect } from 'react';

/** So far a finger goes sideways for a swipe, and at most this share of that up or down. CSS pixels. */
const FAR = 64;
const LEANING = 0.5;
/** From so near the window's edge a phone's own gesture begins. */
const EDGE = 28;

/** Hears a finger that is swept across an element: −1 towards what comes before, 1 towards what comes next. */
export function useSwipe(place: RefObject<HTMLElement | null>, onSwipe: (by: -1 | 1) => void): void {
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    let from: { readonly x: number; readonly y: number } | null = null;
    const begin = ({ touches, target }: TouchEvent): void => {
      const [touch] = touches;
      const isHeld = target instanceof Element && target.closest('input, [data-holds-touch]') !== null;
      const isEdge = touch.clientX < EDGE || touch.clientX > window.innerWidth - EDGE;
      from = touches.length === 1 && !isHeld && !isEdge ? { x: touch.clientX, y: touch.clientY } : null;
    };
    const end = ({ changedTouches: [touch] }: TouchEvent): void => {
      if (!from) return;
      const [across, down] = [touch.clientX - from.x, touch.clientY - from.y];
      from = null;
      if (Math.abs(across) < FAR || Math.abs(down) > LEANING * Math.abs(across)) return;
      onSwipe(across < 0 ? 1 : -1);
    };
    const drop = (): void => {
      from = null;
    };
    element.addEventListener('touchstart', begin, { passive: true });
    element.addEventListener('touchend', end);
    element.addEventListener('touchcancel', drop);
    return () => {
      element.removeEventListener('touchstart', begin);
      element.removeEventListener('touchend', end);
      element.removeEventListener('touchcancel', drop);
    };
  }, [place, onSwipe]);
}
