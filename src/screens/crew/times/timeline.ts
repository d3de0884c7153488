import type { Placed } from '../../../core/night/order/schedule';
import type { Doing } from '../../../core/night/order/walk';
import type { Night } from '../../../core/night/types';
import { changeWords } from '../../../core/night/words/changeWords';
import { skyEvents } from '../../../core/night/words/skyEvents';
import { AROUND } from '../parts/now/nightMinutes';

/** One line of the night by the clock; minutes of the night. */
export type TimelineRow =
  | { readonly kind: 'mark'; readonly word: 'Call' | 'Wrap'; readonly from: number }
  | { readonly kind: 'sky'; readonly word: string; readonly from: number }
  | { readonly kind: 'setup'; readonly placed: Placed; readonly from: number }
  | {
      readonly kind: 'doing';
      readonly doing: Doing;
      readonly job: number | null;
      readonly from: number;
      readonly until: number;
      /** What changes from the setup before; empty but for a change. */
      readonly changes: string;
    };

/** What comes first of what begins at the same minute. */
const RANKS: readonly TimelineRow['kind'][] = ['sky', 'setup', 'doing'];
const rankOf = (row: TimelineRow): number =>
  row.kind === 'mark' ? (row.word === 'Call' ? -1 : RANKS.length) : RANKS.indexOf(row.kind);

/** The night line by line, in the order of its clock. */
export function timelineOf({ call, sky, schedule }: Night): readonly TimelineRow[] {
  const { setups, stretches, wrap } = schedule;
  const changesOf = new Map(setups.map(({ job, changes }) => [job, changes ? changeWords(changes) : '']));
  const rows: readonly TimelineRow[] = [
    { kind: 'mark', word: 'Call', from: call },
    ...setups.map((placed): TimelineRow => ({ kind: 'setup', placed, from: placed.from })),
    ...stretches.map(
      ({ doing, job, from, until }): TimelineRow => ({
        kind: 'doing',
        doing,
        job,
        from,
        until,
        changes: doing === 'change' && job !== null ? (changesOf.get(job) ?? '') : '',
      }),
    ),
    ...skyEvents(sky)
      .filter(({ minutes }) => minutes > call - AROUND && minutes < wrap + AROUND)
      .map(({ name, minutes }): TimelineRow => ({ kind: 'sky', word: name, from: minutes })),
    { kind: 'mark', word: 'Wrap', from: wrap },
  ];
  return rows.toSorted((a, b) => a.from - b.from || rankOf(a) - rankOf(b));
}

/** How many lines have begun by a minute: the line of now stands after them. */
export const begunBy = (rows: readonly TimelineRow[], minutes: number): number =>
  rows.filter(({ from }) => from <= minutes).length;
