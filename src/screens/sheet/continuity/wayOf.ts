import type { Reposing } from '../../../core/continuity/reposing';
import { stateAt } from '../../../core/optics/camera';
import { reposeCamera } from '../../../core/plan/edits/reposeCamera';
import type { Plan } from '../../../core/plan/schema/plan';
import { letterOf } from '../../../desk/choose';
import type { ProposedPlace } from '../../../desk/lensTestProposal';

/** From where to where a camera would go, at an instant of the action; nothing for a setup that is not there. */
export function wayOf(plan: Plan, { change }: Reposing, seconds: number): ProposedPlace | undefined {
  const before = plan.setups.find(({ id }) => id === change.setupId);
  const moved = reposeCamera(plan, change);
  const after = moved.setups.find(({ id }) => id === change.setupId);
  if (!before || !after) return undefined;
  const from = stateAt(plan, before, seconds).position;
  const { position: to, headingDegrees } = stateAt(moved, after, seconds);
  return {
    from: [from[0], from[2]],
    to: [to[0], to[2]],
    headingDegrees,
    letter: letterOf(plan, before.id),
  };
}
