import { add, dot, length, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import type { Eye } from '../form/figure/eyes';

/** Radius of the cornea's front, metres. Source: [purkinje-image] */
export const CORNEA_METRES = 0.0078;
/** Half the width of the iris as it is seen, metres: 11.7 mm across, from memory. */
export const IRIS_METRES = 0.0117 / 2;
/** How far the lids stand open above and below the middle of an eye that looks ahead, metres; from memory. */
const LIDS = { above: 0.004, below: 0.005 } as const;
/** How far behind the front of the cornea the iris seems to stand; from memory. */
const IRIS_BEHIND_METRES = 0.003;
/** Refractive index of the film of tears; from memory. */
export const TEARS_INDEX = 1.336;

/** Where in an eye a source is mirrored. */
export interface Mirroring {
  /** On the cornea. */
  readonly at: Vec3;
  /** Unit normal there. */
  readonly normal: Vec3;
  /** Cosine of the incidence. */
  readonly cosine: number;
}

/** Turns until the normal lies half way between the two ways: each leaves a hundredth of what was left. */
const TURNS = 4;

/**
 * Where the front of an eye, a ball of 7.8 mm, mirrors a place to another: where its normal lies half way between the
 * ways to the two. Null where that is not on the iris between the lids, or faces away.
 *
 * Source: [purkinje-image]
 */
export function mirroring({ apex, forward, right, up }: Eye, source: Vec3, viewer: Vec3): Mirroring | null {
  const centre = subtract(apex, scale(forward, CORNEA_METRES));
  let normal = forward;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const at = add(centre, scale(normal, CORNEA_METRES));
    const half = add(unit(subtract(source, at)), unit(subtract(viewer, at)));
    if (length(half) < 1e-6) return null;
    normal = unit(half);
  }
  const at = add(centre, scale(normal, CORNEA_METRES));
  const cosine = dot(normal, unit(subtract(viewer, at)));
  if (cosine <= 0 || dot(normal, forward) <= 0) return null;
  const [aside, above] = [dot(normal, right) * CORNEA_METRES, dot(normal, up) * CORNEA_METRES];
  if (Math.sqrt(aside * aside + above * above) > IRIS_METRES) return null;
  if (above > LIDS.above || above < -LIDS.below) return null;
  return { at, normal, cosine };
}

/**
 * Width of the image of something in the eye, metres: that of a convex mirror of half the radius for its focal length,
 * m = f ÷ (d + f).
 *
 * Source: [purkinje-image]
 */
export const imageMetres = (sourceMetres: number, awayMetres: number): number =>
  (sourceMetres * CORNEA_METRES) / 2 / (awayMetres + CORNEA_METRES / 2);

/** The middle of the iris as it is seen. */
export const irisMiddle = ({ apex, forward }: Eye): Vec3 =>
  subtract(apex, scale(forward, IRIS_BEHIND_METRES));
