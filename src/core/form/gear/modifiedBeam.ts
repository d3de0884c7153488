import type { HeadClass } from '../../plan/schema/kit';
import { acos, log, pow, sin } from '../../units/steadyMath';
import type { Modifier } from './modifier';

/** A lamp's light as published: candela on the axis, full angles of half and a tenth of it. */
export interface Beam {
  readonly peakCandela: number;
  readonly beamDegrees: number;
  readonly fieldDegrees: number;
}

/** What a modifier does. Source: common practice, no source */
const DIFFUSION_TRANSMISSION = 0.5;
const LANTERN_TRANSMISSION = 0.7;
const GRID_TRANSMISSION = 0.8;
const GRID_BEAM_DEGREES = 40;
const GRID_FIELD_DEGREES = 60;
const SNOOT_FIELD_DEGREES = 20;

/** Full angles at which cos θ is a half and a tenth: a diffuse area. */
const DIFFUSE_BEAM_DEGREES = 120;
const DIFFUSE_FIELD_DEGREES = (2 * acos(0.1) * 180) / Math.PI;
const ALL_ROUND = 360;
const FLUX_STEPS = 720;

/**
 * Lumens of a lamp with these angles: I(θ) = peak · 2^(−(2θ / beam)^p), p such that a tenth is left at half the field,
 * summed as 2π ∫ I(θ) sin θ dθ. A beam of 360° is even all round, 4π · peak.
 */
export function fluxLumens({ peakCandela, beamDegrees, fieldDegrees }: Beam): number {
  if (beamDegrees >= ALL_ROUND) return 4 * Math.PI * peakCandela;
  const spread = Math.max(fieldDegrees / beamDegrees, 1.05);
  const power = log(log(10) / Math.LN2) / log(spread);
  let sum = 0;
  for (let step = 0; step < FLUX_STEPS; step += 1) {
    const theta = ((step + 0.5) / FLUX_STEPS) * Math.PI;
    const share = (2 * theta * 180) / Math.PI / beamDegrees;
    sum += pow(2, -pow(share, power)) * sin(theta);
  }
  return peakCandela * 2 * Math.PI * sum * (Math.PI / FLUX_STEPS);
}

/**
 * The beam of a head with its modifier. A softbox spreads the lamp's lumens, less what its cloth takes, as a diffuse
 * area does (lumens / π at the axis); a lantern spreads them all round; a grid and a snoot narrow the beam; barn doors
 * leave it, as only its edges are cut.
 */
export function modifiedBeam(headClass: HeadClass, modifier: Modifier | null): Beam {
  const { peakCandela, beamDegrees, fieldDegrees } = headClass;
  switch (modifier) {
    case 'softbox':
      return {
        peakCandela: (fluxLumens(headClass) * DIFFUSION_TRANSMISSION) / Math.PI,
        beamDegrees: DIFFUSE_BEAM_DEGREES,
        fieldDegrees: DIFFUSE_FIELD_DEGREES,
      };
    case 'lantern':
      return {
        peakCandela: (fluxLumens(headClass) * LANTERN_TRANSMISSION) / (4 * Math.PI),
        beamDegrees: ALL_ROUND,
        fieldDegrees: ALL_ROUND,
      };
    case 'grid':
      return {
        peakCandela: peakCandela * GRID_TRANSMISSION,
        beamDegrees: Math.min(beamDegrees, GRID_BEAM_DEGREES),
        fieldDegrees: Math.min(fieldDegrees, GRID_FIELD_DEGREES),
      };
    case 'snoot':
      return {
        peakCandela,
        beamDegrees: Math.min(beamDegrees, SNOOT_FIELD_DEGREES * 0.75),
        fieldDegrees: Math.min(fieldDegrees, SNOOT_FIELD_DEGREES),
      };
    default:
      return { peakCandela, beamDegrees, fieldDegrees };
  }
}
