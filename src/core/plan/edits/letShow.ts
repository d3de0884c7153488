import type { Plan } from '../schema/plan';
import type { Shown } from '../schema/texts';
import { type Common, editCommon } from './editCommon';
import { MOST } from './limits';
import { withShows } from './shows';

/** How long a reason may be, as the schema has it. */
export const LONGEST_REASON = 200;

/**
 * Accepts that an item is seen in a setup against its wish, with the reason why it may, in place of a reason before it.
 * The report keeps its verdict and says the reason. A setup that the plan lacks, and a reason that is empty or longer
 * than 200 characters, change nothing.
 */
export function letShow(
  plan: Plan,
  args: { readonly id: string; readonly setupId: string; readonly reason: string },
): Plan {
  const reason = args.reason.trim();
  if (reason.length < 1 || reason.length > LONGEST_REASON) return plan;
  if (!plan.setups.some(({ id }) => id === args.setupId)) return plan;
  return editCommon(plan, [args.id], <Entry extends Common>(entry: Entry): Entry => {
    const before = entry.shows ?? [];
    const at = before.findIndex(({ setup }) => setup === args.setupId);
    const shown: Shown = { setup: args.setupId, reason };
    if (at >= 0) return before[at].reason === reason ? entry : withShows(entry, before.with(at, shown));
    return before.length >= MOST.shows ? entry : withShows(entry, [...before, shown]);
  });
}
