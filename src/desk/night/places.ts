import { setNight } from '../../core/plan/edits/setNight';
import { setPlace } from '../../core/plan/edits/setPlace';
import { setSky } from '../../core/plan/edits/setSky';
import type { Plan } from '../../core/plan/schema/plan';
import { zoneClock } from '../../exchange/zoneClock';
import { zoneOffsetHours } from '../sky/zone';

/** The plan with the clocks of its own time zone, for its night and for the sky over its action; the same where the zone is unknown. */
export function withZoneClock(plan: Plan): Plan {
  const { timeZone, date } = plan.place;
  const clock = zoneClock(timeZone, date);
  if (!clock) return plan;
  const { utcOffsetHours, clockChange } = clock;
  const timed = setNight(plan, { patch: { utcOffsetHours, clockChange: clockChange ?? undefined } });
  const { sky } = timed;
  if (!sky?.clock) return timed;
  const { time } = sky.clock;
  const offset = zoneOffsetHours(timeZone, date, time) ?? utcOffsetHours;
  return setSky(timed, { sky: { ...sky, clock: { time, utcOffsetHours: offset } } });
}

/** Whether a plan's night goes by the clocks of its time zone; null where nobody here knows the zone. */
export function goesByZone(plan: Plan): boolean | null {
  return zoneClock(plan.place.timeZone, plan.place.date) ? withZoneClock(plan) === plan : null;
}

/** The plan at another place, with the clocks of the zone there. */
export const atPlace = (plan: Plan, place: Partial<Plan['place']>): Plan =>
  withZoneClock(setPlace(plan, { patch: { place } }));

const PATIENCE_MS = 20_000;
/** To a ten-thousandth of a degree, eleven metres: nearer nobody's sunset is. */
const rounded = (degrees: number): number => Math.round(degrees * 10_000) / 10_000;

const REFUSED: Readonly<Record<number, string>> = {
  1: 'This browser was told not to say where it is. Allow it in the browser, or type latitude and longitude.',
  2: 'This device does not know where it is. Type latitude and longitude, or choose a city.',
  3: 'This device did not find out where it is in time. Try again, or choose a city.',
};

/** Where this device is, or a sentence that says why it does not tell. The browser asks first. */
export function devicePlace(): Promise<Partial<Plan['place']> | string> {
  return new Promise((resolve) => {
    if (!('geolocation' in navigator)) {
      resolve(REFUSED[2]);
      return;
    }
    navigator.geolocation.getCurrentPosition(
      ({ coords }) =>
        resolve({
          label: 'where this device was',
          latitudeDegrees: rounded(coords.latitude),
          longitudeDegrees: rounded(coords.longitude),
          timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
        }),
      ({ code }) => resolve(REFUSED[code] ?? REFUSED[2]),
      { timeout: PATIENCE_MS, maximumAge: 600_000 },
    );
  });
}
