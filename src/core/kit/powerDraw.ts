import type { Drawn } from '../plan/schema/power';

/** What a screen draws: some 4 W for each square decimetre, at least 10 W. Source: common practice, no source */
export function monitorDraw(diagonalMetres: number): Drawn {
  // 16 to 9: the area is 0.427 of the diagonal squared.
  const squareDecimetres = 42.7 * diagonalMetres * diagonalMetres;
  return { watts: Math.max(10, Math.round(squareDecimetres * 4)), powerFactor: 0.6 };
}

/** What a cart draws: its screens, and receivers, a recorder and chargers. Source: common practice, no source */
export const cartDraw = (monitors: number): Drawn => ({ watts: 120 + 40 * monitors, powerFactor: 0.7 });

/** Lamps of no more watts than this run on batteries of their own unless the plan says otherwise. Source: common practice, no source */
export const OWN_BATTERY_WATTS = 25;

/** Driver and fan of an LED lamp take this share of its watts however low it is dimmed. Source: common practice, no source */
const STANDBY_SHARE = 0.06;

/** The share of its full watts that an LED lamp draws at a dimmer's share of full output; straight, from memory. */
export const dimmedDraw = (dim: number): number => STANDBY_SHARE + (1 - STANDBY_SHARE) * dim;
