import type { Plan } from '../../plan/schema/plan';

/** A gust over the mean of the forecast where no gust is entered. Source: [gust-factor] */
const GUST_FACTOR = 1.53;
/** So much more moment is to hold a stand than a gust tips it with. Source: [overturning-safety] */
export const SAFETY = 1.5;

/** The gust that commonly goes with a mean wind, both m/s. Source: [gust-factor] */
export const usualGust = (metresPerSecond: number): number => metresPerSecond * GUST_FACTOR;

/** The strongest gust that is forecast, m/s, never below the mean; null without a forecast. Source: [gust-factor] */
export function gustOf({ cautions }: Pick<Plan, 'cautions'>): number | null {
  const wind = cautions?.wind;
  if (!wind) return null;
  return Math.max(wind.metresPerSecond, wind.gustMetresPerSecond ?? usualGust(wind.metresPerSecond));
}
