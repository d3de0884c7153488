import { expect, test } from 'vitest';
import { changeSetup } from '../../../src/core/plan/edits/changeSetup';
import { reportOf } from '../../../src/core/report/report';
import { smallRoof } from '../smallRoof';

/** One instant says it: what a filter might change would change there too. */
const AT = { at: 0 };

test('a filter before the lens changes not a byte of the report', () => {
  const plan = smallRoof();
  const bytes = JSON.stringify(reportOf(plan, AT));
  for (const kind of ['mist', 'halation'] as const) {
    const filtered = changeSetup(plan, {
      setupId: plan.setups[0].id,
      patch: { filter: { kind, strength: 2 } },
    });
    expect(filtered.setups[0].filter).toEqual({ kind, strength: 2 });
    expect(JSON.stringify(reportOf(filtered, AT))).toBe(bytes);
  }
});
