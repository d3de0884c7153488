import type { DirtySingleFinding, NearPerformer } from '../../continuity/dirty';
import type { Plan } from '../../plan/schema/plan';
import { formatNumber, NBSP } from '../../units/numbers';
import { formatSeconds } from '../../units/seconds';
import { formatShare } from '../../units/shares';
import { placeInFrame } from '../sentences';
import { letterOf, nameOf, namesOf } from './names';

/** A part counts as named when it makes up this share of the largest part. */
const WORTH_NAMING = 0.3;
/** A share that grows by more than this over the span is told as the most that it comes to. */
const STEADY_SHARE = 0.01;

const partsOf = ({ parts }: NearPerformer): string =>
  parts
    .filter(({ share }) => share >= parts[0].share * WORTH_NAMING)
    .slice(0, 2)
    .map(({ part }) => part)
    .join(' and ');

/** `, soft by 1.2 mm on the sensor`; nothing where it is not known. */
function softness({ blurMm, sharp }: NearPerformer): string {
  if (blurMm === null) return '';
  if (sharp) return ', sharp';
  return `, soft by ${formatNumber(blurMm, blurMm < 0.1 ? 2 : 1)}${NBSP}mm on the sensor`;
}

/** Who takes how much of a single, where, and how soft; or that it is clean. */
export function dirtySentence(plan: Plan, finding: DirtySingleFinding): string {
  const own = letterOf(plan, finding.setupId);
  const subject = nameOf(plan, finding.subjectId);
  const { near, eyesBehindId, shares, atSeconds } = finding;
  if (eyesBehindId !== null) {
    const when = atSeconds === null ? '' : ` at ${formatSeconds(atSeconds)}`;
    return `${own}: ${nameOf(plan, eyesBehindId)} stands before ${subject}’s eyes${when}.`;
  }
  const [first, ...others] = near;
  if (!first) return `${own}: the single on ${subject} is clean.`;
  const upTo = shares[1] - shares[0] > STEADY_SHARE ? 'up to ' : '';
  const place = placeInFrame(first.extent, first.touches);
  const also =
    others.length > 0
      ? `; ${namesOf(
          plan,
          others.map(({ performerId }) => performerId),
        )} too`
      : '';
  const verb = partsOf(first).includes(' and ') || partsOf(first) === 'legs' ? 'take' : 'takes';
  return (
    `${own}: ${nameOf(plan, first.performerId)}’s ${partsOf(first)} ${verb} ${upTo}${formatShare(first.share)} ` +
    `of the frame ${place}${softness(first)}${also}.`
  );
}
