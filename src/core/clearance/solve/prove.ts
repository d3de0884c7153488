import type { Plan } from '../../plan/schema/plan';
import { judgeMoved } from '../remedies/judge';
import { isUnwanted, type Known } from '../remedies/known';
import { withRemedy } from '../remedies/remedyEdits';
import type { VerdictChange } from '../remedies/types';
import type { LampsKept } from './lampsKept';
import type { Placement } from './places';

/** What all setups see of the whole changed plan. */
export interface Proof {
  /** How many setups are clear. */
  readonly cleared: number;
  /** What goes against a wish now and did not before. */
  readonly news: readonly VerdictChange[];
  /** Whether a lamp leaves its tolerance, with all that moves. */
  readonly losesLight: boolean;
}

/** Asks the report's looks of a plan in which all picks are done. Yields the done share, 0..1. */
export function* prove(
  known: Known,
  picks: readonly Placement[],
  lamps: LampsKept,
): Generator<number, Proof, void> {
  const after: Plan = withRemedy(known.plan, { edits: picks.flatMap(({ edits }) => edits) });
  const told = yield* judgeMoved(known, after);
  const isClear = (setupId: string, id: string): boolean => {
    const one = known.setups.find(({ setup }) => setup.id === setupId);
    const item = one?.items.get(id);
    return !item || !isUnwanted({ ...item, verdict: told.after(setupId, id) ?? 'clear' });
  };
  const cleared = known.setups.filter(({ setup, items }) =>
    [...items.keys()].every((id) => isClear(setup.id, id)),
  ).length;
  const isAccepted = ({ setupId, itemId }: VerdictChange): boolean =>
    known.setups.find(({ setup }) => setup.id === setupId)?.items.get(itemId)?.accepted !== undefined;
  return {
    cleared,
    news: told.news.filter((change) => !isAccepted(change)),
    losesLight: after !== known.plan && !lamps.keeps(after),
  };
}
