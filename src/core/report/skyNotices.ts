import type { Plan } from '../plan/schema/plan';
import { RISING_DEGREES, sunFrom } from '../sky/horizon';
import { instantInNight } from '../sky/instant';
import { moonOver } from '../sky/moonlight';
import type { Notice } from './types';

/** What a plan says of its sky that cannot be so at its clock time: a sun that is up, a moon that is down. */
export function skyNotices({ place, sky }: Plan): Notice[] {
  if (!sky?.clock) return [];
  const { time, utcOffsetHours } = sky.clock;
  const instant = instantInNight(place.date, time, utcOffsetHours);
  const notices: Notice[] = [];
  if (sunFrom(place, instant).altitude > RISING_DEGREES)
    notices.push({
      where: 'Sky',
      sentence: `The sun is up at ${time}, and no light of day is worked out: levels are those of sunset. Set a time after dusk.`,
    });
  if (sky.moon && moonOver(place, instant).seen.altitude <= 0)
    notices.push({
      where: 'Sky',
      sentence: `The moon is to shine at ${time}, when it is below the horizon. Set another time, or do without it.`,
    });
  return notices;
}
