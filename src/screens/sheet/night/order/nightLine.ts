import { instantOf, wallTime } from '../../../../core/night/times/nightClock';
import type { Night } from '../../../../core/night/types';
import type { Plan } from '../../../../core/plan/schema/plan';
import { sunFrom } from '../../../../core/sky/horizon';
import { type SkyLevel, skyLevel } from '../../../../core/sky/levels';
import type { NightTimes } from '../../../../core/sky/night';

/** A stretch of a night drawn along a line: minutes of the night to pixels. */
export interface LineScale {
  readonly from: number;
  readonly until: number;
  readonly width: number;
  readonly x: (minutes: number) => number;
}

const HOUR = 60;
/** As much of the night is shown before the call and after the wrap, minutes. */
const ROUND = 10;

/** What of a night is drawn: from its call, or sunset where that is a little earlier, until its wrap, asked for or not. */
export function lineScale(
  { call, schedule, wrapBy, sky }: Night,
  width: number,
  latest = -Infinity,
): LineScale {
  const near = sky.sunset !== null && sky.sunset < call && sky.sunset > call - HOUR ? sky.sunset : call;
  const from = near - ROUND;
  const until = Math.max(schedule.wrap, wrapBy ?? schedule.wrap, latest, from + HOUR) + ROUND;
  return { from, until, width, x: (minutes) => ((minutes - from) / (until - from)) * width };
}

/** A stretch of the night under one sky, minutes of the night. */
interface SkyBand {
  readonly level: SkyLevel;
  readonly from: number;
  readonly until: number;
}

const TURNS: readonly (readonly [keyof NightTimes, SkyLevel])[] = [
  ['sunset', 1],
  ['civilDusk', 2],
  ['nauticalDusk', 3],
  ['astronomicalDusk', 4],
  ['astronomicalDawn', 3],
  ['nauticalDawn', 2],
  ['civilDawn', 1],
  ['sunrise', 0],
];

/** The sky along a stretch of a night, band after band. */
export function skyBands(
  { place }: Pick<Plan, 'place'>,
  { clock, sky }: Pick<Night, 'clock' | 'sky'>,
  from: number,
  until: number,
): readonly SkyBand[] {
  const first = skyLevel(sunFrom(place, instantOf(clock, from)).altitude);
  const turns = TURNS.flatMap(([key, level]) => {
    const minutes = sky[key];
    return minutes !== null && minutes > from && minutes < until ? [{ minutes, level }] : [];
  }).toSorted((a, b) => a.minutes - b.minutes);
  const begins = [{ minutes: from, level: first }, ...turns];
  return begins.map(({ minutes, level }, k) => ({
    level,
    from: minutes,
    until: begins[k + 1]?.minutes ?? until,
  }));
}

/** Lettering along a line, anchored at its start, middle or end. */
export interface LineMark {
  readonly key: string;
  readonly x: number;
  readonly words: string;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** How wide lettering is, pixels a character: near enough for digits and short words in the narrow face. */
const CHARACTER_SHARE = 0.56;
const GAP = 6;

/** The marks that have room beside those before them, within a width; the first have it first. */
export function placedMarks(
  marks: readonly LineMark[],
  width: number,
  fontPixels: number,
): readonly LineMark[] {
  const taken: (readonly [number, number])[] = [];
  return marks.flatMap((mark) => {
    const wide = mark.words.length * fontPixels * CHARACTER_SHARE;
    const shift = mark.anchor === 'start' ? 0 : mark.anchor === 'end' ? wide : wide / 2;
    const left = Math.min(Math.max(0, mark.x - shift), Math.max(0, width - wide));
    const span = [left - GAP, left + wide + GAP] as const;
    if (taken.some(([from, until]) => from < span[1] - GAP && until > span[0] + GAP)) return [];
    taken.push(span);
    return [{ ...mark, x: left + shift }];
  });
}

/** Hours to letter along a line, so far apart that their numbers have room. */
export function hourMarks(night: Night, scale: LineScale, leastPixels: number): readonly LineMark[] {
  const perHour = (scale.width / (scale.until - scale.from)) * HOUR;
  const step = [1, 2, 3, 6].find((hours) => hours * perHour >= leastPixels) ?? 12;
  const every = step * HOUR;
  const first = Math.ceil(scale.from / every) * every;
  const count = Math.max(0, Math.floor((scale.until - first) / every) + 1);
  return Array.from({ length: count }, (_, k) => {
    const minutes = first + k * every;
    return {
      key: `hour ${minutes}`,
      x: scale.x(minutes),
      words: wallTime(night.clock, minutes),
      anchor: 'middle' as const,
    };
  });
}
