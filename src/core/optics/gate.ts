import { atan } from '../units/steadyMath';
/** The part of a gate that is delivered, and the tangents of half its angles of view. */
export interface Extraction {
  /** Used width and height on sensor or film, millimetres. */
  readonly usedMm: readonly [number, number];
  readonly tanHalfWidth: number;
  readonly tanHalfHeight: number;
}

/**
 * The rectangle that a delivery takes out of a gate. The unsqueezed gate is squeeze·w/h wide; a narrower delivery
 * uses the whole height, a wider one the whole width. tan(half) = (A/2 × squeeze)/f, thin lens at infinity.
 * All lengths in millimetres, aspect = delivered width over height.
 *
 * Source: [field-size]
 */
export function extraction(
  gateMm: readonly [number, number],
  focalMm: number,
  squeeze: number,
  aspect: number,
): Extraction {
  const [gateWidth, gateHeight] = gateMm;
  const narrower = aspect <= (squeeze * gateWidth) / gateHeight;
  const width = narrower ? (aspect * gateHeight) / squeeze : gateWidth;
  const height = narrower ? gateHeight : (squeeze * gateWidth) / aspect;
  return {
    usedMm: [width, height],
    tanHalfWidth: (squeeze * width) / (2 * focalMm),
    tanHalfHeight: height / (2 * focalMm),
  };
}

/** Full angle of view in degrees from the tangent of its half. */
export const angleDegrees = (tanHalf: number): number => (2 * atan(tanHalf) * 180) / Math.PI;

/** Width or height of what the frame takes in at a distance from the entrance pupil, in the distance's unit. */
export const fieldAt = (tanHalf: number, distance: number): number => 2 * tanHalf * distance;
