import type { Vec3 } from '../../form/build/vector';
import type { Outside } from '../../sight/margin';

/** A named part of an item, and the place on it that is spoken of, metres. */
export interface PlaceOnPart {
  readonly itemId: string;
  readonly part: string;
  readonly at: Vec3;
}

/** What a frame takes in at one distance from the lens: its corners from the upper left on, clockwise, metres. */
export type FrameCorners = readonly [Vec3, Vec3, Vec3, Vec3];

interface Explained {
  readonly setupId: string;
  readonly itemId: string;
  /** On the action's clock. */
  readonly seconds: number;
  /** The entrance pupil. */
  readonly eye: Vec3;
}

/** A line of sight from the lens through the frame. */
interface Seen extends Explained {
  /** Where the line of sight ends: on the part that shows, is hidden, or comes nearest to the frame line. */
  readonly end: PlaceOnPart;
  /** Where the line crosses the frame, 0..1 from its left and top edges; beyond that range outside of it. */
  readonly frameAt: readonly [x: number, y: number];
  /** The frame at the distance at which the line first meets something. */
  readonly frame: FrameCorners;
}

/** Why an item has its verdict in a setup at one instant. */
export type Explanation =
  | (Seen & { readonly kind: 'showing' })
  | (Seen & {
      readonly kind: 'mirrored';
      /** Where the line turns, and by what it is turned. */
      readonly mirror: PlaceOnPart;
      /** Between the line and the mirror's face, the same on both sides. */
      readonly angleDegrees: number;
    })
  | (Seen & { readonly kind: 'covered'; readonly coverer: PlaceOnPart })
  | (Seen & { readonly kind: 'outside'; readonly outside: Outside | null })
  | (Explained & { readonly kind: 'behind' });
