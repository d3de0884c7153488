import type { Plan } from '../../core/plan/schema/plan';
import { RISING_DEGREES, sunFrom } from '../../core/sky/horizon';
import { instantAt } from '../../core/sky/instant';
import { readPreference } from '../preferences';

export type Theme = 'night' | 'day';

/** The theme of an instant at a place: day while the sun is up there. */
export function themeOfHour(
  { latitudeDegrees, longitudeDegrees }: Pick<Plan['place'], 'latitudeDegrees' | 'longitudeDegrees'>,
  milliseconds: number,
): Theme {
  const now = new Date(milliseconds);
  const date = now.toISOString().slice(0, 10);
  const minutes = now.getUTCHours() * 60 + now.getUTCMinutes();
  const sun = sunFrom({ latitudeDegrees, longitudeDegrees }, instantAt(date, minutes, 0));
  return sun.altitude > RISING_DEGREES ? 'day' : 'night';
}

/** Where no plan says a place: on the equator, at the hours of the device's clock. A degree is four minutes. */
const placeOfClock = () => ({
  latitudeDegrees: 0,
  longitudeDegrees: -new Date().getTimezoneOffset() / 4,
});

/** The theme that was chosen on this phone, else that of the hour at the place. */
export function themeNow(place: Plan['place'] | null): Theme {
  return readPreference('crewTheme', ['night', 'day']) ?? themeOfHour(place ?? placeOfClock(), Date.now());
}
