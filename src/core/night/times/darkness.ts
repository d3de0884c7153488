import type { DarkKind } from '../../plan/schema/night';
import type { Plan } from '../../plan/schema/plan';
import { sunFrom } from '../../sky/horizon';
import { type NightTimes, nightTimes } from '../../sky/night';
import { instantOf, type NightClock } from './nightClock';

/** When a night is dark, minutes of the night; infinite where there is no end to it between the two noons. */
export interface Darkness {
  readonly kind: DarkKind;
  /** Null for a night that never gets so dark. */
  readonly span: { readonly from: number; readonly until: number } | null;
  readonly isPolar: boolean;
}

/** The sun's height at which each twilight ends, degrees. Source: [meeus] */
const DOWN: Readonly<Record<DarkKind, number>> = { civil: -6, nautical: -12, astronomical: -18 };
const NOON = 720;

/** Where a plan says nothing of it. Source: common practice, no source */
const USUAL: DarkKind = 'nautical';

const kept = new WeakMap<Plan['place'], { readonly utcOffsetHours: number; readonly times: NightTimes }>();

/** When sun and moon pass their heights in a plan's night; found once for a place and a clock. */
export function timesOfSky({ place }: Pick<Plan, 'place'>, { date, utcOffsetHours }: NightClock): NightTimes {
  const known = kept.get(place);
  if (known?.utcOffsetHours === utcOffsetHours && place.date === date) return known.times;
  const times = nightTimes(place, date, utcOffsetHours);
  kept.set(place, { utcOffsetHours, times });
  return times;
}

/**
 * When a plan's night is dark: from the dusk that it names to that dawn. Near the poles it may never be, or all the time.
 */
export function darknessOf(plan: Pick<Plan, 'place' | 'night'>, clock: NightClock): Darkness {
  const kind = plan.night?.dark ?? USUAL;
  const times = timesOfSky(plan, clock);
  const [dusk, dawn] = [times[`${kind}Dusk`], times[`${kind}Dawn`]];
  if (dusk === null && dawn === null) {
    const isDark = sunFrom(plan.place, instantOf(clock, NOON)).altitude < DOWN[kind];
    return { kind, span: isDark ? { from: -Infinity, until: Infinity } : null, isPolar: true };
  }
  const from = dusk ?? -Infinity;
  return { kind, span: { from, until: dawn !== null && dawn > from ? dawn : Infinity }, isPolar: false };
}

/** How far from noon by its clock the sun of a place stands highest before the clock looks wrong, hours; estimated, no source. */
const ODD_NOON_HOURS = 3;
const LOOK_MINUTES = 15;

/** When the sun stands highest, minutes of the night about the noon of its date. */
function highestSun(plan: Pick<Plan, 'place'>, clock: NightClock): number {
  let [best, height] = [NOON, -Infinity];
  for (let minutes = 0; minutes < 1440; minutes += LOOK_MINUTES) {
    const { altitude } = sunFrom(plan.place, instantOf(clock, minutes));
    if (altitude > height) [best, height] = [minutes, altitude];
  }
  return best;
}

/** By how many hours the sun's noon is off that of the clock, where that is more than any zone has; else null. */
export function oddNoonHours(plan: Pick<Plan, 'place'>, clock: NightClock): number | null {
  // At the poles the sun has no noon.
  if (Math.abs(plan.place.latitudeDegrees) > 89) return null;
  const hours = (highestSun(plan, clock) - NOON) / 60;
  return Math.abs(hours) > ODD_NOON_HOURS ? hours : null;
}
