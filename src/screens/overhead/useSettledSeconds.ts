import { useEffect, useState } from 'react';
import { liveStore } from '../../desk/liveStore';

/** The action's clock while it stands; while it plays, the instant from which it set out. */
export function useSettledSeconds(): number {
  const [seconds, setSeconds] = useState(() => liveStore.getState().seconds);
  useEffect(() => {
    const settle = (): void => {
      const state = liveStore.getState();
      if (!state.playing) setSeconds(state.seconds);
    };
    settle();
    return liveStore.subscribe(settle);
  }, []);
  return seconds;
}
