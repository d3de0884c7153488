import { subtract, type Vec3 } from '../form/build/vector';
import type { Whereabouts } from '../form/figure/whereabouts';
import type { Plan } from '../plan/schema/plan';
import { acos, atan2, hypot } from '../units/steadyMath';
import { signedDegrees } from './continuityShots';
import type { Side } from './types';

/** How a face stands to the lens, from straight into it to the back of the head. */
export const EYELINE_WORDS = [
  'into the lens',
  'near',
  'three-quarter',
  'wide',
  'profile',
  'turned away',
] as const;
export type EyelineWord = (typeof EYELINE_WORDS)[number];

/**
 * Up to how many degrees off the lens, seen from above, a look has which name: a near look is a tight eyeline, a wide
 * one a far eyeline; in profile one eye is seen; beyond that the face is turned away.
 *
 * The order of the names is read there; the degrees between them are common practice, no source.
 * Source: [eyeline-compass]
 */
const UP_TO_DEGREES: readonly (readonly [degrees: number, word: EyelineWord])[] = [
  [3, 'into the lens'],
  [15, 'near'],
  [45, 'three-quarter'],
  [75, 'wide'],
  [105, 'profile'],
];

/** A face that points less than this past somebody's eyes looks at them, degrees. Source: common practice, no source */
const AT_SOMEBODY_DEGREES = 15;

const DEGREES = 180 / Math.PI;

/** Where a face looks, as the lens has it. */
export interface Eyeline {
  /** Off the lens as seen from above, degrees, −180 to 180; positive to camera right. */
  readonly offDegrees: number;
  /** How much higher than the lens, degrees. */
  readonly upDegrees: number;
  readonly word: EyelineWord;
  /** Null for a look into the lens. */
  readonly side: Side | null;
  /** Whom the face points at; null for nobody. */
  readonly atId: string | null;
}

const elevation = ([x, y, z]: Vec3): number => atan2(y, hypot(x, z)) * DEGREES;
const bearing = ([x, , z]: Vec3): number => atan2(x, -z) * DEGREES;

/** The name of a look so many degrees off the lens, either way. */
export const eyelineWord = (offDegrees: number): EyelineWord =>
  UP_TO_DEGREES.find(([degrees]) => Math.abs(offDegrees) <= degrees)?.[1] ?? 'turned away';

/** Whether anything of the face is seen. */
export const isFaceSeen = ({ word }: Eyeline): boolean => word !== 'turned away';

/** Whose eyes a gaze comes nearest to; null where it passes all of them. */
function lookedAt(
  place: Whereabouts,
  gaze: Vec3,
  others: readonly (readonly [string, Vec3])[],
): string | null {
  let best: { readonly id: string; readonly degrees: number } | null = null;
  for (const [id, eyes] of others) {
    const [x, y, z] = subtract(eyes, place.eyes);
    const size = hypot(x, y, z);
    if (size === 0) continue;
    const degrees = acos((x * gaze[0] + y * gaze[1] + z * gaze[2]) / size) * DEGREES;
    if (degrees <= AT_SOMEBODY_DEGREES && (!best || degrees < best.degrees)) best = { id, degrees };
  }
  return best?.id ?? null;
}

/**
 * Where somebody looks past a lens: the turn of their gaze off the way from their eyes to the entrance pupil. `others`
 * are those who may be looked at, with their eyes, metres.
 */
export function eyelineOf(
  place: Whereabouts,
  camera: Vec3,
  others: readonly (readonly [id: string, eyes: Vec3])[] = [],
): Eyeline {
  const { gaze } = place;
  const lens = subtract(camera, place.eyes);
  // Who looks at the camera turns clockwise, from above, to look to its left.
  const offDegrees = signedDegrees(bearing(lens) - bearing(gaze));
  const word = eyelineWord(offDegrees);
  return {
    offDegrees,
    upDegrees: elevation(gaze) - elevation(lens),
    word,
    side: word === 'into the lens' ? null : offDegrees > 0 ? 'right' : 'left',
    atId: lookedAt(place, gaze, others),
  };
}

/** The eyes of everybody but one at an instant of a scene, for `eyelineOf`. */
export const eyesOfOthers = (
  cast: Plan['cast'],
  ownId: string,
  placeOf: (id: string) => Whereabouts | null,
): readonly (readonly [string, Vec3])[] =>
  cast.flatMap(({ id }) => {
    const place = id === ownId ? null : placeOf(id);
    return place ? [[id, place.eyes] as const] : [];
  });
