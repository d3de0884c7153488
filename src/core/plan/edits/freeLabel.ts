import { itemsOf } from '../items';
import type { Plan } from '../schema/plan';

/** The longest name that a plan may hold. */
const LONGEST_LABEL = 80;

/**
 * A stem with the first number that no item of the plan has with it: `Lamp stand 4`. A name that is the stem alone
 * counts as its number 1. What would be too long is cut before the number.
 */
export function freeLabel(plan: Plan, stem: string, taken: Iterable<string> = []): string {
  const labels = new Set([...itemsOf(plan).map(({ record }) => record.label), ...taken]);
  let number = labels.has(stem) ? 2 : 1;
  while (labels.has(numbered(stem, number))) number += 1;
  return numbered(stem, number);
}

/** A stem with a number behind it, cut to the length that a name may have. */
export function numbered(stem: string, number: number): string {
  const tail = ` ${number}`;
  return `${stem.trim().slice(0, LONGEST_LABEL - tail.length)}${tail}`;
}

/** A stem without the number at its end. */
export const stemOf = (label: string): string => label.replace(/\s+\d+$/, '').trim() || label;
