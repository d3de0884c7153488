import type { Vec3 } from '../../../core/form/build/vector';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Pixel, WalkView } from '../walkView';

/** Keys that are held while something is dragged. */
export interface Held {
  /** Keeps to one axis, or to whole steps. */
  readonly shift: boolean;
  /** Catches on nothing. */
  readonly alt: boolean;
}

/** What a drag has come to. */
export interface Step {
  readonly plan: Plan;
  readonly words: string;
  /** Lines that say why it rests there, metres. */
  readonly guides: readonly (readonly [Vec3, Vec3])[];
}

/** Something held: where the hand goes, the plan follows. */
export interface Grasp {
  /** Id of the gesture. */
  readonly key: string;
  /** What the history calls it. */
  readonly name: string;
  /** The plan as it would be with the hand at a pixel; null where that leads nowhere, such as at the sky. */
  readonly to: (at: Pixel, view: WalkView, held: Held) => Step | null;
}
