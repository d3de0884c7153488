import * as v from 'valibot';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { type Cheat, setup as setupSchema } from '../schema/setup';
import { withoutCheats } from './cheats';
import { editSetup } from './editRecord';
import { MOST } from './limits';
import { orSame } from './motion';
import { withCheats } from './optionalLists';
import { sameSpot, tidyHeading, tidySpot } from './tidy';

/**
 * Has a setup play a mark elsewhere, [x, z], metres; the master's mark stays. The heading stays as cheated before where
 * it is left out; null takes it back to the master's. A cheat that comes to the master's own place and heading is
 * taken out. The same plan for a mark that there is not, and where the setup has 200 cheats.
 */
export function setCheat(
  plan: Plan,
  args: {
    readonly setupId: string;
    readonly performerId: string;
    readonly markId: string;
    readonly at: Spot;
    readonly headingDegrees?: number | null;
  },
): Plan {
  const { setupId, performerId, markId } = args;
  const mark = plan.cast.find(({ id }) => id === performerId)?.marks.find(({ id }) => id === markId);
  if (!mark) return plan;
  return editSetup(plan, setupId, (setup) => {
    const cheats = setup.cheats ?? [];
    const index = cheats.findIndex((cheat) => cheat.performer === performerId && cheat.mark === markId);
    const before = cheats[index];
    const wanted = args.headingDegrees === undefined ? before?.headingDegrees : args.headingDegrees;
    const heading = wanted === undefined || wanted === null ? undefined : tidyHeading(wanted);
    const at = tidySpot(args.at);
    const turns = heading !== undefined && (heading !== mark.headingDegrees || mark.faces !== undefined);
    if (sameSpot(at, mark.at) && !turns)
      return before ? withoutCheats(setup, { performerId, markId }) : setup;
    const cheat: Cheat = {
      performer: performerId,
      mark: markId,
      at,
      ...(heading !== undefined && { headingDegrees: heading }),
    };
    if (!before && cheats.length >= MOST.cheats) return setup;
    const now = before ? orSame(before, cheat) : cheat;
    if (now === before) return setup;
    const next = withCheats(setup, before ? cheats.with(index, now) : [...cheats, now]);
    return v.is(setupSchema, next) ? next : setup;
  });
}
