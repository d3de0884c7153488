import type { Plan } from '../../../core/plan/schema/plan';
import { sunFrom } from '../../../core/sky/horizon';
import { instantInNight } from '../../../core/sky/instant';
import { SKY_WORDS, skyLevel } from '../../../core/sky/levels';
import { type Moon, moonOver } from '../../../core/sky/moonlight';
import { type NightTimes, nightTimes } from '../../../core/sky/night';
import { formatLight, type LightUnit } from '../../../core/units/illuminance';
import { formatNumber, formatSigned, NBSP } from '../../../core/units/numbers';

/** A time by the clock, `17:06`, of minutes after the midnight that a date begins with; `none` for never. */
export function clockText(minutes: number | null): string {
  if (minutes === null) return 'none';
  const whole = Math.round(minutes) % 1440;
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${two(Math.floor(whole / 60))}:${two(whole % 60)}`;
}

/** Hours ahead of universal time: `UTC`, `UTC+1`, `UTC−3.5`. */
export const offsetText = (hours: number): string =>
  hours === 0 ? 'UTC' : `UTC${formatSigned(hours, Number.isInteger(hours) ? 0 : 2)}`;

const WINDS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'];

/** The nearest of eight winds to an azimuth. */
export const windOf = (azimuth: number): string => WINDS[Math.round(azimuth / 45) % 8];

const degrees = (value: number): string => `${formatNumber(value, 0)}°`;

/** What the moon looks like: `full`, `waxing, 62 % lit`. */
export function phaseText({ lit, isWaxing }: Moon): string {
  const share = Math.round(lit * 100);
  if (share >= 99) return 'full';
  if (share <= 1) return 'new';
  return `${isWaxing ? 'waxing' : 'waning'}, ${share}${NBSP}% lit`;
}

/** Where the moon is and what it gives: `waning, 81 % lit, 42° up in the south-east, 0.08 lx`. */
export function moonText(moon: Moon, unit: LightUnit): string {
  const { altitude, azimuth } = moon.seen;
  if (altitude <= 0) return `${phaseText(moon)}, below the horizon`;
  return `${phaseText(moon)}, ${degrees(altitude)} up in the ${windOf(azimuth)}, ${formatLight(moon.lux, unit)}`;
}

/** How far down the sun is at the clock time. */
export function sunText(altitude: number): string {
  const level = skyLevel(altitude);
  if (level === 0) return `up, ${degrees(Math.max(0, altitude))}: this is no night`;
  return `${degrees(-altitude)} down, ${SKY_WORDS[level]}`;
}

/** The sky of a plan's night as it is worked out for a clock. */
export interface SkyNow {
  readonly times: NightTimes;
  readonly moon: Moon;
  readonly sunAltitude: number;
}

/** What stands in the sky at a clock time of the plan's night. */
export function skyNow(place: Plan['place'], time: string, utcOffsetHours: number): SkyNow {
  const instant = instantInNight(place.date, time, utcOffsetHours);
  return {
    times: nightTimes(place, place.date, utcOffsetHours),
    moon: moonOver(place, instant),
    sunAltitude: sunFrom(place, instant).altitude,
  };
}
