import { formatDegrees, formatHeading } from '../units/angles';
import { formatLength, type LengthSystem } from '../units/lengths';
import { formatSigned, NBSP } from '../units/numbers';
import type { CameraReading, PerformerReading } from './cameraReading';

/** A degree with its side, as said on a set: `12.5° frame right`. */
const sided = (degrees: number, positive: string, negative: string): string => {
  const text = formatDegrees(Math.abs(degrees));
  if (Number.parseFloat(text) === 0) return text;
  return `${text} ${degrees > 0 ? positive : negative}`;
};

const signedDegrees = (degrees: number): string => `${formatSigned(degrees, 1)}°`;

/** What is read off a camera, by the name of each line. */
export function cameraWords(reading: CameraReading, lengths: LengthSystem): Readonly<Record<string, string>> {
  return {
    'lens height': formatLength(reading.heightMetres, lengths),
    tilt: signedDegrees(reading.tiltDegrees),
    roll: signedDegrees(reading.rollDegrees),
    bearing: formatHeading(reading.bearingDegrees, 1),
    'focal length': `${Math.round(reading.focalMm * 10) / 10}${NBSP}mm`,
  };
}

/** What is read off a camera, in the order in which it is told. */
export const CAMERA_LINES = ['lens height', 'tilt', 'roll', 'bearing', 'focal length'] as const;

/** What is read off a performer; nothing but dashes for one who is nowhere. */
export function performerWords(
  reading: PerformerReading | null,
  lengths: LengthSystem,
): Readonly<Record<PerformerColumn, string>> {
  if (!reading) return { tape: 'not there', axis: '', 'off axis': '', 'off the face': '' };
  return {
    tape: formatLength(reading.tapeMetres, lengths),
    axis: formatLength(reading.axisMetres, lengths),
    'off axis': sided(reading.offAxisDegrees, 'right', 'left'),
    'off the face': sided(reading.offFaceDegrees, 'right', 'left'),
  };
}

/** What is read off a performer, in the order in which it is told. */
export const PERFORMER_COLUMNS = ['tape', 'axis', 'off axis', 'off the face'] as const;
export type PerformerColumn = (typeof PERFORMER_COLUMNS)[number];
