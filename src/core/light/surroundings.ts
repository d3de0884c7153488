import type { Vec3 } from '../form/build/vector';
import { exp } from '../units/steadyMath';
import type { Ambient } from './ambient';

/** Luminance of the night that is seen along a unit vector, cd/m²: as the picture's dome has it. */
export function skyLuminance({ zenith, horizon, ground }: Ambient, [, height]: Vec3): number {
  const glow = exp(-Math.abs(height) * 5);
  return height > 0 ? zenith + (horizon - zenith) * glow : ground + (horizon - ground) * glow * glow;
}

/** Haze over the town, per metre, squared in the exponent, of picture and levels alike. An estimate by eye, no source. */
export const HAZE_PER_METRE = 0.0062;

/** A luminance as it is seen from so many metres off, some of it lost in the haze that glows as the horizon does. */
export function throughHaze({ horizon }: Ambient, luminance: number, metres: number): number {
  const left = exp(-HAZE_PER_METRE * HAZE_PER_METRE * metres * metres);
  return luminance * left + horizon * (1 - left);
}

/** Lux on a wall of the skyline by its unit normal and its height over the deck: sky above, its own street below. */
export function skylineLux({ above, below }: Ambient, [, up]: Vec3, heightMetres: number): number {
  const street = exp(-Math.max(0, heightMetres + 20) / 14);
  const even = below + (above - below) * (0.5 + 0.5 * up);
  return even + (1.6 + 5 * street) * below * (1 - Math.abs(up));
}

/**
 * Mean luminance of a lit window, cd/m²: of the picture's rooms, curtains and lamps, within what a window at night is
 * metered at, EV 7 to 8. Source: [exposure-values]
 */
export const WINDOW_LUMINANCE = 11.5;

/** Luminance of a monitor that is on, cd/m²; an estimate, no source. */
export const SCREEN_LUMINANCE = 22;
