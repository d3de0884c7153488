import type { Plan } from '../../../../core/plan/schema/plan';
import type { Mend } from '../../../../core/power/mend/types';
import type { NightHours } from '../../../../core/power/nightHours';
import type { CircuitFlow } from '../../../../core/power/ratings';
import type { Feeding } from '../../../../core/power/types';
import { listed } from '../../../../core/report/listed';
import {
  ampWords,
  hourWords,
  litreWords,
  nameIn,
  namesIn,
  voltAmpereWords,
  voltWords,
  wattWords,
} from '../../../../core/report/power/powerWords';
import type { CableReport, LoadReport, SourceReport } from '../../../../core/report/power/types';
import { minutesOf } from '../../../../core/sky/instant';
import { formatLength, type LengthSystem } from '../../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../../core/units/numbers';
import { formatShare } from '../../../../core/units/shares';
import { wireText } from '../../fields/wireText';
import { clockText } from '../../sky/words';

/** From where the hours of a night are: after the number in its field. */
export const HOURS_FROM: Readonly<Record<NightHours['from'], string>> = {
  said: 'as typed',
  'call to wrap': 'from call to wrap',
  'dusk to dawn': 'from dusk to dawn',
  usual: 'as a night usually has',
};

/** What a source gives, of what it gives for long: `1.1 kVA of 2.8 kW, 39 %`. */
export function sourceText({ continuousWatts, voltAmperes, share, legAmps, volts }: SourceReport): string {
  if (continuousWatts === null || share === null)
    return `${listed(legAmps.map(ampWords))} at ${voltWords(volts)}`;
  return `${voltAmpereWords(voltAmperes)} of ${wattWords(continuousWatts)}, ${formatShare(share)}`;
}

/** Beneath: watts, legs, what is lost in its cords, what starting takes. */
export function sourceDetail(source: SourceReport): string {
  const { watts, lossWatts, legAmps, volts, continuousWatts, startWatts, assumed, kind } = source;
  const legs =
    legAmps.length > 1
      ? `legs ${listed(legAmps.map(ampWords))} at ${voltWords(volts)}`
      : continuousWatts === null
        ? null
        : `${ampWords(legAmps[0] ?? 0)} at ${voltWords(volts)}`;
  return [
    wattWords(watts),
    legs,
    lossWatts >= 0.5 ? `${wattWords(lossWatts)} of it heats cords` : null,
    startWatts > watts * 1.01 ? `${wattWords(startWatts)} as the hardest load starts` : null,
    assumed ? (kind === 'outlet' ? 'numbers as is usual' : 'numbers of its size’s class') : null,
  ]
    .filter((part) => part !== null)
    .join(', ');
}

/** A wall's time so many hours after another, `HH:MM`. @param hours not negative */
export const clockAfter = (clock: string, hours: number): string => clockText(minutesOf(clock) + hours * 60);

/** More fillings than this are not told one by one. */
const MOST_TIMES = 4;

/**
 * When a tank is filled or a battery ends: by the clock where the night has a call and its hours are not those from dusk,
 * else by hours; null where there is nothing of that.
 */
export function fuelText(
  { fuel, batteryHours, litWatts }: SourceReport,
  { hours, from }: NightHours,
  called: string | null,
): string | null {
  const call = from === 'dusk to dawn' ? null : called;
  const at = (after: number): string => (call === null ? hourWords(after) : clockAfter(call, after));
  if (fuel && litWatts > 0) {
    const { refillHours } = fuel;
    const first = refillHours.slice(0, MOST_TIMES).map(at).join(', ');
    const more = refillHours.length > MOST_TIMES ? ` and ${refillHours.length - MOST_TIMES} times more` : '';
    const fill =
      refillHours.length === 0
        ? 'one tank lasts'
        : `fill it ${call === null ? 'after' : 'at'} ${first}${more}`;
    const bring = fuel.bringLitres > 0 ? `, bring ${litreWords(fuel.bringLitres)} beside the tank` : '';
    return `${litreWords(fuel.litresPerHour)} of ${fuel.fuel} an hour, ${litreWords(fuel.litres)} in ${hourWords(hours)}: ${fill}${bring}`;
  }
  if (batteryHours === null || litWatts <= 0) return null;
  return `lasts ${hourWords(batteryHours)}${call === null ? '' : `, until ${clockAfter(call, batteryHours)}`}`;
}

/** A breaker's line: `6.5 A of 10 A, leg 1: Head 1 and Head 2`. */
export function circuitText(plan: Plan, circuit: CircuitFlow): string {
  const { legAmps, ratedAmps, legs, sockets, cableIds, loadIds } = circuit;
  const leg = legs.length > 1 ? `, legs ${listed(legs.map(String))}` : `, leg ${legs[0] ?? 1}`;
  const free = Math.max(sockets - cableIds.length, 0);
  const open = free === 1 ? '1 socket free' : `${free} sockets free`;
  const feeds = loadIds.length > 0 ? `: ${namesIn(plan, loadIds)}` : '';
  return `${listed(legAmps.map(ampWords))} of ${ampWords(ratedAmps)}${leg}, ${open}${feeds}`;
}

const NOT_FED: Readonly<Record<Exclude<Feeding, 'fed'>, string>> = {
  own: 'has power of its own',
  'no cord': 'no cord',
  'no source': 'a cord from no supply',
  'two sources': 'between two supplies',
  ring: 'in a ring',
};

/** What a load draws: `350 W, 369 VA`. */
export const drawText = ({ watts, voltAmperes }: LoadReport): string =>
  `${wattWords(watts)}, ${voltAmpereWords(voltAmperes)}`;

/** How a load is fed: `3.1 A, 118.9 V, 1.0 % lost`, or why it is not. */
export function fedText({ feeding, amps, volts, dropShare }: LoadReport): string {
  if (feeding !== 'fed' || amps === null || volts === null || dropShare === null)
    return feeding === 'fed' ? 'gets nothing' : NOT_FED[feeding];
  return `${ampWords(amps)}, ${voltWords(volts)}, ${formatNumber(Math.max(dropShare, 0) * 100, 1)}${NBSP}% lost`;
}

/** A cable's line: how long and thick, what it carries of what it may, what it loses and how warm that makes it. */
export function cableText(plan: Plan, cable: CableReport, lengths: LengthSystem): string {
  const { fromId, toId, lengthMetres, wire, amps, ratedAmps, share, dropVolts, lossWatts, circuit } = cable;
  const ends =
    fromId === null && toId === null
      ? 'plugged into nothing'
      : `${fromId === null ? 'nothing' : nameIn(plan, fromId)}${circuit === null ? '' : `, circuit ${circuit},`} to ${toId === null ? 'nothing' : nameIn(plan, toId)}`;
  const size = `${formatLength(lengthMetres, lengths, { decimals: 1 })} of ${wireText(wire, lengths)}`;
  if (amps <= 0) return `${ends}; ${size}, carries nothing`;
  return `${ends}; ${size}, ${ampWords(amps)} of ${ampWords(ratedAmps)}, ${formatShare(share)}; loses ${voltWords(dropVolts)}, ${formatNumber(lossWatts, lossWatts < 10 ? 1 : 0)}${NBSP}W of heat`;
}

/** The button of a mend. */
export function mendWord(plan: Plan, mend: Mend): string {
  switch (mend.act) {
    case 'pull':
      return `Pull ${nameIn(plan, mend.cableId)}`;
    case 'pull end':
      return 'Pull that end out';
    case 'own':
      return mend.itemIds.length === 1 ? 'Give it power of its own' : 'Give them power of their own';
    case 'any circuit':
      return 'Share the circuits out';
    case 'unwind':
      return 'Unwind it';
    case 'thicker':
      return mend.cables.length === 1 ? 'Take a thicker cord' : `Take ${mend.cables.length} thicker cords`;
    case 'say':
      return 'Type what it draws';
    case 'connect':
      return 'Connect all';
  }
}

/** What is said once a mend is done. */
export function mendDone(plan: Plan, mend: Mend, lengths: LengthSystem): string {
  switch (mend.act) {
    case 'pull':
      return `${nameIn(plan, mend.cableId)} is pulled at both ends.`;
    case 'pull end':
      return `One end of ${nameIn(plan, mend.cableId)} is pulled out.`;
    case 'own':
      return `${namesIn(plan, mend.itemIds)} ${mend.itemIds.length === 1 ? 'has power of its' : 'have power of their'} own.`;
    case 'any circuit':
      return 'Circuits are shared out by what is drawn.';
    case 'unwind':
      return `${nameIn(plan, mend.cableId)} is unwound.`;
    case 'thicker':
      return `${mend.cables.map(({ id, wire }) => `${nameIn(plan, id)} has ${wireText(wire, lengths)}`).join(', ')}.`;
    case 'say':
    case 'connect':
      return 'All that could be connected is.';
  }
}
