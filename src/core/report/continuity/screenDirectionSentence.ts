import type { ScreenDirectionFinding } from '../../continuity/screenDirection';
import type { ScreenDirection } from '../../continuity/screenDirectionAt';
import type { Plan } from '../../plan/schema/plan';
import { letterOf, lettersOf, nameOf } from './names';

const GOES: Readonly<Record<ScreenDirection, string>> = {
  'left to right': 'goes left to right',
  'right to left': 'goes right to left',
  towards: 'comes straight at the camera',
  away: 'goes straight away from the camera',
};

/** Which way a performer goes in a setup, and whether that is as in the setup before. */
export function screenDirectionSentence(plan: Plan, finding: ScreenDirectionFinding): string {
  const [own, other] = lettersOf(plan, finding);
  const { direction, againstDirection, standing, neutralId } = finding;
  const goes = `${own}: ${nameOf(plan, finding.performerIds[0])} ${GOES[direction]}`;
  if (againstDirection === null) return `${goes}.`;
  if (standing === 'holds') return `${goes}, as in ${other}.`;
  if (neutralId === null)
    return `${goes}, but ${againstDirection} in ${other}: the cut turns the walk round.`;
  return `${goes}, and ${againstDirection} in ${other}; ${letterOf(plan, neutralId)} lies between, straight on or away.`;
}
