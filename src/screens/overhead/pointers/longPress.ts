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
  let waiting: object | null = null;
  const stop = (): void => {
    waiting = null;
  };
  return {
    start: (at, act) => {
      const mine = {};
      waiting = mine;
      from = at;
      const rested = (): void => {
        if (waiting !== mine) return;
        waiting = null;
        act();
      };
      // A page that is behind with its frames has moves of the finger still to hear of: they come with the next one.
      setTimeout(() => requestAnimationFrame(() => setTimeout(rested)), LONG_MS);
    },
    move: (at) => {
      if (distance(from, at) > ROLL) stop();
    },
    stop,
  };
}
