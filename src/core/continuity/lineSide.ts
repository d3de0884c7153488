import type { Vec3 } from '../form/build/vector';
import { whereabouts } from '../form/figure/whereabouts';
import { stateAt } from '../optics/camera';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { atan2, hypot } from '../units/steadyMath';
import type { Side } from './types';

/** Nearer to the line than this the faces are met frontally and either side cuts: degrees. Source: common practice, no source */
export const ON_THE_LINE_DEGREES = 5;
/** Two who stand nearer than this make no line, metres. Source: common practice, no source */
export const TOGETHER_METRES = 0.15;

const DEGREES = 180 / Math.PI;

/** How a camera lies to the line of a pair at an instant. */
export interface LineReading {
  /** Square to the line, metres; positive where the first of the pair is at frame left, seen from the camera. */
  readonly metres: number;
  /** Between the line and the sight from each of the pair to the camera, 0 to 90 degrees. */
  readonly anglesDegrees: readonly [number, number];
}

/** The acute angle between a line's direction and the way from one of its ends to a camera, seen from above, degrees. */
const angleAt = (metres: number, along: number): number =>
  metres === 0 && along === 0 ? 0 : atan2(Math.abs(metres), Math.abs(along)) * DEGREES;

/**
 * How a camera lies to the line through two places, seen from above; null where they lie together and there is no line.
 * The line is the vertical plane through the two: what its sides are does not ask who looks where.
 */
export function lineReading(first: Vec3, second: Vec3, camera: Vec3): LineReading | null {
  const [dx, dz] = [second[0] - first[0], second[2] - first[2]];
  const apart = hypot(dx, dz);
  if (apart < TOGETHER_METRES) return null;
  const [cx, cz] = [camera[0] - first[0], camera[2] - first[2]];
  const metres = (dx * cz - dz * cx) / apart;
  const along = (dx * cx + dz * cz) / apart;
  return { metres, anglesDegrees: [angleAt(metres, along), angleAt(metres, apart - along)] };
}

/** On which side of the frame the first of the pair is from there. */
export const sideOf = ({ metres }: LineReading): Side => (metres >= 0 ? 'left' : 'right');

/**
 * How a setup's camera lies to the line of a pair at an instant of the action's clock, with the setup's own marks; null
 * where one of the two is nowhere, or both are at one place.
 */
export function lineReadingAt(
  scene: Plan,
  setup: Setup,
  pair: readonly [string, string],
  seconds: number,
): LineReading | null {
  const [first, second] = pair.map((id) => {
    const performer = scene.cast.find((each) => each.id === id);
    return performer ? whereabouts(performer, scene, seconds) : null;
  });
  if (!first || !second) return null;
  return lineReading(first.at, second.at, stateAt(scene, setup, seconds).position);
}
