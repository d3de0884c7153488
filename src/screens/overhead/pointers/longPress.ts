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

/** Frames closer together than this are those of a page that keeps up, milliseconds. */
const CALM_MS = 60;
/** After so long a page that never keeps up is taken at its word, milliseconds. */
const PATIENCE_MS = 1500;

/** A page that is behind with its frames has moves of the finger still to hear of: two quick ones say that it has not. */
function whenCalm(act: () => void): void {
  const since = performance.now();
  let last = since;
  const look = (now: number): void => {
    const isCalm = now - last < CALM_MS && last > since;
    last = now;
    if (isCalm || now - since > PATIENCE_MS) setTimeout(act);
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
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
      setTimeout(() => whenCalm(rested), LONG_MS);
    },
    move: (at) => {
      if (distance(from, at) > ROLL) stop();
    },
    stop,
  };
}
