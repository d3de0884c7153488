import { type DarkFrom, darkFromSentence } from '../../core/night/dusk/darkFrom';
import { lightThroughDusk } from '../../core/night/dusk/lightThroughDusk';
import { DEPARTMENTS, type PackingLine } from '../../core/night/packing/types';
import { wallTime } from '../../core/night/times/nightClock';
import type { Night } from '../../core/night/types';
import { changeWords } from '../../core/night/words/changeWords';
import { skyEvents } from '../../core/night/words/skyEvents';
import type { Plan } from '../../core/plan/schema/plan';
import { setupLetter } from '../../core/plan/setupLetter';
import { duration } from '../../core/units/durations';
import { formatNumber, NBSP } from '../../core/units/numbers';
import { plainText } from '../plainText';
import { type ColumnRule, setInColumns } from './columns';
import type { Ink } from './ink';

const INDENT = '  ';

interface Row {
  readonly at: number;
  readonly cells: readonly string[];
  readonly isFaint: boolean;
}

const TIMELINE: readonly ColumnRule[] = [
  {},
  { side: 'right' },
  {},
  { leastWidth: 12 },
  { leastWidth: 10, spare: true },
];

/** What happens when, the sky between it, as lines. */
function timeline(plan: Plan, night: Night, width: number, ink: Ink): string[] {
  const { clock, schedule, call } = night;
  const changes = new Map(schedule.setups.map((placed) => [placed.job, placed.changes]));
  const row = (at: number, minutes: number | null, doing: string, setup: string, more: string): Row => ({
    at,
    cells: [wallTime(clock, at), minutes === null ? '' : duration(minutes), doing, setup, more],
    isFaint: false,
  });
  const rows = [
    row(call, null, 'Call', '', ''),
    ...schedule.stretches.map(({ doing, job, from, until }) => {
      const setup = job === null ? '' : `${setupLetter(job)} ${plainText(plan.setups[job].label)}`;
      const changed = job !== null && doing === 'change' ? changes.get(job) : null;
      return row(from, until - from, doing, setup, changed ? changeWords(changed) : '');
    }),
    row(schedule.wrap, null, 'Wrap', '', ''),
    ...skyEvents(night.sky)
      .filter(({ minutes }) => minutes >= call - 60 && minutes <= schedule.wrap + 60)
      .map(({ name, minutes }): Row => ({ ...row(minutes, null, name, '', ''), isFaint: true })),
  ].toSorted((a, b) => a.at - b.at);
  const lines = setInColumns(
    TIMELINE,
    rows.map(({ cells }) => cells),
    width - INDENT.length,
  );
  return lines.map((line, k) => INDENT + (rows[k].isFaint ? ink.faint(line) : line));
}

const amount = (value: number): string => formatNumber(value, Number.isInteger(value) ? 0 : 1);
const UNITS = { pieces: '', metres: `${NBSP}m`, litres: `${NBSP}L` } as const;
const PACKING: readonly ColumnRule[] = [
  { side: 'right' },
  { side: 'right' },
  { leastWidth: 16 },
  { leastWidth: 12, spare: true },
];

/** What to pack, by department, as lines. */
function packingLines(lines: readonly PackingLine[], width: number, ink: Ink): string[] {
  const set = setInColumns(
    PACKING,
    lines.map(({ count, unit, spare, label, detail }) => [
      amount(count) + UNITS[unit],
      spare > 0 ? `+${NBSP}${amount(spare)}` : '',
      plainText(label),
      plainText(detail),
    ]),
    width - INDENT.length,
  );
  return DEPARTMENTS.flatMap((department) => {
    const own = set.filter((_, k) => lines[k].department === department);
    const name = department.charAt(0).toUpperCase() + department.slice(1);
    return own.length === 0 ? [] : [ink.strong(name), ...own.map((line) => INDENT + line)];
  });
}

const lux = (value: number): string => {
  if (value >= 100) return formatNumber(value, 0);
  return formatNumber(value, value >= 1 ? 1 : 3);
};

/** The light through dusk every ten minutes, as lines. */
function duskLines(plan: Plan, night: Night, width: number): string[] {
  const rows = lightThroughDusk(plan, 10).map(({ minutes, sunAltitude, skyLux }) => [
    wallTime(night.clock, minutes),
    `sun ${formatNumber(sunAltitude, 1)}°`,
    `${lux(skyLux)}${NBSP}lux from the sky`,
  ]);
  return setInColumns([{}, { side: 'right' }, { side: 'right' }], rows, width - INDENT.length).map(
    (line) => INDENT + line,
  );
}

/** A night as lines to read: what there is to say, the times, the light of dusk, what is lost in it, what to pack. */
export function nightTable(
  plan: Plan,
  night: Night,
  {
    packing,
    darkFrom,
  }: { readonly packing: readonly PackingLine[]; readonly darkFrom: readonly DarkFrom[] | null },
  width: number,
  ink: Ink,
): string[] {
  const dusk = duskLines(plan, night, width);
  const dark = darkFrom?.map((each) => INDENT + plainText(darkFromSentence(plan, each))) ?? [];
  return [
    ink.strong(plainText(plan.title)),
    ...night.notes.map(({ standing, sentence }) =>
      standing === 'breaks' ? ink.strong(plainText(sentence)) : plainText(sentence),
    ),
    '',
    ...timeline(plan, night, width, ink),
    ...(dusk.length > 0 ? ['', ink.strong('The light of dusk, on level ground'), ...dusk] : []),
    ...(dark.length > 0 ? ['', ink.strong('Lost in the dark'), ...dark] : []),
    '',
    ...packingLines(packing, width, ink),
    '',
    'Times and amounts are estimates for planning; local codes and licensed or competent people decide.',
  ];
}
