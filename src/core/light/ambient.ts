import type { Vec3 } from '../form/build/vector';

/** Linear Rec. 709 red, green, blue. */
type Colour = readonly [number, number, number];

/**
 * The night over a town, cd/m², by colour: low cloud lit from below, brightest near the horizon, and what the streets
 * send up. Estimates of the size that is common over large towns under cloud. Source: common practice, no source.
 */
export const SKY_LUMINANCE = {
  zenith: [0.055, 0.06, 0.105],
  horizon: [0.55, 0.42, 0.42],
  ground: [0.1, 0.075, 0.055],
} as const satisfies Record<string, Colour>;

/** Illuminance on level ground from the sky and on the underside of things from the streets, lux, by colour. */
export const SKY_LUX = {
  above: [0.55, 0.6, 0.85],
  below: [0.7, 0.5, 0.32],
} as const satisfies Record<string, Colour>;

/** Luminance of a linear colour: the middle row of the Rec. 709 matrix to XYZ, from memory. */
const luminanceOf = ([red, green, blue]: Colour): number => 0.2126 * red + 0.7152 * green + 0.0722 * blue;

const ABOVE = luminanceOf(SKY_LUX.above);
const BELOW = luminanceOf(SKY_LUX.below);

/**
 * Lux of the glow of sky and streets on a surface, by its unit normal: that from above on what faces up, that from
 * below on what faces down, in between by the share of each that it sees. Nothing stands in its way: it comes from all
 * round. The moon is not in it.
 */
export const ambientLux = (normal: Vec3): number => BELOW + (ABOVE - BELOW) * (0.5 + 0.5 * normal[1]);
