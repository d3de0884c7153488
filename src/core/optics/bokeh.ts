import type { Lens } from '../plan/schema/kit';
import { acos } from '../units/steadyMath';
import type { FocusGlass } from './focus';

const METRES_PER_MM = 0.001;

/**
 * Height of the disc that a point out of focus draws, as the tangent that it spans before the lens: the entrance pupil
 * f/N high, seen from the point against the plane in focus, (f/N) · |1/s − 1/d|. Distances in metres from the entrance
 * pupil; Infinity is allowed. A squeezed lens has a pupil f/(sN) wide, so its disc is 1/squeeze as wide as high. On
 * the gate it is the same disc, this tangent times the image's distance f s/(s − f).
 *
 * Source: [depth-of-field]
 */
export function blurTangent(
  { focalMm, stop }: Pick<FocusGlass, 'focalMm' | 'stop'>,
  focusMetres: number,
  metres: number,
): number {
  return ((focalMm * METRES_PER_MM) / stop) * Math.abs(1 / focusMetres - 1 / metres);
}

/** The second circle that light off the axis has to pass, in radii of the entrance pupil as it is stopped down. */
export interface Rim {
  readonly radius: number;
  /** How far it seems shifted across the pupil where the image circle ends; in between in proportion. */
  readonly shift: number;
}

/** At the edge of the image circle the rim stands this far out from the middle of the pupil, in radii wide open. */
const RIM_AT_THE_EDGE = 0.5;
/** No front counts as more times as wide as the pupil than this. */
const WIDEST_FRONT = 3;

/**
 * Mechanical vignetting: seen from off the axis the rim of the lens slides across the pupil and cuts its disc to a
 * cat's eye. The rim is the front's, over the widest pupil f/N; without a front diameter it just lets the widest
 * pupil through on the axis. At the edge of the image circle its edge stands half a radius from the pupil's middle,
 * so that two stops closed nothing is cut any more, as is common of lenses for the cinema; common practice, no source.
 */
export function rimOf(
  lens: Pick<Lens, 'widestStop' | 'frontDiameterMm'>,
  focalMm: number,
  stop: number,
): Rim {
  const open = Math.min(1, lens.widestStop / stop);
  const front = lens.frontDiameterMm === undefined ? 1 : (lens.frontDiameterMm * lens.widestStop) / focalMm;
  const ratio = Math.min(WIDEST_FRONT, Math.max(1, front));
  return { radius: ratio / open, shift: (ratio - RIM_AT_THE_EDGE) / open };
}

/** Share of the pupil's disc, of radius 1, that lies within a circle of that radius whose middle is that far away. */
export function openShare(radius: number, away: number): number {
  if (away + 1 <= radius) return 1;
  if (away >= radius + 1) return 0;
  if (away + radius <= 1) return radius * radius;
  const pupilAngle = acos((away * away + 1 - radius * radius) / (2 * away));
  const rimAngle = acos((away * away + radius * radius - 1) / (2 * away * radius));
  const kite = (-away + 1 + radius) * (away + 1 - radius) * (away - 1 + radius) * (away + 1 + radius);
  return (pupilAngle + radius * radius * rimAngle - 0.5 * Math.sqrt(Math.max(0, kite))) / Math.PI;
}
