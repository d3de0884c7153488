import { SHADOW_EDGE_METRES } from '../../light/shadowEdge';
import { formatDegrees } from '../../units/angles';
import { formatLength, type LengthSystem } from '../../units/lengths';
import { formatShare } from '../../units/shares';
import type { GivenToFace } from './lightNow';

/** A way so near to ahead, behind or level, degrees, is called that. */
const STRAIGHT_DEGREES = 0.5;

function sideWords(bearingDegrees: number): string {
  const off = Math.abs(bearingDegrees);
  if (off < STRAIGHT_DEGREES) return 'straight ahead';
  if (off > 180 - STRAIGHT_DEGREES) return 'straight behind';
  return `${formatDegrees(off, 0)} to their own ${bearingDegrees < 0 ? 'left' : 'right'}`;
}

const riseWords = (degrees: number): string =>
  Math.abs(degrees) < STRAIGHT_DEGREES
    ? 'level'
    : `${formatDegrees(Math.abs(degrees), 0)} ${degrees < 0 ? 'down' : 'up'}`;

/**
 * `38 %, 42° to their own left, 25° up, 4.20 m`: a lamp's share of the light on a face, from behind of that on its edge,
 * and where it comes from.
 */
export const givenWords = (
  { share, plane, bearingDegrees, elevationDegrees, metres }: GivenToFace,
  lengths: LengthSystem,
): string =>
  [
    `${formatShare(share)}${plane === 'edge' ? ' on the edge' : ''}`,
    sideWords(bearingDegrees),
    riseWords(elevationDegrees),
    formatLength(metres, lengths),
  ].join(', ');

/** `an edge 0.50 m before the face throws a shadow 0.12 m soft`: how soft a key is. */
export const shadowEdgeWords = (metres: number, lengths: LengthSystem): string =>
  `an edge ${formatLength(SHADOW_EDGE_METRES, lengths)} before the face throws a shadow ${formatLength(metres, lengths)} soft`;
