import type { MatchingSinglesFinding, SinglesAspect, SinglesDifference } from '../../continuity/singles';
import type { Plan } from '../../plan/schema/plan';
import { formatDegrees } from '../../units/angles';
import { formatLength, type LengthSystem } from '../../units/lengths';
import { formatNumber, NBSP } from '../../units/numbers';
import { formatShare } from '../../units/shares';
import { listed } from '../listed';
import { lettersOf } from './names';

/** No more differences than this in a sentence, the worst ones. */
const MOST_NAMED = 3;
/** What is told of a pair that matches, as shares. */
const LIKENESS: readonly SinglesAspect[] = ['lens', 'distance', 'head'];

/** The later setup held against the earlier: `the head is 12 % larger`. */
function clause({ aspect, values: [other, own], apart }: SinglesDifference, lengths: LengthSystem): string {
  const degrees = (value: number): string => formatDegrees(value, 1);
  const more = own > other ? 'more' : 'less';
  switch (aspect) {
    case 'lens':
      return `the field is ${degrees(own)} for ${degrees(other)}`;
    case 'squeeze':
      return `the squeeze is ${formatNumber(own, 2)} for ${formatNumber(other, 2)}`;
    case 'distance':
      return `the eyes are ${formatLength(own, lengths)} off for ${formatLength(other, lengths)}`;
    case 'height':
      return `the lens is ${formatLength(apart, lengths)} ${own > other ? 'higher' : 'lower'} over the eyes`;
    case 'tilt':
      return `the tilt is ${degrees(own)} for ${degrees(other)}`;
    case 'head':
      return `the head is ${formatShare(apart)} ${own > other ? 'larger' : 'smaller'}`;
    case 'looking room':
      return `looking room is ${formatShare(apart)} of the frame ${more}`;
    case 'headroom':
      return `headroom is ${formatShare(apart)} of the frame ${more}`;
    case 'eyeline':
      return own > 0 === other > 0
        ? `both look to frame ${own > 0 ? 'right' : 'left'}`
        : `the look is ${degrees(Math.abs(own))} off the lens for ${degrees(Math.abs(other))}`;
  }
}

/** How two singles match, or in what they differ most. */
export function singlesSentence(
  plan: Plan,
  finding: MatchingSinglesFinding,
  lengths: LengthSystem = 'm',
): string {
  const [own, other] = lettersOf(plan, finding);
  const { differences, standing } = finding;
  if (standing === 'holds') {
    const likeness = differences.filter(({ aspect }) => LIKENESS.includes(aspect));
    const most = Math.max(...likeness.map(({ apart }) => apart));
    // Up to the next whole per cent, so that it is never said too small.
    const within = Math.max(1, Math.ceil(most * 100 - 1e-6));
    return `${own} matches ${other}: lens, distance and head within ${formatNumber(within, 0)}${NBSP}%.`;
  }
  const apart = differences
    .filter(({ within }) => !within)
    .toSorted((a, b) => b.apart / b.tolerance - a.apart / a.tolerance);
  const told = listed(apart.slice(0, MOST_NAMED).map((each) => clause(each, lengths)));
  return standing === 'said'
    ? `${own} matches ${other}, but ${told}.`
    : `${own} does not match ${other}: ${told}.`;
}
