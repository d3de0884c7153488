import type { DarkFrom } from '../../core/night/dusk/darkFrom';
import { lightThroughDusk } from '../../core/night/dusk/lightThroughDusk';
import type { PackingLine } from '../../core/night/packing/types';
import { utcOf, wallTime } from '../../core/night/times/nightClock';
import type { Night } from '../../core/night/types';
import type { Plan } from '../../core/plan/schema/plan';

/** What else a document of a night may hold. */
export interface NightExtras {
  readonly packing: readonly PackingLine[];
  /** An order that is suggested, with its night; null where none was asked for. */
  readonly suggested: { readonly night: Night; readonly isExact: boolean; readonly conflict: string } | null;
  readonly darkFrom: readonly DarkFrom[] | null;
}

/** Infinity is no JSON. */
const orNull = (value: number): number | null => (Number.isFinite(value) ? value : null);

/** One night in its order. Minutes are minutes of the night, by the clock at noon; `time` is what clocks show, `utc` universal time. */
function nightPart(plan: Plan, night: Night): object {
  const { clock, schedule, call, wrapBy, drop, work } = night;
  const at = (minutes: number | null) =>
    minutes === null || !Number.isFinite(minutes)
      ? null
      : { minutes, time: wallTime(clock, minutes), utc: utcOf(clock, minutes) };
  return {
    order: schedule.setups.map(({ setupId }) => setupId),
    call: at(call),
    meal: schedule.meal && { from: at(schedule.meal.from), until: at(schedule.meal.until) },
    lastShot: at(schedule.lastShot),
    wrap: at(schedule.wrap),
    wrapBy: at(wrapBy),
    marginMinutes: wrapBy === null ? null : wrapBy - schedule.wrap,
    changingMinutes: schedule.end.changing,
    wettings: schedule.end.wettings,
    setups: schedule.setups.map(({ job, setupId, changes, from, shotFrom, until }) => ({
      id: setupId,
      label: plan.setups[job].label,
      from: at(from),
      shotFrom: at(shotFrom),
      until: at(until),
      changes: changes && {
        minutes: changes.minutes,
        list: changes.list,
        turnDegrees: changes.turnDegrees,
        carriedMetres: changes.carriedMetres,
        lampIds: changes.lampIds,
      },
    })),
    stretches: schedule.stretches.map(({ doing, job, from, until }) => ({
      doing,
      setupId: job === null ? null : work.jobs[job].setupId,
      from: at(from),
      until: at(until),
    })),
    breaches: schedule.breaches.map(({ demand, byMinutes }) => ({
      kind: demand.kind,
      setupId: demand.setupId,
      performerId: demand.performerId,
      latest: at(demand.latest),
      byMinutes: orNull(byMinutes),
    })),
    drop: drop && {
      setupIds: drop.jobs.map((job) => work.jobs[job].setupId),
      wrap: at(drop.schedule.wrap),
    },
    notes: night.notes,
  };
}

/** A night as a document, numbers not rounded; null for what there is not. */
export function nightDocument(plan: Plan, night: Night, extras: NightExtras): object {
  const { clock, darkness, sky } = night;
  const { suggested, packing, darkFrom } = extras;
  const change = clock.change;
  return {
    standclearNight: 1,
    title: plan.title,
    place: plan.place,
    clock: {
      date: clock.date,
      utcOffsetHours: clock.utcOffsetHours,
      saidBy: clock.saidBy,
      change: change && { ...change, utc: utcOf(clock, change.atMinutes) },
    },
    sky,
    dark: {
      kind: darkness.kind,
      from: darkness.span && orNull(darkness.span.from),
      until: darkness.span && orNull(darkness.span.until),
      isEver: darkness.span !== null,
    },
    ...nightPart(plan, night),
    suggested: suggested && {
      isExact: suggested.isExact,
      conflict: suggested.conflict === '' ? null : suggested.conflict,
      ...nightPart(plan, suggested.night),
    },
    dusk: lightThroughDusk(plan, 1),
    darkFrom,
    packing,
  };
}
