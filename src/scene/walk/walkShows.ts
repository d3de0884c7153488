import type { Caution } from '../../core/cautions/types';
import type { Explanation } from '../../core/clearance/explain/types';
import type { Plan } from '../../core/plan/schema/plan';
import { blockingStore } from '../../desk/blocking/blockingStore';
import { seenOf } from '../../desk/blocking/onlyIn';
import { openedCaution } from '../../desk/cautions/cautionsStore';
import { proposalStore } from '../../desk/lensTestProposal';
import { livePlan, liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { explanationNow } from '../../desk/remedies/explaining';

/** Somebody or something as a change that is only proposed would have them. */
export interface Proposed {
  readonly plan: Plan;
  /** Whose walk goes with it; null where things alone are proposed. */
  readonly performerId: string | null;
  /** All whose bodies are drawn. */
  readonly ids: readonly string[];
}

/** What the walk-round is drawn from. */
export interface WalkShows {
  /** The cast as the setup has it whose marks are cheated, where one's are; without what is only proposed. */
  readonly plan: Plan;
  /** Drawn beside that, as a ghost; null where nothing is proposed. */
  readonly proposed: Proposed | null;
  /** The line of sight that is explained, in the plan as it is seen now; null while none is. */
  readonly explained: Explanation | null;
  /** The caution that is opened; null while none is. */
  readonly cautioned: Caution | null;
}

export function walkShows(): WalkShows {
  const { proposing } = blockingStore.getState();
  const { changed } = proposalStore.getState();
  const { gesture, seconds } = liveStore.getState();
  const live = livePlan();
  const explained = explanationNow(live, seconds);
  const cautioned = openedCaution();
  const isMoved = proposing !== null && gesture?.itemId === proposing;
  if (!isMoved && (changed.length === 0 || !gesture))
    return { plan: seenOf(live), proposed: null, explained, cautioned };
  return {
    plan: seenOf(planStore.getState().plan),
    proposed: isMoved
      ? { plan: seenOf(live), performerId: proposing, ids: [proposing] }
      : { plan: seenOf(live), performerId: null, ids: changed },
    explained,
    cautioned,
  };
}
