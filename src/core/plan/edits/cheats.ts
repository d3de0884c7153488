import type { Plan } from '../schema/plan';
import type { Setup } from '../schema/setup';
import { changed } from './motion';
import { keptOf, withCheats } from './optionalLists';

/** Which cheats: of one mark, of all marks of a performer, or all of a setup. */
export interface WhichCheats {
  readonly performerId?: string;
  readonly markId?: string;
}

/** A setup without some of its cheats; the same setup where it has none of them. */
export const withoutCheats = (setup: Setup, { performerId, markId }: WhichCheats): Setup =>
  setup.cheats
    ? withCheats(
        setup,
        keptOf(
          setup.cheats,
          ({ performer, mark }) =>
            (performerId !== undefined && performer !== performerId) ||
            (markId !== undefined && mark !== markId),
        ),
      )
    : setup;

/** The plan without the cheats of a mark in any setup: the mark has gone. */
export function dropCheats(
  plan: Plan,
  mark: { readonly performerId: string; readonly markId: string },
): Plan {
  const setups = changed(plan.setups, (setup) => withoutCheats(setup, mark));
  return setups === plan.setups ? plan : { ...plan, setups };
}
