import { useEffect, useRef, useState } from 'react';
import type { Spot } from '../../overhead/geometry/spots';

/** Wheel travel of one notch, pixels, and how much nearer it comes. */
const NOTCH = 100;
const NOTCH_FACTOR = 1.2;
/** A wheel that has been still for so long rests, milliseconds. */
const REST = 150;

/**
 * Zooms by the wheel over a drawing. The page would scroll as well: hence no listener of React's, which may not stop that.
 * @returns whether the wheel is being turned
 */
export function useWheel(element: SVGSVGElement | null, zoom: (at: Spot, factor: number) => void): boolean {
  const [isTurning, setTurning] = useState(false);
  const latest = useRef(zoom);
  latest.current = zoom;
  useEffect(() => {
    if (!element) return;
    let rest: ReturnType<typeof setTimeout> | undefined;
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      setTurning(true);
      clearTimeout(rest);
      rest = setTimeout(() => setTurning(false), REST);
      const box = element.getBoundingClientRect();
      const factor = NOTCH_FACTOR ** (-event.deltaY / NOTCH);
      latest.current([event.clientX - box.left, event.clientY - box.top], factor);
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => {
      clearTimeout(rest);
      element.removeEventListener('wheel', onWheel);
    };
  }, [element]);
  return isTurning;
}
