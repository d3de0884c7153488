import { itemsOf, wishOf } from '../../plan/items';
import { named } from '../../plan/named';
import { listed } from '../../report/listed';
import { hypot } from '../../units/steadyMath';
import type { Known } from '../remedies/known';
import { lengthWords, wayWords } from '../remedies/words';
import type { Solution } from './types';

/** A move over the deck as the first setup that sees some of it has it: `0.7 m towards the stair house`. */
export function moveWords(
  known: Known,
  members: ReadonlySet<string>,
  from: readonly [number, number],
  to: readonly [number, number],
): string {
  const { plan, setups } = known;
  const seeing =
    setups.find(({ items }) =>
      [...members].some((id) => {
        const verdict = items.get(id)?.verdict;
        return verdict === 'showing' || verdict === 'mirrored';
      }),
    ) ?? setups[0];
  const metres = hypot(to[0] - from[0], to[1] - from[1]);
  const way = wayWords(plan, seeing.setup.id, seeing.watches[0], [from[0], from[1]], [to[0], to[1]]);
  return `${lengthWords(metres)} ${way}`;
}

/** What must show and never does, as a sentence with a space before it; empty where there is none. */
export function missingWords({ plan, setups }: Known): string {
  const missing = itemsOf(plan).filter(
    (item) =>
      wishOf(item) === 'must show' &&
      setups.every(({ items }) => items.get(item.record.id)?.verdict !== 'showing'),
  );
  if (missing.length === 0) return '';
  const [must, does] = missing.length === 1 ? ['must', 'does'] : ['must', 'do'];
  const labels = listed(missing.map(({ record }) => named(record.label)));
  return ` ${labels} ${must} show and never ${does}: no move of gear is looked for to change that.`;
}

const counted = (count: number): string => `${count} ${count === 1 ? 'setup' : 'setups'}`;

/** How many setups are clear, as: `all 8 setups`, `3 of 8 setups`. */
export const clearedWords = (cleared: number, all: number): string =>
  cleared === all ? (all === 1 ? 'the setup' : `all ${counted(all)}`) : `${cleared} of ${counted(all)}`;

/** What is to be done, as: `Changing Lamp stand 1 and Cart, 1.4 m in all,`. */
export function doingWords({ items, metres }: Solution): string {
  const labels = items.length > 4 ? `${items.length} things` : listed(items.map(({ label }) => named(label)));
  const far = metres > 0 ? `, ${lengthWords(metres)}${items.length > 1 ? ' in all' : ''},` : '';
  return `Changing ${labels}${far}`;
}
