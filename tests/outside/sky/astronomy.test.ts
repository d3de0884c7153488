import {
  Body,
  Equator,
  Horizon,
  Illumination,
  Observer,
  SearchAltitude,
  SearchRiseSet,
} from 'astronomy-engine';
import { describe, expect, test } from 'vitest';
import { sunFrom } from '../../../src/core/sky/horizon';
import { type Instant, instantAt } from '../../../src/core/sky/instant';
import { moonFrom } from '../../../src/core/sky/moon';
import { moonOver } from '../../../src/core/sky/moonlight';
import { nightTimes } from '../../../src/core/sky/night';

/** Against astronomy-engine 2.1.19, whose positions are good to an arc minute. */
const PLACES = [
  ['Lisbon', 38.7223, -9.1393],
  ['Arvela', 41.15, -8.63],
  ['Sydney', -33.8688, 151.2093],
  ['Reykjavik', 64.1466, -21.9426],
  ['Quito', -0.1807, -78.4678],
] as const;
const EPOCH = Date.UTC(2000, 0, 1, 12);
const dateOf = (instant: Instant): Date => new Date(EPOCH + instant * 86_400_000);

/** Two days and some hours apart from 2020 on, for thirty years. */
const INSTANTS = Array.from({ length: 150 }, (_, k) => instantAt('2020-01-03', k * 104_321, 0));

function seen(body: Body, instant: Instant, latitude: number, longitude: number) {
  const observer = new Observer(latitude, longitude, 0);
  const place = Equator(body, dateOf(instant), observer, true, true);
  return Horizon(dateOf(instant), observer, place.ra, place.dec);
}

describe.each(PLACES)('over %s', (_, latitudeDegrees, longitudeDegrees) => {
  const spot = { latitudeDegrees, longitudeDegrees };

  test.each([
    ['sun', Body.Sun, sunFrom, 0.005],
    ['moon', Body.Moon, moonFrom, 0.05],
  ] as const)('the %s stands where it should, for thirty years', (_name, body, from, tolerance) => {
    let worst = 0;
    for (const instant of INSTANTS) {
      const own = from(spot, instant);
      const other = seen(body, instant, latitudeDegrees, longitudeDegrees);
      const level = Math.cos((other.altitude * Math.PI) / 180);
      const aside = ((own.azimuth - other.azimuth + 540) % 360) - 180;
      worst = Math.max(worst, Math.abs(own.altitude - other.altitude), Math.abs(aside) * level);
    }
    expect(worst).toBeLessThan(tolerance);
  });

  test('sunset, dusks, moonrise and moonset come when they should', () => {
    const observer = new Observer(latitudeDegrees, longitudeDegrees, 0);
    for (const date of ['2026-01-15', '2026-03-20', '2026-11-27']) {
      const noon = dateOf(instantAt(date, 720, 0));
      const minutes = (time: { date: Date } | null): number | null =>
        time && time.date.getTime() - noon.getTime() < 86_400_000
          ? (time.date.getTime() - dateOf(instantAt(date, 0, 0)).getTime()) / 60_000
          : null;
      const own = nightTimes(spot, date, 0);
      const dusk = (degrees: number) => minutes(SearchAltitude(Body.Sun, observer, -1, noon, 1.5, degrees));
      const pairs = [
        [own.sunset, minutes(SearchRiseSet(Body.Sun, observer, -1, noon, 1.5))],
        [own.civilDusk, dusk(-6)],
        [own.nauticalDusk, dusk(-12)],
        [own.astronomicalDusk, dusk(-18)],
        [own.moonrise, minutes(SearchRiseSet(Body.Moon, observer, 1, noon, 1.5))],
        [own.moonset, minutes(SearchRiseSet(Body.Moon, observer, -1, noon, 1.5))],
      ];
      for (const [ours, theirs] of pairs) {
        expect(ours === null).toBe(theirs === null);
        // A minute, as tables print it.
        if (ours !== null && theirs !== null) expect(Math.abs(ours - theirs)).toBeLessThan(1);
      }
    }
  });
});

test('as much of the moon is lit as should be', () => {
  for (const instant of INSTANTS) {
    const { lit } = moonOver({ latitudeDegrees: 0, longitudeDegrees: 0 }, instant);
    expect(Math.abs(lit - Illumination(Body.Moon, dateOf(instant)).phase_fraction)).toBeLessThan(0.004);
  }
});

test('civil dusk and dark come when a published table has them', () => {
  // Kyiv, 24 August 2026, summer time: sunset 19:59, dusk 20:34, nautical 21:18, night 22:06.
  // Source: the example in the manual of suncalc 2.0.2, minutes cut off.
  const { sunset, civilDusk, nauticalDusk, astronomicalDusk } = nightTimes(
    { latitudeDegrees: 50.45, longitudeDegrees: 30.52 },
    '2026-08-24',
    3,
  );
  const found = [sunset, civilDusk, nauticalDusk, astronomicalDusk].map((minutes) =>
    Math.floor(minutes ?? 0),
  );
  expect(found).toEqual([19 * 60 + 59, 20 * 60 + 34, 21 * 60 + 18, 22 * 60 + 6]);
});

test('the sun stands where the example of a solar position algorithm has it', () => {
  // 17 October 2003, 12:30:30 at UTC−7: azimuth 194.340241°, elevation 39.872046° without the air.
  // Source: NREL/TP-560-34302, example, program output quoted in public repositories.
  const { altitude, azimuth } = sunFrom(
    { latitudeDegrees: 39.742476, longitudeDegrees: -105.1786 },
    instantAt('2003-10-17', 12 * 60 + 30.5, -7),
  );
  expect(azimuth).toBeCloseTo(194.34, 1);
  expect(altitude).toBeCloseTo(39.872, 1);
});
