import type { Plan } from '../../core/plan/schema/plan';

/** Sections of a plan that may make a link long, in the words of the page. */
const SECTIONS = [
  ['notes', 'notes'],
  ['kit', 'the kit'],
  ['pieces', 'set pieces'],
  ['beats', 'beats'],
  ['cast', 'cast and marks'],
  ['gear', 'gear'],
  ['setups', 'setups'],
  ['night', 'the night'],
  ['cautions', 'cautions'],
] as const satisfies readonly (readonly [keyof Plan, string])[];

/** How many are named. */
const NAMED = 2;

/** What of a plan takes the most room in a link, the most first. */
export function heaviest(plan: Plan): readonly string[] {
  const lengthOf = (part: unknown): number => (part === undefined ? 0 : JSON.stringify(part).length);
  const weights = SECTIONS.map(([section, word]) => ({ word, length: lengthOf(plan[section]) }));
  return weights
    .toSorted((a, b) => b.length - a.length)
    .slice(0, NAMED)
    .map(({ word }) => word);
}
