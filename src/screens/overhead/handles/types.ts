import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import type { Spot } from '../geometry/spots';

/** Where a handle has been pulled to. */
export interface Pull {
  /** The place on the roof, metres. */
  readonly to: Spot;
  /** How far the pointer went from where it took hold, pixels: right and down. */
  readonly moved: Spot;
  /** Whether it keeps to whole steps. */
  readonly straight: boolean;
  /** Whether nothing catches or rounds. */
  readonly free: boolean;
  /** How far things catch, metres. */
  readonly reachMetres: number;
}

/** What can be pulled: where it is, how it is drawn, what it does. The plan that an edit takes is the one before the pull. */
export interface Handle {
  /** Tells it from the others of what is chosen, also while the plan changes under it. */
  readonly key: string;
  readonly kind:
    | 'turn'
    | 'raise'
    | 'corner'
    | 'insert'
    | 'slide'
    | 'width'
    | 'aim'
    | 'arm'
    | 'length'
    | 'row'
    | 'mark'
    | 'bend'
    | 'press';
  /** What it does to what, for a screen reader: `Turn lamp stand 2`. */
  readonly name: string;
  /** Where it is, metres. */
  readonly at: Spot;
  /** Off that place by so many pixels: what has no place of its own stands beside the thing. */
  readonly off?: Spot;
  /** Where the line that leads to it begins, metres. */
  readonly lead?: Spot;
  /** Its value as it is read, beside it; none where the place says it all. */
  readonly figure?: string;
  readonly pull: (plan: Plan, pull: Pull) => Plan;
  /** One press of an arrow key, by an amount of its own: right and down, 1 or −1 each; ten times that with Shift. */
  readonly step: (plan: Plan, way: Spot) => Plan;
  /** Takes a value that was typed; a sentence says what would work instead. */
  readonly typed?: (plan: Plan, text: string, lengths: LengthSystem) => Plan | string;
  /** What a press does that does not pull. */
  readonly press?: (plan: Plan) => Plan;
  /** What Delete does, and where `doubled` says so a double press, too. */
  readonly remove?: (plan: Plan) => Plan;
  readonly doubled?: boolean;
}

/** What handles are made from: the plan as it is seen, and how it is read. */
export interface HandleInput {
  readonly plan: Plan;
  readonly ids: readonly string[];
  readonly setupId: string | null;
  readonly seconds: number;
  readonly lengths: LengthSystem;
  /** Pixels to the metre. */
  readonly perMetre: number;
  readonly at: (spot: Spot) => Spot;
  /** The one mark that is chosen. */
  readonly markId?: string | null;
  /** The wet area that is chosen, where no item is. */
  readonly areaId?: string | null;
  /** The setup that marks are cheated for: then `plan` is as it plays them, and `master` is not. */
  readonly onlyIn?: string | null;
  readonly master?: Plan;
  /** Whether a handle is being pulled: what was there when it was taken stays. */
  readonly pulling?: boolean;
}

/** One press of a key, metres. */
export const STEP_METRES = 0.05;
