import { pow } from '../units/steadyMath';

/** Powers of the sun's altitude in right angles that make the logarithm of the lux, down to an altitude, degrees. Source: [twilight-light] */
const PIECES = [
  { down: -5, powers: [2.88, 21.81, -258.11, -858.36] },
  { down: -12, powers: [2.7, 12.17, -431.69, -1899.83] },
  { down: -18, powers: [13.84, 262.72, 1447.42, 2797.93] },
] as const;
/** Where the first piece begins, at sunset; higher than this the sun itself is there, and it is no night. Source: [twilight-light] */
const SUNSET_DEGREES = -0.8;

/**
 * Lux on level ground from the twilight of a clear sky, by the sun's altitude in degrees: 3.4 at −6, 0.008 at −12,
 * 0.0006 at −18, nothing below; a sun that is up counts as one that sets.
 *
 * Source: [twilight-light]
 */
export function twilightLux(sunAltitude: number): number {
  const altitude = Math.min(SUNSET_DEGREES, sunAltitude);
  const piece = PIECES.find(({ down }) => altitude >= down);
  if (!piece) return 0;
  const x = altitude / 90;
  const [a, b, c, d] = piece.powers;
  return pow(10, a + x * (b + x * (c + x * d)));
}
