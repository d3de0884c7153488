import type { Vec3 } from '../form/build/vector';
import { exp } from '../units/steadyMath';
import { SKY_LUMINANCE, SKY_LUX } from './ambient';

/** Luminance of a linear colour: the middle row of the Rec. 709 matrix to XYZ, from memory. */
const luminanceOf = ([red, green, blue]: readonly [number, number, number]): number =>
  0.2126 * red + 0.7152 * green + 0.0722 * blue;

const ZENITH = luminanceOf(SKY_LUMINANCE.zenith);
const HORIZON = luminanceOf(SKY_LUMINANCE.horizon);
const STREETS = luminanceOf(SKY_LUMINANCE.ground);
const FROM_SKY = luminanceOf(SKY_LUX.above);
const FROM_STREET = luminanceOf(SKY_LUX.below);

/** Luminance of the night that is seen along a unit vector, cd/m²: as the picture's dome has it. */
export function skyLuminance([, height]: Vec3): number {
  const glow = exp(-Math.abs(height) * 5);
  return height > 0 ? ZENITH + (HORIZON - ZENITH) * glow : STREETS + (HORIZON - STREETS) * glow * glow;
}

/** Haze over the town, per metre, squared in the exponent: as the picture has it. An estimate by eye, no source. */
const HAZE_PER_METRE = 0.0062;

/** A luminance as it is seen from so many metres off, some of it lost in the haze that glows as the horizon does. */
export function throughHaze(luminance: number, metres: number): number {
  const left = exp(-HAZE_PER_METRE * HAZE_PER_METRE * metres * metres);
  return luminance * left + HORIZON * (1 - left);
}

/** Lux on a wall of the skyline by its unit normal and its height over the deck: sky above, its own street below. */
export function skylineLux([, up]: Vec3, heightMetres: number): number {
  const street = exp(-Math.max(0, heightMetres + 20) / 14);
  const even = FROM_STREET + (FROM_SKY - FROM_STREET) * (0.5 + 0.5 * up);
  return even + (1.6 + 5 * street) * FROM_STREET * (1 - Math.abs(up));
}

/**
 * Mean luminance of a lit window, cd/m²: of the picture's rooms, curtains and lamps, within what a window at night is
 * metered at, EV 7 to 8. Source: [exposure-values]
 */
export const WINDOW_LUMINANCE = 11.5;

/** Luminance of a monitor that is on, cd/m²; an estimate, no source. */
export const SCREEN_LUMINANCE = 22;
