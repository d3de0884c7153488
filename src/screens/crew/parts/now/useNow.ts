import { useEffect, useState } from 'react';
import type { Night } from '../../../../core/night/types';
import { isInNight, minuteAt } from './nightMinutes';

/** So often the device's clock is looked at, milliseconds. */
const EVERY = 20_000;

/** The minute of the night by the device's clock; null where it is not that night. */
export function useNow(night: Night | null): number | null {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const look = (): void => setNow(Date.now());
    const timer = setInterval(look, EVERY);
    // A phone out of a pocket has slept through its timers.
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, []);
  if (!night) return null;
  const minutes = minuteAt(night.clock, now);
  return isInNight(night, minutes) ? minutes : null;
}
