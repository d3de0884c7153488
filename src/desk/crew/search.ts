import type { Caution } from '../../core/cautions/types';
import type { PackingLine } from '../../core/night/packing/types';
import { itemsOf, kindOf } from '../../core/plan/items';
import { setupsInOrder } from '../../core/plan/nightOrder';
import type { Plan } from '../../core/plan/schema/plan';
import { setupLetter } from '../../core/plan/setupLetter';
import type { CrewPlace } from './place';

/** Something that can be found in a crew sheet, and where it is. */
export interface Entry {
  readonly key: string;
  /** What it is, in a word. */
  readonly kind: string;
  readonly label: string;
  readonly detail: string;
  readonly to: Partial<CrewPlace>;
}

/** All that can be found: setups, things, people, what is carried up, cautions. The last two once they are worked out. */
export function entriesOf(
  plan: Plan,
  packing: readonly PackingLine[],
  cautions: readonly Caution[],
): readonly Entry[] {
  const lensOf = (id: string): string => plan.kit.lenses.find((lens) => lens.id === id)?.label ?? '';
  return [
    ...setupsInOrder(plan).map(
      (setup): Entry => ({
        key: `setup ${setup.id}`,
        kind: 'setup',
        label: `${setupLetter(plan.setups.indexOf(setup))}, ${setup.label}`,
        detail: [lensOf(setup.lens), setup.support].filter(Boolean).join(', '),
        to: { tab: 'setups', setupId: setup.id },
      }),
    ),
    ...itemsOf(plan).map(
      (item): Entry => ({
        key: `item ${item.record.id}`,
        kind: kindOf(item),
        label: item.record.label,
        detail: '',
        to: { tab: 'overhead', itemId: item.record.id },
      }),
    ),
    ...packing.map(
      ({ department, label, detail }, place): Entry => ({
        key: `packing ${place}`,
        kind: `to carry, ${department}`,
        label,
        detail,
        to: { tab: 'lists', list: 'packing' },
      }),
    ),
    ...cautions.map(
      ({ id, kind, sentence }): Entry => ({
        key: `caution ${id}`,
        kind: `caution, ${kind}`,
        label: sentence,
        detail: '',
        to: { tab: 'lists', list: 'cautions' },
      }),
    ),
  ];
}

/** Letters without their marks, small. */
const folded = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase();

/** What has all words of a text in it; what is named so, or begins so, comes first. */
export function found(entries: readonly Entry[], text: string): readonly Entry[] {
  const words = folded(text).split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  const rank = (name: string): number => {
    if (name.startsWith(words.join(' '))) return 0;
    return words.every((word) => name.includes(word)) ? 1 : 2;
  };
  return entries
    .flatMap((entry) => {
      const name = folded(entry.label);
      const all = `${name} ${folded(`${entry.kind} ${entry.detail}`)}`;
      return words.every((word) => all.includes(word)) ? [{ entry, rank: rank(name) }] : [];
    })
    .toSorted((a, b) => a.rank - b.rank)
    .map(({ entry }) => entry);
}
