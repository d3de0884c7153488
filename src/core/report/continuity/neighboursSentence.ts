import type { ShotSize } from '../../continuity/framing';
import type { SizeChangeFinding, ThirtyDegreesFinding } from '../../continuity/neighbours';
import type { Plan } from '../../plan/schema/plan';
import { formatDegrees } from '../../units/angles';
import { lettersOf, nameOf } from './names';

const article = (size: ShotSize): string => `${/^[aeiou]/.test(size) ? 'an' : 'a'} ${size}`;

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven'];

/** `two sizes tighter`. */
function stepWords(steps: number): string {
  const count = Math.abs(steps);
  return `${NUMBERS[count] ?? count} ${count === 1 ? 'size' : 'sizes'} ${steps > 0 ? 'wider' : 'tighter'}`;
}

/** How far a camera goes round its subject from the setup before. */
export function thirtyDegreesSentence(plan: Plan, finding: ThirtyDegreesFinding): string {
  const [own, before] = lettersOf(plan, finding);
  const { angleDegrees, sizes, steps, standing } = finding;
  const who = nameOf(plan, finding.performerIds[0]);
  const round = `${formatDegrees(angleDegrees, 0)} round ${who} from ${before}`;
  if (standing === 'breaks')
    return `${own} is only ${round} and just as wide, ${article(sizes[1])}: the cut jumps.`;
  if (standing === 'said') return `${own} is only ${round} and ${stepWords(steps)}: the cut may jump.`;
  if (angleDegrees < 30) return `${own} is ${round}, but ${stepWords(steps)}: a cut along the axis.`;
  return `${own} is ${round}.`;
}

/** How the size of a subject changes from the setup before. */
export function sizeChangeSentence(plan: Plan, finding: SizeChangeFinding): string {
  const [own, before] = lettersOf(plan, finding);
  const { sizes, steps } = finding;
  const has = `${own} has ${nameOf(plan, finding.performerIds[0])} in ${article(sizes[1])}`;
  return steps === 0 ? `${has}, as ${before} does.` : `${has}, ${stepWords(steps)} than ${before}.`;
}
