import type { LineFinding } from '../../continuity/line';
import { spanOf } from '../../optics/camera';
import type { Plan } from '../../plan/schema/plan';
import { formatDegrees } from '../../units/angles';
import { formatLength, type LengthSystem } from '../../units/lengths';
import { formatSeconds } from '../../units/seconds';
import { lettersOf, nameOf, namesOf } from './names';

/** When it is so, where that is not the whole span of the setup. */
const when = (plan: Plan, { spans, setupId }: LineFinding): string => {
  const setup = plan.setups.find(({ id }) => id === setupId);
  const [first] = spans;
  const last = spans[spans.length - 1];
  if (!setup || !first || first[0] === last[1]) return '';
  const [from, to] = spanOf(plan, setup);
  if (spans.length === 1 && first[0] <= from && first[1] >= to) return '';
  return ` from ${formatSeconds(first[0])} to ${formatSeconds(last[1])}`;
};

/** What a setup does to the line of a pair. */
export function lineSentence(plan: Plan, finding: LineFinding, lengths: LengthSystem = 'm'): string {
  const [own, other] = lettersOf(plan, finding);
  const { what, pair, side, angleDegrees, metres, atSeconds } = finding;
  const line = `the line between ${namesOf(plan, pair)}`;
  const first = nameOf(plan, pair[0]);
  const degrees = formatDegrees(angleDegrees ?? 0, 0);
  if (what === 'establishes') return `${own} sets ${line}: ${first} is at frame ${side}.`;
  if (what === 'holds')
    return `${own} keeps to ${other === '' ? 'its' : `${other}’s`} side of ${line}, ${degrees} off it at the nearest.`;
  if (what === 'over')
    return `${own} stands over ${line}${when(plan, finding)}, ${degrees} and ${formatLength(metres ?? 0, lengths)} past it: ${first} is at frame ${side}.`;
  if (what === 'crosses') {
    const crossing = finding.by === 'cast' ? `sees ${line} swing past it` : `crosses ${line}`;
    const after = finding.reestablishes ? ', for later setups too' : '';
    return `${own} ${crossing} at ${formatSeconds(atSeconds ?? 0, 2)}; from then on ${first} is at frame ${side}${after}.`;
  }
  if (what === 'on the line')
    return `${own} is on ${line}, ${degrees} off it: neutral, it cuts with both sides.`;
  if (what === 'frames neither') return `${own} is to set ${line}, but frames neither of them.`;
  if (what === 'together') return `${own} cannot be held to ${line}: they stand on one spot.`;
  const missing = pair.filter((id) => !plan.cast.find((each) => each.id === id)?.marks.length);
  return `${own} cannot be held to ${line}: ${namesOf(plan, missing, 'or')} has no marks.`;
}
