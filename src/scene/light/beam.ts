export const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * A spot light's cone for a lamp's beam and field angles (full, degrees): the light ends at the field angle and is
 * half as strong at the beam angle. three lets the intensity rise by a smooth step between the cosines of `angle` and
 * of `angle × (1 − penumbra)`; a smooth step is a half in the middle between the two. Radians.
 */
export function shapeOfBeam(
  beamDegrees: number,
  fieldDegrees: number,
): { readonly angle: number; readonly penumbra: number } {
  const angle = Math.min(Math.PI / 2, radians(fieldDegrees) / 2);
  const half = Math.min(angle * 0.999, radians(beamDegrees) / 2);
  const inner = Math.acos(Math.min(1, 2 * Math.cos(half) - Math.cos(angle)));
  return { angle, penumbra: Math.min(1, Math.max(0.01, 1 - inner / angle)) };
}
