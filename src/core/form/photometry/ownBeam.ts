import type { Distribution } from '../../plan/schema/distribution';
import type { HeadClass } from '../../plan/schema/kit';
import { type Beam, fluxLumens } from '../beam';
import { candelaTable } from './candelaTable';

/** A lamp's light in three numbers, with the table that they were read off where there is one. */
export interface LampBeam extends Beam {
  readonly distribution: Distribution | null;
}

/**
 * The light of a class of head with nothing before it: its table's where it has one; else as published, its candela
 * by a meter's reading where there is one, I = E d².
 *
 * Source: [inverse-square]
 */
export function ownBeam({
  distribution,
  reading,
  peakCandela,
  beamDegrees,
  fieldDegrees,
}: HeadClass): LampBeam {
  if (distribution) {
    const table = candelaTable(distribution);
    return {
      peakCandela: table.peakCandela,
      beamDegrees: table.beamDegrees,
      fieldDegrees: table.fieldDegrees,
      distribution,
    };
  }
  return {
    peakCandela: reading ? reading.lux * reading.metres * reading.metres : peakCandela,
    beamDegrees,
    fieldDegrees,
    distribution: null,
  };
}

/** Lumens of a class of head: its table's, or by its beam and field. */
export const ownLumens = (headClass: HeadClass): number =>
  headClass.distribution ? candelaTable(headClass.distribution).lumens : fluxLumens(ownBeam(headClass));
