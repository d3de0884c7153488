import type { Placed } from '../../../../core/night/order/schedule';
import { wallTime } from '../../../../core/night/times/nightClock';
import { needsOf } from '../../../../core/night/times/takes';
import type { Night } from '../../../../core/night/types';
import { changeWords } from '../../../../core/night/words/changeWords';
import { skyEvents } from '../../../../core/night/words/skyEvents';
import type { Plan } from '../../../../core/plan/schema/plan';
import { setupLetter } from '../../../../core/plan/setupLetter';
import { duration } from '../../../../core/units/durations';

/** Whether everyone wraps in time, as a question, the figure that answers it and what it comes to. */
interface WrapAnswer {
  readonly question: string;
  readonly figure: string;
  readonly rest: string;
  readonly isLate: boolean;
}

/** The answer to when everyone wraps. */
export function wrapAnswer({ clock, schedule, wrapBy }: Night): WrapAnswer {
  const at = wallTime(clock, schedule.wrap);
  if (wrapBy === null)
    return { question: 'When will we wrap?', figure: at, rest: 'nobody asks for a time', isLate: false };
  const question = `Will we wrap by ${wallTime(clock, wrapBy)}?`;
  const margin = Math.round(wrapBy - schedule.wrap);
  const isLate = margin < 0;
  if (margin === 0) return { question, figure: at, rest: 'to the minute', isLate };
  return {
    question,
    figure: duration(Math.abs(margin)),
    rest: isLate ? `too late, at ${at}` : `to spare, at ${at}`,
    isLate,
  };
}

/** When a setup is shot: `19:14 to 19:34`. */
export const shotWords = ({ clock }: Night, { shotFrom, until }: Placed): string =>
  `${wallTime(clock, shotFrom)} to ${wallTime(clock, until)}`;

/** From when a setup is made, and what the night asks of it: `from 18:49, after dark, wet ground, by 22:00`. */
export function askedWords(plan: Plan, { clock }: Night, { setupId, from }: Placed): string {
  const asked = needsOf(plan, setupId);
  return [
    `from ${wallTime(clock, from)}`,
    ...(asked.when ? [asked.when] : []),
    ...(asked.ground ? [`${asked.ground} ground`] : []),
    ...(asked.from ? [`not before ${asked.from}`] : []),
    ...(asked.until ? [`by ${asked.until}`] : []),
  ].join(', ');
}

/** What changes from the setup before, and its minutes, with those of the move: `7 min to change: 1 lamp`. Empty for the first. */
export function changeSentence({ work, schedule }: Night, place: number): string {
  const { job, changes } = schedule.setups[place];
  if (!changes || place === 0) return '';
  const leg = work.legs[schedule.setups[place - 1].job][job];
  const wet = changes.list.find(({ kind }) => kind === 'wetDown')?.minutes ?? 0;
  const minutes = leg + wet;
  const what = changeWords(changes);
  if (what === '')
    return minutes === 0 ? 'Nothing changes.' : `${duration(minutes)} to move, nothing changes.`;
  return `${duration(minutes)} to change: ${what}.`;
}

/** The order of a night in letters: `A, B, H, C`. */
export const orderLetters = (order: readonly number[]): string => order.map(setupLetter).join(', ');

/** All of a night in words, for who does not see its line. */
export function lineWords(plan: Plan, night: Night): string {
  const { clock, schedule, call, sky } = night;
  const at = (minutes: number): string => wallTime(clock, minutes);
  const setups = schedule.setups.map(
    ({ job, shotFrom, until }) =>
      `${setupLetter(job)}, ${plan.setups[job].label}, shot ${at(shotFrom)} to ${at(until)}`,
  );
  const meal = schedule.meal ? [`meal ${at(schedule.meal.from)} to ${at(schedule.meal.until)}`] : [];
  const seen = skyEvents(sky)
    .filter(({ minutes }) => minutes > call - 60 && minutes < schedule.wrap + 60)
    .map(({ name, minutes }) => `${name.toLowerCase()} ${at(minutes)}`);
  return [`Call ${at(call)}`, ...setups, ...meal, `wrap ${at(schedule.wrap)}`, ...seen].join('; ');
}
