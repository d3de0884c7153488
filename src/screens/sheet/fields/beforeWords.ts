import { lampFace } from '../../../core/form/gear/lampFace';
import { convertedKelvin } from '../../../core/form/photometry/conversion';
import { beforeShare, throughBefore } from '../../../core/form/photometry/throughBefore';
import { CONVERSION_GELS, DIFFUSION_SHEETS } from '../../../core/kit/gels';
import type { Lamp } from '../../../core/plan/cues';
import type { Before, Diffusion } from '../../../core/plan/schema/before';
import type { HeadClass } from '../../../core/plan/schema/kit';
import { formatNumber, formatSigned, NBSP } from '../../../core/units/numbers';
import { formatStopCount } from '../../../core/units/stops';
import { stopsOfShare } from './lightLoss';

const COUNTS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const counted = (count: number, one: string): string =>
  `${COUNTS[count] ?? String(count)} ${one}${count === 1 ? '' : 's'}`;

/** `two doubles and a single`, `one single`; empty for none. */
export function scrimWords(doubles: number, singles: number): string {
  const parts = [
    doubles > 0 ? counted(doubles, 'double') : null,
    singles > 0 ? (doubles > 0 && singles === 1 ? 'a single' : counted(singles, 'single')) : null,
  ];
  return parts.filter((part) => part !== null).join(' and ');
}

/** The usual gel of that shift, if it is one. */
export const gelOf = (mired: number) => CONVERSION_GELS.find((gel) => gel.mired === mired);

/** The usual sheet that is like that, if it is one. */
export const sheetOf = ({ transmission, spreadDegrees }: Diffusion) =>
  DIFFUSION_SHEETS.find(
    (sheet) => sheet.transmission === transmission && sheet.spreadDegrees === spreadDegrees,
  );

/** `2.1 stops`, `next to nothing`, `all of it`: what a share of the light loses. */
export function takenText(share: number): string {
  if (share <= 0) return 'all of it';
  const stops = -stopsOfShare(share);
  return stops < 0.05 ? 'next to nothing' : formatStopCount(stops);
}

/** The white of a lamp, behind its gel to the nearest 10 K: `4180 K`. */
export function whiteText(kelvin: number, { mired = 0 }: Before = {}): string {
  const white = mired === 0 ? kelvin : Math.round(convertedKelvin(kelvin, mired) / 10) * 10;
  return `${formatNumber(white, 0)}${NBSP}K`;
}

/** The share of a lamp's light along its axis that is left behind what is before it: diffusion takes more there than it stops. */
export function leftOnAxis(own: HeadClass, lamp: Lamp): number {
  const { beam } = lampFace(own, lamp.kind === 'head' ? (lamp.modifier ?? null) : null);
  if (beam.peakCandela === 0) return beforeShare(lamp.before ?? {}, own.kelvin);
  return throughBefore(beam, own.kelvin, lamp.before).beam.peakCandela / beam.peakCandela;
}

/** What is before a lamp, and what that takes: `full blue, one double, less 2.9 stops`; null for nothing. */
export function beforeText(own: HeadClass, lamp: Lamp): string | null {
  const { mired = 0, density = 0, diffusion, doubles = 0, singles = 0 }: Before = lamp.before ?? {};
  const parts = [
    mired === 0 ? '' : (gelOf(mired)?.label ?? `${formatSigned(mired, 0)}${NBSP}mired`),
    density === 0 ? '' : `ND${NBSP}${formatNumber(density, 2)}`,
    diffusion ? `${sheetOf(diffusion)?.label ?? ''} diffusion`.trim() : '',
    scrimWords(doubles, singles),
  ].filter((part) => part !== '');
  if (parts.length === 0) return null;
  const where = diffusion ? ' on its axis' : '';
  return `${parts.join(', ')}, less ${takenText(leftOnAxis(own, lamp))}${where}`;
}
