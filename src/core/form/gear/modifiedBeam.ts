import type { HeadClass } from '../../plan/schema/kit';
import { type Beam, DIFFUSE_ANGLES, fluxLumens } from '../beam';
import type { Modifier } from './modifier';

/** What a modifier does. Source: common practice, no source */
const DIFFUSION_TRANSMISSION = 0.5;
const LANTERN_TRANSMISSION = 0.7;
const GRID_TRANSMISSION = 0.8;
const GRID_BEAM_DEGREES = 40;
const GRID_FIELD_DEGREES = 60;
const SNOOT_FIELD_DEGREES = 20;

const ALL_ROUND = 360;

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
        ...DIFFUSE_ANGLES,
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
