export const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** How far beyond the field angle a lamp's spill is still drawn, in field angles. */
export const SPILL = 1.35;

/** three's cone of a spot light, into whose two cosines the field and the beam angle go for {@link SPOT_BEAM}. */
export function coneOf(
  beamDegrees: number,
  fieldDegrees: number,
): { readonly angle: number; readonly penumbra: number } {
  const angle = Math.min(Math.PI / 2, radians(fieldDegrees) / 2);
  return { angle, penumbra: Math.min(1, Math.max(0, 1 - radians(beamDegrees) / 2 / angle)) };
}

/**
 * The curve of `core/form/beam` in place of three's smooth step between the two cosines of a cone. What is left far
 * beyond the field fades out, so that no light is looped over for a ten-thousandth of its peak.
 */
export const SPOT_BEAM = /* glsl */ `
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
  float middle = max(1e-6, 1.0 - penumbraCosine);
  float tenth = max(middle * 1.05, 1.0 - coneCosine);
  float off = max(0.0, 1.0 - angleCosine);
  if (off > tenth * 1.8 || (off >= 1.0 && tenth < 1.0)) return 0.0;
  float fade = 1.0 - smoothstep(1.4, 1.8, off / tenth);
  return exp2(-pow(off / middle, 1.2005 / log(tenth / middle))) * fade;
}
`;
