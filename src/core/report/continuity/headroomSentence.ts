import type { HeadroomFinding } from '../../continuity/headroom';
import type { Plan } from '../../plan/schema/plan';
import { formatShare } from '../../units/shares';
import { letterOf, nameOf } from './names';

/** What is wrong with the room over a head. */
export function headroomSentence(plan: Plan, finding: HeadroomFinding): string {
  const { size, fault, headroom, mostHeadroom } = finding;
  const own = `${letterOf(plan, finding.setupId)}, ${size}`;
  const whose = `${nameOf(plan, finding.performerIds[0])}’s`;
  return fault === 'crown cut'
    ? `${own}: ${whose} crown is cut by ${formatShare(-headroom)} of the frame’s height.`
    : `${own}: ${formatShare(headroom)} of the frame’s height is left over ${whose} head; ${formatShare(mostHeadroom)} is usual at most.`;
}
