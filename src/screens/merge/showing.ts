import { spanOf, stateAt } from '../../core/optics/camera';
import type { Difference } from '../../core/plan/merge/differences';
import { differencesOf } from '../../core/plan/merge/differences';
import { mergePlans } from '../../core/plan/merge/mergePlans';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { setupLetter } from '../../core/plan/setupLetter';
import { chooseSetup } from '../../desk/choose';
import { type ProposedPlace, proposalStore } from '../../desk/lensTestProposal';
import { mergeStore } from '../../desk/merge/mergeStore';
import { planStore } from '../../desk/planStore';
import { endPreviews, preview } from '../sheet/previewing';

const BY = 'continuity merge';
/** Nearer than this a camera has not been moved or turned; metres, degrees. */
const LEAST_APART = 1e-6;

type Start = Pick<ProposedPlace, 'to' | 'headingDegrees'>;

/** Where a camera stands as its span begins, and which way it looks. */
function startOf(plan: Plan, setup: Setup): Start {
  const { position, headingDegrees } = stateAt(plan, setup, spanOf(plan, setup)[0]);
  return { to: [position[0], position[2]], headingDegrees };
}

/** Metres along x and z and degrees from one start to another. */
const apart = (from: Start, start: Start): readonly number[] => [
  start.to[0] - from.to[0],
  start.to[1] - from.to[1],
  start.headingDegrees - from.headingDegrees,
];

/** Where their camera stands, and from where it would go there; null where it stays as it is. */
function placeOf(difference: Difference, theirs: Plan): ProposedPlace | null {
  if (difference.of !== 'entry' || difference.theirs?.list !== 'setups') return null;
  const { plan } = planStore.getState();
  const { value: setup } = difference.theirs;
  const own = difference.mine?.list === 'setups' ? difference.mine.value : null;
  const start = startOf(theirs, setup);
  const from = own ? startOf(plan, own) : start;
  if (own && Math.hypot(...apart(from, start)) < LEAST_APART) return null;
  const { setups } = own ? plan : theirs;
  return {
    from: from.to,
    ...start,
    letter: setupLetter(setups.findIndex(({ id }) => id === setup.id)),
  };
}

/** Shows one difference in both views: theirs dashed on the roof, and in the frame the plan as it would be with it alone. */
export function showDifference(difference: Difference): void {
  const { beside } = mergeStore.getState();
  if (!beside) return;
  const { theirs, base } = beside;
  endPreviews();
  const isItem = difference.key.startsWith('item/');
  preview(BY, (plan) => {
    const choices = differencesOf(plan, theirs).map(
      ({ key }) => [key, key === difference.key ? 'theirs' : 'mine'] as const,
    );
    return mergePlans(plan, theirs, new Map(choices), base?.plan ?? null).plan;
  });
  proposalStore.setState({
    place: placeOf(difference, theirs),
    stands: [],
    changed: isItem ? [difference.key.slice('item/'.length)] : [],
  });
}

/** Chooses the setup that a difference is of, where the open plan has it. */
export function chooseSetupOf(difference: Difference): void {
  if (difference.of === 'entry' && difference.mine?.list === 'setups') chooseSetup(difference.mine.value.id);
}

/** Shows the plan as it is again. */
export function showNothing(): void {
  endPreviews();
  proposalStore.setState({ place: null, stands: [], changed: [] });
}
