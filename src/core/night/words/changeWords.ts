import type { NightCost } from '../../plan/schema/night';
import { formatDegrees } from '../../units/angles';
import { formatLength } from '../../units/lengths';
import type { Changes } from '../order/changes';

const WORDS: Readonly<Record<NightCost, (changes: Changes) => string>> = {
  lens: () => 'lens',
  body: () => 'body',
  filter: () => 'filter',
  support: () => 'support',
  lighting: () => 'lighting',
  head: ({ lampIds }) => (lampIds.length === 1 ? '1 lamp' : `${lampIds.length} lamps`),
  halfTurn: ({ turnDegrees }) => `turned by ${formatDegrees(turnDegrees, 0)}`,
  tenMetres: ({ carriedMetres }) => `carried ${formatLength(carriedMetres, 'm', { decimals: 1 })}`,
  wetDown: () => 'wet-down',
};

/** What changes from one setup to the next, in a few words: `lens, support, turned by 120°`; empty where nothing does. */
export const changeWords = (changes: Changes): string =>
  changes.list.map(({ kind }) => WORDS[kind](changes)).join(', ');
