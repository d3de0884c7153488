import type { Before } from '../../plan/schema/before';
import { pow } from '../../units/steadyMath';
import { conversionShare, convertedKelvin } from './conversion';
import type { LampBeam } from './ownBeam';
import { spreadBeam } from './spreadBeam';

/** A lamp's light with what is put before it. */
export interface LampLight {
  readonly beam: LampBeam;
  readonly kelvin: number;
}

/** Stops that a wire scrim takes. Source: common practice, no source */
export const DOUBLE_STOPS = 1;
export const SINGLE_STOPS = 0.5;

/**
 * The share of a lamp's light, as the eye weighs it, that comes through what is before it: gel, 10 to the minus density,
 * diffusion, and scrims of a stop and half a stop.
 *
 * Source: [neutral-density]
 */
export function beforeShare(
  { mired = 0, density = 0, diffusion, doubles = 0, singles = 0 }: Before,
  kelvin: number,
): number {
  const stops = doubles * DOUBLE_STOPS + singles * SINGLE_STOPS;
  return conversionShare(kelvin, mired) * pow(10, -density) * (diffusion?.transmission ?? 1) * pow(2, -stops);
}

function made(light: LampLight, before: Before): LampLight {
  const share = beforeShare(before, light.kelvin);
  const spread = before.diffusion ? spreadBeam(light.beam, before.diffusion.spreadDegrees) : light.beam;
  return {
    beam: { ...spread, peakCandela: spread.peakCandela * share },
    kelvin: convertedKelvin(light.kelvin, before.mired ?? 0),
  };
}

/** Lamps are asked for at every frame; what is before them changes only by hand. */
const kept = new WeakMap<Before, WeakMap<LampBeam, LampLight>>();

/** The beam and white of a lamp behind what is put before it. The same answer for the same records. */
export function throughBefore(beam: LampBeam, kelvin: number, before: Before | undefined): LampLight {
  if (!before) return { beam, kelvin };
  const known = kept.get(before) ?? new WeakMap<LampBeam, LampLight>();
  kept.set(before, known);
  const found = known.get(beam);
  if (found) return found;
  const light = made({ beam, kelvin }, before);
  known.set(beam, light);
  return light;
}
