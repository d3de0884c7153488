import type { Plan } from '../../core/plan/schema/plan';

/** What has been done on the page so far. */
export interface Doings {
  readonly plan: Plan;
  /** Steps in the history. */
  readonly edits: number;
  readonly playing: boolean;
  /** Whether a setup other than the plan's first is looked through. */
  readonly looksElsewhere: boolean;
  readonly readKeys: boolean;
}

export const HINT_IDS = ['deck', 'camera', 'stand', 'drag', 'strip', 'play', 'keys'] as const;
export type HintId = (typeof HINT_IDS)[number];

/** One short line that says the next act; it goes once the act is done. */
export interface Hint {
  readonly id: HintId;
  readonly words: string;
  /** Whether it makes sense now. */
  readonly fits: (doings: Doings) => boolean;
  readonly done: (doings: Doings) => boolean;
}

/** More than this and it is a manual. */
export const MOST_HINTS = 5;

const hasDeck = ({ plan }: Doings): boolean => plan.pieces.some(({ kind }) => kind === 'deck');
const hasCamera = ({ plan }: Doings): boolean => plan.setups.length > 0;
const hasStand = ({ plan }: Doings): boolean => plan.gear.some(({ kind }) => kind === 'stand');

/** In the order of the work. */
export const HINTS: readonly Hint[] = [
  {
    id: 'deck',
    words: 'Pick deck on the Set sheet, press its corners on the roof, and end on the first one.',
    fits: () => true,
    done: hasDeck,
  },
  {
    id: 'stand',
    words: 'Pick a lamp on the Set sheet, then press where it stands.',
    fits: hasDeck,
    done: hasStand,
  },
  {
    id: 'camera',
    words: 'Place a camera: the frame shows what it sees.',
    fits: hasDeck,
    done: hasCamera,
  },
  {
    id: 'drag',
    words: 'Drag a lamp stand on the roof: the findings follow your hand.',
    fits: (doings) => hasStand(doings) && hasCamera(doings),
    done: ({ edits }) => edits > 0,
  },
  {
    id: 'strip',
    words: 'Press a setup along the foot to look through it.',
    fits: ({ plan }) => plan.setups.length > 1,
    done: ({ looksElsewhere }) => looksElsewhere,
  },
  {
    id: 'play',
    words: 'Space plays the move of this setup.',
    fits: ({ plan }) => plan.setups.some(({ move }) => move.keys.length > 1) || plan.cast.length > 0,
    done: ({ playing }) => playing,
  },
  {
    id: 'keys',
    words: 'Press ? to see all keys.',
    fits: () => true,
    done: ({ readKeys }) => readKeys,
  },
];

/**
 * The hint to show now, or null. What is done already is never hinted at, nor what was put away, and no more than
 * five in all.
 */
export function nextHint(doings: Doings, gone: readonly HintId[]): Hint | null {
  if (gone.length >= MOST_HINTS) return null;
  return HINTS.find((hint) => !gone.includes(hint.id) && hint.fits(doings) && !hint.done(doings)) ?? null;
}
