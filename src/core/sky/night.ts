import { RISING_DEGREES, type Spot, sunFrom } from './horizon';
import { instantAt } from './instant';
import { moonFrom } from './moon';

/** When the sun and the moon pass a height, minutes after the midnight that the date begins with; null for never. */
export interface NightTimes {
  readonly sunset: number | null;
  readonly civilDusk: number | null;
  readonly nauticalDusk: number | null;
  readonly astronomicalDusk: number | null;
  readonly astronomicalDawn: number | null;
  readonly nauticalDawn: number | null;
  readonly civilDawn: number | null;
  readonly sunrise: number | null;
  readonly moonrise: number | null;
  readonly moonset: number | null;
}

const NOON = 720;
const NEXT_NOON = NOON + 1440;
/** Between two looks nothing rises and sets again. */
const LOOK_MINUTES = 10;
/** A second: as finely as a time is found. */
const FINE_MINUTES = 1 / 60;

/** The first time between two noons at which a height is passed, upwards or downwards. */
function passing(heightAt: (minutes: number) => number, height: number, isUp: boolean): number | null {
  const isPast = (minutes: number): boolean => heightAt(minutes) > height === isUp;
  for (let start = NOON; start < NEXT_NOON; start += LOOK_MINUTES) {
    if (isPast(start) || !isPast(start + LOOK_MINUTES)) continue;
    let [before, after] = [start, start + LOOK_MINUTES];
    while (after - before > FINE_MINUTES) {
      const middle = (before + after) / 2;
      if (isPast(middle)) after = middle;
      else before = middle;
    }
    return (before + after) / 2;
  }
  return null;
}

/**
 * The night that begins on a date, from noon to noon by a clock so many hours ahead of universal time: sunset, the
 * three dusks (the sun 6, 12, 18 degrees down) and dawns, and the moon, at sea level.
 *
 * Source: [meeus]
 */
export function nightTimes(spot: Spot, date: string, utcOffsetHours: number): NightTimes {
  const sun = (minutes: number) => sunFrom(spot, instantAt(date, minutes, utcOffsetHours)).altitude;
  const moon = (minutes: number) => moonFrom(spot, instantAt(date, minutes, utcOffsetHours)).altitude;
  return {
    sunset: passing(sun, RISING_DEGREES, false),
    civilDusk: passing(sun, -6, false),
    nauticalDusk: passing(sun, -12, false),
    astronomicalDusk: passing(sun, -18, false),
    astronomicalDawn: passing(sun, -18, true),
    nauticalDawn: passing(sun, -12, true),
    civilDawn: passing(sun, -6, true),
    sunrise: passing(sun, RISING_DEGREES, true),
    moonrise: passing(moon, RISING_DEGREES, true),
    moonset: passing(moon, RISING_DEGREES, false),
  };
}
