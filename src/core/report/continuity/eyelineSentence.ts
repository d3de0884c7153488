import type { EyelineFinding } from '../../continuity/eyelines';
import type { Side } from '../../continuity/types';
import type { Plan } from '../../plan/schema/plan';
import { formatDegrees } from '../../units/angles';
import { lettersOf, nameOf } from './names';

/** A look less than this above or below the lens is level with it, degrees. */
const LEVEL_DEGREES = 2;

/** `4° above the lens`; nothing for a level look. */
function heightWords(upDegrees: number): string {
  if (Math.abs(upDegrees) < LEVEL_DEGREES) return '';
  return `, ${formatDegrees(Math.abs(upDegrees), 0)} ${upDegrees > 0 ? 'above' : 'below'} it`;
}

/** `4° up`, `4° down`, `level`. */
function slant(upDegrees: number): string {
  if (Math.abs(upDegrees) < LEVEL_DEGREES) return 'level';
  return `${formatDegrees(Math.abs(upDegrees), 0)} ${upDegrees > 0 ? 'up' : 'down'}`;
}

const NAMED: Readonly<Record<EyelineFinding['word'], string>> = {
  'into the lens': '',
  near: 'a near eyeline',
  'three-quarter': 'three-quarter',
  wide: 'a wide eyeline',
  profile: 'in profile',
  'turned away': 'turned away',
};

const towards = (side: Side | null): string => (side === null ? 'into the lens' : `camera ${side}`);

function aloneSentence(plan: Plan, finding: EyelineFinding, own: string): string {
  const { offDegrees, upDegrees, word, side, atId, performerIds } = finding;
  const who = nameOf(plan, performerIds[0]);
  if (side === null) return `${own}: ${who} looks into the lens${heightWords(upDegrees)}.`;
  const whom = atId === null ? '' : ` at ${nameOf(plan, atId)},`;
  const off = `${formatDegrees(Math.abs(offDegrees), 0)} off the lens to ${towards(side)}`;
  return `${own}: ${who} looks${whom} ${off}${heightWords(upDegrees)}, ${NAMED[word]}.`;
}

/** Where a performer looks in a setup, or how two singles answer each other. */
export function eyelineSentence(plan: Plan, finding: EyelineFinding): string {
  const [own, other] = lettersOf(plan, finding);
  const { against, what, side } = finding;
  if (what === 'alone' || !against) return aloneSentence(plan, finding, own);
  const [one, two] = finding.performerIds.map((id) => nameOf(plan, id));
  if (what === 'same way') {
    return `${own} has ${one} look ${towards(side)}, as ${two} does in ${other}: their looks do not meet across the cut.`;
  }
  if (what === 'heights') {
    const [a, b] = [finding, against].map(({ upDegrees }) => slant(upDegrees));
    return `${own} answers ${other}, but ${one} looks ${a} and ${two} ${b}: their heights do not meet.`;
  }
  return `${own} answers ${other}: ${one} looks ${towards(side)}, ${two} ${towards(against.side)}, and their heights meet.`;
}
