import type { CameraWise } from '../../../core/continuity/cameraWise';
import type { WalkReading } from '../../../core/form/figure/walks';
import type { Plan } from '../../../core/plan/schema/plan';
import type { WalkHit } from '../../../core/plan/walkWays/hits';
import { cheatWays } from '../../../core/report/continuity/cheatSentence';
import { formatLength, type LengthSystem, METRES_PER_FOOT } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { formatSeconds } from '../../../core/units/seconds';
import { nameInText } from '../words';

const speed = (metresPerSecond: number, lengths: LengthSystem): string =>
  lengths === 'm'
    ? `${formatNumber(metresPerSecond, 1)}${NBSP}m/s`
    : `${formatNumber(metresPerSecond / METRES_PER_FOOT, 1)}${NBSP}ft/s`;

/** How far a walk is and how long it takes: `4.5 m in 3.6 s`; a run says so, and what nobody runs. */
export function walkWords(walk: WalkReading, lengths: LengthSystem): string {
  const seconds = walk.arriveSeconds - walk.leaveSeconds;
  const length = formatLength(walk.metres, lengths, { decimals: 1 });
  if (seconds <= 0) return `${length} in no time, too fast`;
  const how = walk.gait === 'run' && !walk.tooFast ? 'runs ' : '';
  const fast = walk.tooFast ? `, ${speed(walk.cruisingMetresPerSecond, lengths)} is too fast` : '';
  return `${how}${length} in ${formatSeconds(seconds)}${fast}`;
}

const HOW: Readonly<Record<WalkHit['how'], string>> = {
  through: 'through',
  over: 'over',
  'off the edge': 'off the edge of',
  'into a hole': 'over a hole in',
};

/** What a walk meets: `through the stair house`. */
export function hitWords(plan: Plan, { how, pieceId }: WalkHit): string {
  const label = plan.pieces.find(({ id }) => id === pieceId)?.label ?? 'something';
  return `${HOW[how]} ${nameInText(label)}`;
}

/** What a cheat does to a mark: `0.40 m to the left in F only`, left and right as the camera has them. */
export function cheatWords(
  way: CameraWise,
  turnDegrees: number,
  letter: string,
  lengths: LengthSystem,
): string {
  const words = [...cheatWays({ ...way, turnDegrees }, lengths)];
  if (words.length === 0) return `as the master in ${letter} too`;
  const last = words.pop() ?? '';
  return `${words.length > 0 ? `${words.join(', ')} and ` : ''}${last} in ${letter} only`;
}
