import type { NightTimes } from '../../sky/night';

/** A moment of the sky in a night. */
export interface SkyEvent {
  readonly id: string;
  readonly name: string;
  /** Minute of the night. */
  readonly minutes: number;
}

const NAMES: readonly (readonly [keyof NightTimes, string])[] = [
  ['sunset', 'Sunset'],
  ['civilDusk', 'Civil dusk'],
  ['nauticalDusk', 'Nautical dusk'],
  ['astronomicalDusk', 'Astronomical dusk'],
  ['moonrise', 'Moonrise'],
  ['moonset', 'Moonset'],
  ['astronomicalDawn', 'Astronomical dawn'],
  ['nauticalDawn', 'Nautical dawn'],
  ['civilDawn', 'Civil dawn'],
  ['sunrise', 'Sunrise'],
];

/** What happens in the sky of a night, in its order; what does not happen is left out. */
export const skyEvents = (times: NightTimes): readonly SkyEvent[] =>
  NAMES.flatMap(([key, name]): SkyEvent[] => {
    const minutes = times[key];
    return minutes === null ? [] : [{ id: name.toLowerCase().replace(' ', '-'), name, minutes }];
  }).toSorted((a, b) => a.minutes - b.minutes);
