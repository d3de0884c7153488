import { fc, test } from '@fast-check/vitest';
import { expect } from 'vitest';
import { ordered } from '../../../../src/core/plan/merge/ordered';

/** The same in the plain way: key by key, each put into the list. */
function plainly(
  lead: readonly string[],
  other: readonly string[],
  isIn: (key: string) => boolean,
): string[] {
  const merged = lead.filter(isIn);
  const others = new Set(other);
  let after = -1;
  for (const key of other) {
    if (!isIn(key)) continue;
    if (merged.includes(key)) after = merged.indexOf(key);
    else {
      after += 1;
      while (after < merged.length && !others.has(merged[after])) after += 1;
      merged.splice(after, 0, key);
    }
  }
  return merged;
}

const keys = fc.uniqueArray(fc.constantFrom(...'abcdefghijkl'), { maxLength: 12 });

test.prop([keys, keys, fc.uniqueArray(fc.constantFrom(...'abcdefghijkl'))], { numRuns: 2000 })(
  'two lists go together as they do key by key',
  (lead, other, gone) => {
    const isIn = (key: string): boolean => !gone.includes(key);
    expect(ordered(lead, other, isIn)).toEqual(plainly(lead, other, isIn));
  },
);
