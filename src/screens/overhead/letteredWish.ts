import type { Plan } from '../../core/plan/schema/plan';
import type { LengthSystem } from '../../core/units/lengths';
import type { BlockingLettering } from './blocking/lines';
import type { LabelWish } from './geometry/labels';
import type { Bounds, Spot } from './geometry/spots';
import { type Lettering, letteringPixels, textWidth } from './measureText';
import type { PowerOnRoof } from './power/powerOnRoof';

/** A name to be placed, with how it is written. */
export interface LetteredWish extends LabelWish {
  readonly style: Lettering;
  readonly quiet: boolean;
  /** Whether it says what is wrong: with a sign before it. */
  readonly fault: boolean;
}

export interface LetteringInput {
  readonly plan: Plan;
  readonly seconds: number;
  readonly setupId: string | null;
  readonly chosenIds: readonly string[];
  readonly lengths: LengthSystem;
  readonly touch: boolean;
  /** From metres on the roof to pixels in the pane. */
  readonly at: (spot: Spot) => Spot;
  readonly perMetre: number;
  /** What is lettered of the blocking; null where another sheet is open. */
  readonly blocking: BlockingLettering | null;
  /** What is lettered of the power; null while it is not looked at. */
  readonly power: PowerOnRoof | null;
}

/** Room that the sign of a fault takes before its words, pixels. */
export const SIGN = 14;

/** A wish with the room that its words take. */
export function lettered(
  input: Pick<LetteringInput, 'touch'>,
  wish: Omit<LetteredWish, 'width' | 'height' | 'inside' | 'quiet' | 'fault'> & {
    readonly inside?: boolean;
    readonly quiet?: boolean;
    readonly fault?: boolean;
  },
): LetteredWish {
  return {
    inside: false,
    quiet: false,
    fault: false,
    ...wish,
    width: textWidth(wish.text, wish.style, input.touch) + 2 + (wish.fault ? SIGN : 0),
    height: letteringPixels(wish.style, input.touch) + (wish.style === 'letter' ? 0 : 2),
  };
}

export const aroundSpot = ([x, y]: Spot, half: number): Bounds => [x - half, y - half, x + half, y + half];
