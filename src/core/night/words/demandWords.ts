import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { duration } from '../../units/durations';
import type { Demand } from '../order/demands';
import type { Breach, Schedule } from '../order/schedule';
import { darknessOf } from '../times/darkness';
import { type NightClock, wallTime } from '../times/nightClock';

const setupName = (plan: Plan, id: string | null): string =>
  named(plan.setups.find((setup) => setup.id === id)?.label ?? 'A setup');
const performerName = (plan: Plan, id: string | null): string =>
  named(plan.cast.find((performer) => performer.id === id)?.label ?? 'A performer');

/** Why a setup can never be shot in the light or in the dark that it asks for. */
function neverWords(plan: Plan, kind: Demand['kind'], clock: NightClock): string {
  const dark = `${darknessOf(plan, clock).kind} dusk`;
  return kind === 'after dark'
    ? `it never gets so dark there that night: there is no ${dark}`
    : `it is never light there that night: the sun stays below ${dark}`;
}

/** What a demand asks, to stand in a list: `Wide before dark, by 17:42`. */
export function demandWords(plan: Plan, clock: NightClock, demand: Demand): string {
  const { kind, setupId, performerId, earliest, latest } = demand;
  const name = setupName(plan, setupId);
  const at = (minutes: number): string => wallTime(clock, minutes);
  switch (kind) {
    case 'before dark':
    case 'after dark': {
      if (latest === -Infinity) return `${name} ${kind}, though ${neverWords(plan, kind, clock)}`;
      if (kind === 'before dark')
        return Number.isFinite(latest) ? `${name} before dark, by ${at(latest)}` : `${name} before dark`;
      const span = [
        ...(Number.isFinite(earliest) ? [`from ${at(earliest)}`] : []),
        ...(Number.isFinite(latest) ? [`until ${at(latest)}`] : []),
      ];
      return [`${name} after dark`, ...span].join(', ');
    }
    case 'from':
      return `${name} not before ${at(earliest)}`;
    case 'until':
      return `${name} by ${at(latest)}`;
    case 'in from':
      return `${name} with ${performerName(plan, performerId)}, who is in from ${at(earliest)}`;
    case 'out by':
      return `${name} with ${performerName(plan, performerId)}, who is out by ${at(latest)}`;
    case 'wet once':
      return 'the ground wetted once';
  }
}

/** What an order does not keep, in a sentence. */
export function breachSentence(
  plan: Plan,
  clock: NightClock,
  schedule: Schedule,
  { demand, byMinutes }: Breach,
): string {
  const { kind, setupId, performerId, latest } = demand;
  if (kind === 'wet once')
    return `The ground is to be wetted once, and this order wets it ${schedule.end.wettings} times.`;
  const name = setupName(plan, setupId);
  if (latest === -Infinity) return `${name} is to be shot ${kind}, and ${neverWords(plan, kind, clock)}.`;
  const until = schedule.setups.find((placed) => placed.setupId === setupId)?.until ?? latest;
  const ends = `ends at ${wallTime(clock, until)}, ${duration(byMinutes)} after ${wallTime(clock, latest)}`;
  if (kind === 'out by')
    return `${performerName(plan, performerId)} is out by ${wallTime(clock, latest)}, and ${name} ${ends}.`;
  if (kind === 'before dark') return `${name} is to be shot before dark, and ${ends}.`;
  if (kind === 'after dark') return `${name} is to be shot in the dark, and ${ends}, when the dark ends.`;
  return `${name} is to be shot by ${wallTime(clock, latest)}, and ${ends}.`;
}

/** What cannot be kept together, in a sentence; empty where there is nothing of the kind. */
export function conflictSentence(plan: Plan, clock: NightClock, conflict: readonly Demand[]): string {
  if (conflict.length === 0) return '';
  const all = conflict.map((demand) => demandWords(plan, clock, demand)).join('; ');
  return conflict.length === 1
    ? `No order keeps this: ${all}.`
    : `No order keeps these together: ${all}. Give up one of them.`;
}
