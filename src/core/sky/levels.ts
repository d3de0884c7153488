import { RISING_DEGREES } from './horizon';

/** How dark the sky is: sun up, civil, nautical and astronomical twilight, dark. */
export type SkyLevel = 0 | 1 | 2 | 3 | 4;

/** The levels in words. */
export const SKY_WORDS = [
  'sun up',
  'civil twilight',
  'nautical twilight',
  'astronomical twilight',
  'dark',
] as const;

/** How dark it is by the altitude of the sun's middle, degrees, without what the air lifts. Source: [meeus] */
export function skyLevel(altitude: number): SkyLevel {
  if (altitude > RISING_DEGREES) return 0;
  if (altitude > -6) return 1;
  if (altitude > -12) return 2;
  return altitude > -18 ? 3 : 4;
}
