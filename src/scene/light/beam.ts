export const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** How far beyond the field angle a lamp's spill is still drawn, in field angles. */
export const SPILL = 1.35;

/**
 * How strong a lamp is off its axis, 0..1 of the peak: a half at half the beam angle, a tenth at half the field angle
 * (full angles, degrees), as head classes are published. Between and beyond by 2^−u^p, u = (1 − cos θ) ÷ (1 − cos of
 * half the beam angle), the power p chosen so that both hold; our own choice of curve, for lack of the lamp's own.
 */
export function beamShare(beamDegrees: number, fieldDegrees: number, cosine: number): number {
  const half = Math.max(1e-6, 1 - Math.cos(radians(beamDegrees) / 2));
  return 2 ** -(((1 - Math.min(1, cosine)) / half) ** beamPower(beamDegrees, fieldDegrees));
}

/** three's cone of a spot light, into whose two cosines the field and the beam angle go for {@link SPOT_BEAM}. */
export function coneOf(
  beamDegrees: number,
  fieldDegrees: number,
): { readonly angle: number; readonly penumbra: number } {
  const angle = Math.min(Math.PI / 2, radians(fieldDegrees) / 2);
  return { angle, penumbra: Math.min(1, Math.max(0, 1 - radians(beamDegrees) / 2 / angle)) };
}

/** The power of {@link beamShare}, for a shader that has no angles to spare. */
export function beamPower(beamDegrees: number, fieldDegrees: number): number {
  const half = Math.max(1e-6, 1 - Math.cos(radians(beamDegrees) / 2));
  const tenth = Math.max(half * 1.05, 1 - Math.cos(radians(fieldDegrees) / 2));
  return Math.log(Math.log2(10)) / Math.log(tenth / half);
}

/** {@link beamShare} in place of three's smooth step between the two cosines of a cone. */
export const SPOT_BEAM = /* glsl */ `
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
  float middle = max(1e-6, 1.0 - penumbraCosine);
  float tenth = max(middle * 1.05, 1.0 - coneCosine);
  float off = max(0.0, 1.0 - angleCosine);
  if (off > tenth * 1.8) return 0.0;
  float fade = 1.0 - smoothstep(1.4, 1.8, off / tenth);
  return exp2(-pow(off / middle, 1.2005 / log(tenth / middle))) * fade;
}
`;
