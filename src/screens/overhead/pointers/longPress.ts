import { distance, type Spot } from '../geometry/spots';

/** How long a finger rests before it asks for more, milliseconds. */
const LONG_MS = 500;
/** A resting finger rolls a little; pixels. */
const ROLL = 10;

/** Waits for a pointer to rest where it was pressed. */
export interface LongPress {
  readonly start: (at: Spot, act: () => void) => void;
  /** Gives the wait up once the pointer has gone farther than a finger rolls. */
  readonly move: (at: Spot) => void;
  readonly stop: () => void;
}

export function longPress(): LongPress {
  let from: Spot = [0, 0];
  let timer: ReturnType<typeof setTimeout> | null = null;
  const stop = (): void => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
  };
  return {
    start: (at, act) => {
      stop();
      from = at;
      timer = setTimeout(() => {
        timer = null;
        act();
      }, LONG_MS);
    },
    move: (at) => {
      if (timer !== null && distance(from, at) > ROLL) stop();
    },
    stop,
  };
}
