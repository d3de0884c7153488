import type { HeadClass } from '../../plan/schema/kit';
import { DIFFUSE_ANGLES } from '../beam';
import { type LampBeam, ownBeam, ownLumens } from '../photometry/ownBeam';
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
 * leave it, as only its edges are cut. A measured table holds for what shines bare or through barn doors; behind the
 * others its lumens, its peak and its angles go on.
 */
export function modifiedBeam(headClass: HeadClass, modifier: Modifier | null): LampBeam {
  const own = ownBeam(headClass);
  const { peakCandela, beamDegrees, fieldDegrees } = own;
  const distribution = null;
  switch (modifier) {
    case 'softbox':
      return {
        peakCandela: (ownLumens(headClass) * DIFFUSION_TRANSMISSION) / Math.PI,
        ...DIFFUSE_ANGLES,
        distribution,
      };
    case 'lantern':
      return {
        peakCandela: (ownLumens(headClass) * LANTERN_TRANSMISSION) / (4 * Math.PI),
        beamDegrees: ALL_ROUND,
        fieldDegrees: ALL_ROUND,
        distribution,
      };
    case 'grid':
      return {
        peakCandela: peakCandela * GRID_TRANSMISSION,
        beamDegrees: Math.min(beamDegrees, GRID_BEAM_DEGREES),
        fieldDegrees: Math.min(fieldDegrees, GRID_FIELD_DEGREES),
        distribution,
      };
    case 'snoot':
      return {
        peakCandela,
        beamDegrees: Math.min(beamDegrees, SNOOT_FIELD_DEGREES * 0.75),
        fieldDegrees: Math.min(fieldDegrees, SNOOT_FIELD_DEGREES),
        distribution,
      };
    default:
      return own;
  }
}
