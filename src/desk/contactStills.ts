import { createStore } from 'zustand/vanilla';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';

/** A picture to be drawn off screen onto a canvas of its own, which takes its size. */
export interface Still {
  readonly plan: Plan;
  /** It need not be in the plan: another lens may be on it. */
  readonly setup: Setup;
  readonly seconds: number;
  readonly canvas: HTMLCanvasElement;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** How many delivered frames it is wide and high: 1 for the frame alone. */
  readonly widths: number;
}

interface Waiting {
  readonly still: Still;
  readonly answer: (drawn: boolean) => void;
}

interface StillsState {
  /** What waits for the stage, first come first served. */
  readonly waiting: readonly Waiting[];
}

/** Pictures that wait for the stage: it draws one at a time, while its own views rest. */
export const stillsStore = createStore<StillsState>()(() => ({ waiting: [] }));

/** Asks the stage for a picture. True once it is on its canvas, false when it was called off before. */
export function askStill(still: Still, signal: AbortSignal): Promise<boolean> {
  return new Promise((resolve) => {
    if (signal.aborted) {
      resolve(false);
      return;
    }
    const entry: Waiting = {
      still,
      answer: (drawn) => {
        signal.removeEventListener('abort', callOff);
        resolve(drawn);
      },
    };
    const callOff = (): void => {
      stillsStore.setState(({ waiting }) => ({ waiting: waiting.filter((each) => each !== entry) }));
      entry.answer(false);
    };
    signal.addEventListener('abort', callOff);
    stillsStore.setState(({ waiting }) => ({ waiting: [...waiting, entry] }));
  });
}

/** Draws a piece of the first picture that waits, with what says whether that was its last; false when none waits. */
export function drawNextStill(drawPiece: (still: Still) => boolean): boolean {
  const [first] = stillsStore.getState().waiting;
  if (!first) return false;
  let done = true;
  let drawn = false;
  try {
    done = drawPiece(first.still);
    drawn = done;
  } finally {
    if (done) {
      stillsStore.setState(({ waiting }) => ({ waiting: waiting.filter((each) => each !== first) }));
      first.answer(drawn);
    }
  }
  return stillsStore.getState().waiting.length > 0;
}
