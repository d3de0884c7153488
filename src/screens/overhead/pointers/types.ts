import type { Choosing } from '../../../desk/selecting';
import type { HitShape } from '../geometry/hits';
import type { Bounds, Spot } from '../geometry/spots';
import type { Dragged, Target } from '../targets';
import type { SheetView } from '../useSheetView';

/** A pointer over the sheet: where, with what, and which keys are held. */
export interface SheetPointer {
  /** Pixels of the pane. */
  readonly at: Spot;
  /** Metres on the roof. */
  readonly spot: Spot;
  /** Pixels of the window. */
  readonly clientX: number;
  readonly clientY: number;
  readonly touch: boolean;
  /** Whether a button or a finger is down. */
  readonly pressed: boolean;
  readonly shift: boolean;
  readonly alt: boolean;
  /** Control, or the command key. */
  readonly command: boolean;
  /** The event's own time, milliseconds. */
  readonly when: number;
  /** How far on the roof the least area to hit reaches at this scale, metres. */
  readonly reachMetres: number;
}

/** What takes the pointer from the press until it is let go. */
export interface PointerUse {
  readonly down: (pointer: SheetPointer) => void;
  readonly move: (pointer: SheetPointer) => void;
  readonly up: (pointer: SheetPointer) => void;
  /** Drops whatever was begun. */
  readonly cancel: () => void;
}

/** A sentence beside what is pressed, and where that is, pixels of the pane. */
export interface Told {
  readonly sentence: string;
  readonly at: Spot;
}

/** What the sheet lends to its pointers. */
export interface PointerOptions {
  readonly sheet: SheetView;
  readonly svg: SVGSVGElement | null;
  /** Whether a finger on the empty ground scrolls the page instead of panning the sheet. */
  readonly scrolls: boolean;
  readonly hit: (at: Spot, touch: boolean) => HitShape<Target> | null;
  /** Ids of the items that lie in a rectangle of the pane, pixels. */
  readonly within: (rectangle: Bounds) => readonly string[];
  readonly choose: (target: Target | null, how: Choosing) => void;
  readonly drag: (dragged: Dragged | null) => void;
  /** Shows the rectangle that chooses what lies in it. */
  readonly frame: (rectangle: Bounds | null) => void;
  /** Says beside the pointer why something does not move. */
  readonly tell: (told: Told | null) => void;
}

/** Less than this is an unsteady press, not a drag; pixels. */
export const SLACK = { mouse: 4, touch: 8 };

export const slackOf = ({ touch }: SheetPointer): number => (touch ? SLACK.touch : SLACK.mouse);

/** Where an event happened, in pixels of the pane. */
export function spotIn(svg: Element, event: { readonly clientX: number; readonly clientY: number }): Spot {
  const { left, top } = svg.getBoundingClientRect();
  return [event.clientX - left, event.clientY - top];
}
