import type { Vec3 } from '../../build/vector';
import type { OwnPart } from '../part';

/** The body of a lamp in its own frame: its middle at the origin, its axis along −z, y up. */
export interface Housing {
  readonly parts: readonly OwnPart[];
  /** What glows, as a part of its own, since a modifier may take its place. */
  readonly glow: readonly OwnPart[];
  /** From the middle to the glowing face, along the axis; metres. */
  readonly faceMetres: number;
  /** From the middle to the front that a modifier is put on; metres. */
  readonly frontMetres: number;
  /** [width, height, depth] of what glows; metres. */
  readonly glowMetres: Vec3;
}

/** Makes a housing of [width, height, depth] metres; `colour` is the tint of what glows, or null. */
export type MakeHousing = (size: Vec3, colour: string | null) => Housing;

/** The way that a lamp looks in its own frame. */
export const FORWARD: Vec3 = [0, 0, -1];

/** The look of a glowing part. */
export const glowing = (colour: string | null) =>
  colour === null ? ({ substance: 'glow' } as const) : ({ substance: 'glow', colour } as const);
