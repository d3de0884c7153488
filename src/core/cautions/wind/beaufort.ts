/** The lowest wind of each number of the scale, m/s at a tenth, and its name. Source: [beaufort] */
const SCALE: readonly (readonly [metresPerSecond: number, name: string])[] = [
  [0, 'calm'],
  [0.3, 'light air'],
  [1.6, 'light breeze'],
  [3.4, 'gentle breeze'],
  [5.5, 'moderate breeze'],
  [8, 'fresh breeze'],
  [10.8, 'strong breeze'],
  [13.9, 'near gale'],
  [17.2, 'gale'],
  [20.8, 'strong gale'],
  [24.5, 'storm'],
  [28.5, 'violent storm'],
  [32.7, 'hurricane force'],
];

/** A wind on the Beaufort scale. */
export interface Beaufort {
  readonly number: number;
  readonly name: string;
}

/** What a wind, m/s, is on the Beaufort scale, whose bounds are in tenths of a metre a second. Source: [beaufort] */
export function beaufortOf(metresPerSecond: number): Beaufort {
  const tenths = Math.round(metresPerSecond * 10) / 10;
  const number = Math.max(
    0,
    SCALE.findLastIndex(([lowest]) => tenths >= lowest),
  );
  return { number, name: SCALE[number][1] };
}

/** The lowest wind of a number of the Beaufort scale, m/s. Source: [beaufort] */
export const lowestOf = (number: number): number => SCALE[number][0];

/** Metres a second in a statute mile an hour; exact by definition. Source: common practice, no source */
const MILE_AN_HOUR = 0.44704;

/** A speed in miles an hour. */
export const milesPerHour = (metresPerSecond: number): number => metresPerSecond / MILE_AN_HOUR;

/** A speed in metres a second, from miles an hour. */
export const fromMilesPerHour = (miles: number): number => miles * MILE_AN_HOUR;
