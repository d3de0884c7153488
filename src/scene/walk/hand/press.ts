import type { Pixel } from '../walkView';
import type { Grasp } from './grasp';
import type { Handle } from './handles';
import type { Hit } from './targets';

/** What a pointer that is down means. */
export type Press =
  /** Something is held and moves once the hand does. */
  | {
      readonly type: 'grasp';
      readonly grasp: Grasp;
      readonly handle: Handle | null;
      /** What was pressed, to be chosen alone where the hand does not move. */
      readonly hit: Hit | null;
      readonly from: Pixel;
      moved: boolean;
    }
  /** A press that chooses when it is let go; if the hand moves, it turns the view. */
  | { readonly type: 'tap'; readonly hit: Hit | null; readonly adding: boolean; readonly from: Pixel }
  /** The other button: a menu where it is let go, unless it turned the view. */
  | { readonly type: 'menu'; readonly hit: Hit | null; readonly from: Pixel }
  /** The picked tool has it. */
  | { readonly type: 'tool'; readonly from: Pixel };

/** Less than this is an unsteady press, not a drag; pixels. */
const SLACK = { mouse: 4, touch: 8 };

/** Whether a hand has gone farther than an unsteady one. */
export const hasMoved = (from: Pixel, at: Pixel, touch: boolean): boolean =>
  Math.hypot(at[0] - from[0], at[1] - from[1]) >= (touch ? SLACK.touch : SLACK.mouse);

/** How far beside a thin thing a press still counts, pixels. */
export const toleranceOf = (touch: boolean): number => (touch ? 14 : 5);
