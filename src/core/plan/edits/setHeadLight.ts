import * as v from 'valibot';
import { lightFaults } from '../lightChecks';
import { type Distribution, distribution, type Reading, reading } from '../schema/distribution';
import type { HeadClass } from '../schema/kit';
import type { Plan } from '../schema/plan';
import { sameEntry } from './putEntry';

/** How the light of a class of head was measured: a table, or one reading of a meter. */
export type HeadLight = { readonly distribution: Distribution } | { readonly reading: Reading };

const isSound = (light: HeadLight): boolean =>
  'distribution' in light ? v.is(distribution, light.distribution) : v.is(reading, light.reading);

/**
 * Gives a class of head its light as measured, in place of what was measured before, or, with null, takes that out:
 * what is published of the class holds again. What the schema refuses changes nothing.
 */
export function setHeadLight(
  plan: Plan,
  { headId, light }: { readonly headId: string; readonly light: HeadLight | null },
): Plan {
  const at = plan.kit.heads.findIndex(({ id }) => id === headId);
  if (at < 0 || (light && !isSound(light))) return plan;
  const before = plan.kit.heads[at];
  const { distribution: _table, reading: _reading, ...published } = before;
  const after: HeadClass = { ...published, ...light };
  if (sameEntry(before, after) || lightFaults([after]).length > 0) return plan;
  return { ...plan, kit: { ...plan.kit, heads: plan.kit.heads.with(at, after) } };
}
