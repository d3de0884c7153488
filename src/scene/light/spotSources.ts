import { DIFFUSE_ANGLES, isAllRound } from '../../core/form/beam';
import { dot, length, subtract, type Vec3 } from '../../core/form/build/vector';
import { lampShare } from '../../core/form/photometry/lampShare';
import type { LampForm } from '../../core/form/types';
import type { GivingFace } from '../../core/light/clothLight';
import type { CandelaRows, Rows } from './candelaRows';
import { NO_ROWS } from './candelaRows';
import { colourOfLamp, type LinearColour, ofUnitLuminance } from './kelvin';

/** A lamp or a lit cloth as the picture has it: one place that shines into a cone, and how large it is. */
export interface SpotSource {
  readonly position: Vec3;
  readonly direction: Vec3;
  readonly candela: number;
  /** Of unit luminance. */
  readonly colour: LinearColour;
  readonly beamDegrees: number;
  readonly fieldDegrees: number;
  readonly rows: Rows;
  /** How far along its width and its height the four places are that stand for its face. */
  readonly spreadMetres: readonly [number, number];
  /** Of a disc as large as its face. */
  readonly radiusMetres: number;
  /** What is nearer to it than this throws no shadow. */
  readonly nearMetres: number;
  /** 0..1 of its candela towards a place. */
  readonly shareTowards: (place: Vec3) => number;
}

/** A lamp's own housing and yoke end before this; barn doors begin at the face. */
const CLEAR_METRES = 0.25;
const DOORS_METRES = 0.03;

/** The mean square of a side's places is a third of its half's square, of a disc's a quarter of its radius's. */
const spreadOf = (width: number, height: number, isRound: boolean): readonly [number, number] => {
  const share = isRound ? 1 / 4 : 1 / Math.sqrt(12);
  return [width * share, height * share];
};
const radiusOf = (width: number, height: number): number => Math.sqrt((width * height) / Math.PI);

/** Whether a lamp is drawn as a point that shines alike all round. */
export const isPoint = (lamp: LampForm): boolean => isAllRound(lamp) && lamp.distribution === null;

/** A lamp with a beam. `hasDoors`: barn doors, which stand in its own light; `isRound`: its face. */
export function spotOfLamp(
  lamp: LampForm,
  rows: CandelaRows,
  hasDoors: boolean,
  isRound: boolean,
): SpotSource {
  const { position, direction, peakCandela, beamDegrees, fieldDegrees, distribution, sizeMetres } = lamp;
  const share = lampShare(lamp);
  return {
    position,
    direction,
    candela: peakCandela,
    colour: colourOfLamp(lamp),
    beamDegrees,
    fieldDegrees,
    rows: distribution ? rows.rowsOf(distribution) : NO_ROWS,
    spreadMetres: spreadOf(sizeMetres[0], sizeMetres[1], isRound),
    radiusMetres: radiusOf(sizeMetres[0], sizeMetres[1]),
    nearMetres: hasDoors ? DOORS_METRES : CLEAR_METRES,
    shareTowards: (place) => {
      const way = subtract(place, position);
      return share(way, dot(way, direction) / Math.max(1e-6, length(way)));
    },
  };
}

/** A face of a bounce or a frame, an even diffuser in the mean colour of the lamps that light it. */
export function spotOfCloth(
  { middle, normal, candela, size, byItem }: GivingFace,
  rows: CandelaRows,
  colours: ReadonlyMap<string, LinearColour>,
): SpotSource {
  const sum = [0, 0, 0];
  for (const [itemId, lux] of byItem)
    colours.get(itemId)?.forEach((channel, k) => {
      sum[k] += channel * lux;
    });
  return {
    position: middle,
    direction: normal,
    candela,
    colour: ofUnitLuminance([sum[0], sum[1], sum[2]]),
    ...DIFFUSE_ANGLES,
    rows: rows.diffuser,
    spreadMetres: spreadOf(size[0], size[1], false),
    radiusMetres: radiusOf(size[0], size[1]),
    nearMetres: DOORS_METRES,
    shareTowards: (place) => {
      const way = subtract(place, middle);
      return Math.max(0, dot(way, normal) / Math.max(1e-6, length(way)));
    },
  };
}

/** Illuminance at a place that faces the source, lux, were nothing in the way. */
export function luxAt(source: SpotSource, place: Vec3): number {
  const metres = Math.max(0.5, length(subtract(place, source.position)));
  return (source.candela / metres ** 2) * source.shareTowards(place);
}
