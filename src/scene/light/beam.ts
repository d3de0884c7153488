import { beamPower, lightsOnlyAhead } from '../../core/form/beam';

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** How far beyond the field angle a lamp's shadows are still drawn, in field angles. */
export const SPILL = 1.6;

/** three's cone of a spot light, into whose two cosines the field and the beam angle go. */
export function coneOf(
  beamDegrees: number,
  fieldDegrees: number,
): { readonly angle: number; readonly penumbra: number } {
  const angle = Math.min(Math.PI, radians(fieldDegrees) / 2);
  return { angle, penumbra: Math.min(1, Math.max(0, 1 - radians(beamDegrees) / 2 / angle)) };
}

/** So many halvings under its peak a beam ends, in the picture. */
const LEAST_DOUBLINGS = 20;

/** The power of a lamp's curve, and one minus the cosine of how far off its axis it ends; see core's `beamShare`. */
export function curveOf(
  beamDegrees: number,
  fieldDegrees: number,
): { readonly power: number; readonly end: number } {
  const power = beamPower(beamDegrees, fieldDegrees);
  const half = Math.max(1e-6, 1 - Math.cos(radians(beamDegrees) / 2));
  const end = half * LEAST_DOUBLINGS ** (1 / power);
  return { power, end: lightsOnlyAhead({ fieldDegrees }) ? Math.min(1, end) : end };
}
