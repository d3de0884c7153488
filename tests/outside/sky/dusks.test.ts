import { Body, Observer, SearchAltitude } from 'astronomy-engine';
import { expect, test } from 'vitest';
import { RISING_DEGREES, type Spot, sunFrom } from '../../../src/core/sky/horizon';
import { instantAt } from '../../../src/core/sky/instant';
import { type NightTimes, nightTimes } from '../../../src/core/sky/night';
import { cases } from '../../thorough';

/** From pole to pole. */
const PLACES = [
  ['the north pole', 90, 0],
  ['Ny-Ålesund', 78.925, 11.922],
  ['Tromsø', 69.6492, 18.9553],
  ['Reykjavik', 64.1466, -21.9426],
  ['London', 51.5074, -0.1278],
  ['Lisbon', 38.7223, -9.1393],
  ['Tokyo', 35.6762, 139.6503],
  ['Quito', -0.1807, -78.4678],
  ['Sydney', -33.8688, 151.2093],
  ['Ushuaia', -54.8019, -68.303],
  ['Casey', -66.2821, 110.5285],
  ['the south pole', -90, 0],
] as const;

const PASSINGS: readonly (readonly [keyof NightTimes, -1 | 1, number])[] = [
  ['sunset', -1, RISING_DEGREES],
  ['civilDusk', -1, -6],
  ['nauticalDusk', -1, -12],
  ['astronomicalDusk', -1, -18],
  ['astronomicalDawn', 1, -18],
  ['nauticalDawn', 1, -12],
  ['civilDawn', 1, -6],
  ['sunrise', 1, RISING_DEGREES],
];

const DAY_MS = 86_400_000;
/** So many nights, over the whole year. */
const NIGHTS = cases(60);
const STEP_DAYS = Math.floor(363 / NIGHTS);

/** How fast the sun rises or sinks, degrees a second. */
function rateAt(spot: Spot, date: string, minutes: number): number {
  const height = (at: number): number => sunFrom(spot, instantAt(date, at, 0)).altitude;
  return Math.abs(height(minutes + 0.5) - height(minutes - 0.5)) / 60;
}

test.each(PLACES)(
  'sunset, dusks, dawns and sunrise at %s come within five seconds of astronomy-engine through a year, or never as there',
  (_, latitudeDegrees, longitudeDegrees) => {
    const spot = { latitudeDegrees, longitudeDegrees };
    const observer = new Observer(latitudeDegrees, longitudeDegrees, 0);
    for (let k = 0; k < NIGHTS; k += 1) {
      const midnight = Date.UTC(2026, 0, 1) + k * STEP_DAYS * DAY_MS;
      const date = new Date(midnight).toISOString().slice(0, 10);
      const own = nightTimes(spot, date, 0);
      for (const [name, way, degrees] of PASSINGS) {
        const found = SearchAltitude(Body.Sun, observer, way, new Date(midnight + DAY_MS / 2), 1, degrees);
        const ours = own[name];
        expect(ours === null, `${name} of ${date}`).toBe(found === null);
        if (ours === null || found === null) continue;
        const seconds = Math.abs(ours * 60 - (found.date.getTime() - midnight) / 1000);
        // At a pole the sun takes days for a degree: there its height counts, to a thousandth.
        const most = Math.max(5, 0.001 / rateAt(spot, date, ours));
        expect(seconds, `${name} of ${date}`).toBeLessThan(most);
      }
    }
  },
);
