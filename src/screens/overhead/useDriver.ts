import { useEffect, useLayoutEffect, useRef } from 'react';
import { liveStore } from '../../desk/liveStore';

/**
 * Runs `draw` after every render and again whenever the action's clock moves: what moves with the clock writes its
 * attributes itself, so that playing does not render.
 */
export function useDriver(draw: () => void): void {
  const latest = useRef(draw);
  useLayoutEffect(() => {
    latest.current = draw;
    draw();
  });
  useEffect(
    () =>
      liveStore.subscribe((state, before) => {
        if (state.seconds !== before.seconds) latest.current();
      }),
    [],
  );
}
