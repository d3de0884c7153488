import type { PackingLine } from '../../core/night/packing/types';
import { utcOf, wallTime } from '../../core/night/times/nightClock';
import type { Night } from '../../core/night/types';
import { changeWords } from '../../core/night/words/changeWords';
import { skyEvents } from '../../core/night/words/skyEvents';
import type { Plan } from '../../core/plan/schema/plan';
import { setupLetter } from '../../core/plan/setupLetter';
import { type CsvCell, csvOf } from '../csv';

const ORDER_HEADER = ['section', 'time', 'utc', 'minutes', 'doing', 'setup', 'label', 'changes'] as const;
const PACKING_HEADER = ['section', 'department', 'label', 'count', 'spare', 'unit', 'detail'] as const;

/** The packing list as rows below a header. */
const packingRows = (lines: readonly PackingLine[]): readonly (readonly CsvCell[])[] => [
  PACKING_HEADER,
  ...lines.map(({ department, label, count, spare, unit, detail }) => [
    'packing',
    department,
    label,
    count,
    spare,
    unit,
    detail,
  ]),
];

/** A night as two tables below each other, each with its header: what happens when, sky included, and what to pack. */
export function nightCsv(plan: Plan, night: Night, packing: readonly PackingLine[]): string {
  const { clock, schedule, call } = night;
  const row = (
    section: string,
    at: number,
    minutes: number | null,
    doing: string,
    job: number | null = null,
    changes = '',
  ): { readonly at: number; readonly cells: readonly CsvCell[] } => ({
    at,
    cells: [
      section,
      wallTime(clock, at),
      utcOf(clock, at),
      minutes,
      doing,
      job === null ? null : setupLetter(job),
      job === null ? null : plan.setups[job].label,
      changes,
    ],
  });
  const changesOf = new Map(schedule.setups.map(({ job, changes }) => [job, changes]));
  const rows = [
    row('order', call, null, 'call'),
    ...schedule.stretches.map(({ doing, job, from, until }) => {
      const changes = job !== null && doing === 'change' ? changesOf.get(job) : null;
      return row('order', from, until - from, doing, job, changes ? changeWords(changes) : '');
    }),
    row('order', schedule.wrap, null, 'wrap'),
    ...skyEvents(night.sky).map(({ name, minutes }) => row('sky', minutes, null, name)),
  ];
  return csvOf([
    ORDER_HEADER,
    ...rows.toSorted((a, b) => a.at - b.at).map(({ cells }) => cells),
    ...packingRows(packing),
  ]);
}
