import { type RefObject, useCallback, useEffect, useLayoutEffect, useRef } from 'react';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { liveStore } from '../../../desk/liveStore';
import { type Scale, scrollFor, secondsAt, withinReach, xOf } from './scale';

/** One press of a button, and one notch of a wheel. */
const STEP = 1.6;
const NOTCH = 1.0018;

interface Anchor {
  readonly seconds: number;
  readonly underPixel: number;
}

/** Makes the scale of the timeline larger or smaller, about a moment that stays where it is. */
export function useZoom(
  scroller: RefObject<HTMLDivElement | null>,
  names: number,
  scale: Scale,
): { readonly zoomIn: () => void; readonly zoomOut: () => void; readonly fit: () => void } {
  const anchor = useRef<Anchor | null>(null);
  const latest = useRef(scale);
  latest.current = scale;

  const zoomAbout = useCallback(
    (factor: number, pixel: number | null): void => {
      const outer = scroller.current;
      if (!outer) return;
      const now = latest.current;
      const width = outer.clientWidth - names;
      // About the playhead where it is in sight, else about the middle.
      const head = xOf(now, liveStore.getState().seconds) - outer.scrollLeft;
      const under = pixel ?? (head >= 0 && head <= width ? head : width / 2);
      const wanted = withinReach(now.pixelsPerSecond * factor, now.until, width);
      anchor.current = { seconds: secondsAt(now, outer.scrollLeft + under), underPixel: under };
      const isAll = wanted <= withinReach(0, now.until, width) * 1.0001;
      blockingStore.setState({ pixelsPerSecond: isAll ? null : wanted });
    },
    [scroller, names],
  );

  const { pixelsPerSecond, until } = scale;
  useLayoutEffect(() => {
    const outer = scroller.current;
    const held = anchor.current;
    anchor.current = null;
    if (outer && held)
      outer.scrollLeft = scrollFor({ pixelsPerSecond, until }, held.seconds, held.underPixel);
  }, [scroller, pixelsPerSecond, until]);

  useEffect(() => {
    const outer = scroller.current;
    if (!outer) return;
    const pixelOf = (clientX: number): number => clientX - outer.getBoundingClientRect().left - names;
    const wheel = (event: WheelEvent): void => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      zoomAbout(NOTCH ** -event.deltaY, pixelOf(event.clientX));
    };
    let spread: number | null = null;
    const touches = (event: TouchEvent): void => {
      const [a, b] = event.touches;
      if (!a || !b) {
        spread = null;
        return;
      }
      event.preventDefault();
      const now = Math.max(24, Math.abs(a.clientX - b.clientX));
      if (spread !== null) zoomAbout(now / spread, pixelOf((a.clientX + b.clientX) / 2));
      spread = now;
    };
    // Not passive: the page itself must not grow under a pinch or a wheel with Control.
    outer.addEventListener('wheel', wheel, { passive: false });
    outer.addEventListener('touchstart', touches, { passive: false });
    outer.addEventListener('touchmove', touches, { passive: false });
    outer.addEventListener('touchend', touches);
    return () => {
      outer.removeEventListener('wheel', wheel);
      outer.removeEventListener('touchstart', touches);
      outer.removeEventListener('touchmove', touches);
      outer.removeEventListener('touchend', touches);
    };
  }, [scroller, names, zoomAbout]);

  return {
    zoomIn: () => zoomAbout(STEP, null),
    zoomOut: () => zoomAbout(1 / STEP, null),
    fit: () => blockingStore.setState({ pixelsPerSecond: null }),
  };
}
