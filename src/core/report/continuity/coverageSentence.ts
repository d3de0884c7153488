import type { CoverageHole } from '../../continuity/coverage';
import type { Plan } from '../../plan/schema/plan';
import { formatSeconds } from '../../units/seconds';
import { namesOf } from './names';

/** Of whom and when nobody has anything. */
export function coverageSentence(plan: Plan, hole: CoverageHole): string {
  const beat = plan.beats.find(({ id }) => id === hole.fromBeat);
  const from = beat ? ` from “${beat.label}”,` : ' from';
  return `No setup has ${namesOf(plan, hole.performerIds, 'or')}${from} ${formatSeconds(hole.fromSeconds)}, to ${formatSeconds(hole.toSeconds)}.`;
}
