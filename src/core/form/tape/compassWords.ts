/** The eight winds, clockwise from north. */
const WINDS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;

/** The word of a direction by the compass. */
export type Wind = (typeof WINDS)[number];

/**
 * The nearest of the eight winds for a heading on the plan.
 * @param headingDegrees clockwise from the plan's −z seen from above, any number of turns
 * @param northDegrees where true north lies on the plan, clockwise from its −z
 */
export function windOf(headingDegrees: number, northDegrees: number): Wind {
  const eighths = Math.round((headingDegrees - northDegrees) / 45 - 1e-9);
  return WINDS[((eighths % 8) + 8) % 8];
}
