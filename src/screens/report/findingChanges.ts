import { named } from '../../core/plan/named';
import type { ItemReport, SetupReport } from '../../core/report/types';
import { type Concern, concernOf } from './concerns';

/** So many names are told; the sheet has the rest. */
const MOST_TOLD = 4;

const SAYS: Readonly<Record<Concern, string>> = {
  shows: 'shows',
  missing: 'is missing',
  mirrored: 'is mirrored',
  close: 'is close',
};

/** What asks for something, by item. */
const concernsOf = ({ items }: SetupReport): ReadonlyMap<string, { item: ItemReport; concern: Concern }> =>
  new Map(
    items.flatMap((item) => {
      const concern = concernOf(item);
      return concern === null ? [] : [[item.id, { item, concern }] as const];
    }),
  );

const told = (words: readonly string[]): string =>
  words.length <= MOST_TOLD
    ? words.join(', ')
    : `${words.slice(0, MOST_TOLD).join(', ')}, ${words.length - MOST_TOLD} more`;

/**
 * What an edit changed in a setup's findings, in words to be heard: `New: Sandbag 1 shows. No longer: Lamp stand 2.`
 * Null where every finding stayed what it was.
 */
export function findingChanges(before: SetupReport, after: SetupReport): string | null {
  const [old, now] = [concernsOf(before), concernsOf(after)];
  const come = [...now.values()]
    .filter(({ item, concern }) => old.get(item.id)?.concern !== concern)
    .map(({ item, concern }) => `${named(item.label)} ${SAYS[concern]}`);
  const gone = [...old.values()].filter(({ item }) => !now.has(item.id)).map(({ item }) => named(item.label));
  const sentences = [
    ...(come.length > 0 ? [`New: ${told(come)}.`] : []),
    ...(gone.length > 0 ? [`No longer: ${told(gone)}.`] : []),
  ];
  return sentences.length === 0 ? null : sentences.join(' ');
}
