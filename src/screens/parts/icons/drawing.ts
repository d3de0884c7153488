/**
 * An icon: a field of 24 units, lines of 1.5, square ends, mitred corners, and one ink point: the lamp, the grip,
 * the pupil, the end of the cable. Nothing else is filled.
 */
export interface Drawing {
  /** The lines, as path data. */
  readonly lines: string;
  /** Circles drawn as lines: middle and radius. */
  readonly rings?: readonly (readonly [number, number, number])[];
  /** The ink point: middle and radius. */
  readonly point: readonly [number, number, number];
}
