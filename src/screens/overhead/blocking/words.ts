import type { WalkReading } from '../../../core/form/figure/walks';
import type { Plan } from '../../../core/plan/schema/plan';
import type { WalkHit } from '../../../core/plan/walkWays/hits';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { formatSeconds } from '../../../core/units/seconds';
import type { Spot } from '../geometry/spots';
import { nameInText } from '../words';

const METRES_PER_FOOT = 0.3048;

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

/** Seen from a camera: to its right and towards it, metres; negative the other way. */
export interface CameraWise {
  readonly rightMetres: number;
  readonly towardsMetres: number;
}

/** The way from one place on the deck to another as a camera of a heading sees it. */
export function cameraWise(from: Spot, to: Spot, cameraHeadingDegrees: number): CameraWise {
  const radians = (cameraHeadingDegrees * Math.PI) / 180;
  const [x, z] = [to[0] - from[0], to[1] - from[1]];
  return {
    rightMetres: x * Math.cos(radians) + z * Math.sin(radians),
    towardsMetres: -(x * Math.sin(radians) - z * Math.cos(radians)),
  };
}

/** Less than this is not said beside a move four times as long, metres. */
const SMALL_METRES = 0.05;
/** Less than this is no move and no turn. */
const LEAST_METRES = 0.005;
const LEAST_DEGREES = 0.5;

/** What a cheat does to a mark: `0.40 m to the left in F only`, left and right as the camera has them. */
export function cheatWords(
  { rightMetres, towardsMetres }: CameraWise,
  turnDegrees: number,
  letter: string,
  lengths: LengthSystem,
): string {
  const [across, along] = [Math.abs(rightMetres), Math.abs(towardsMetres)];
  const said = (metres: number, other: number): boolean =>
    metres >= LEAST_METRES && (metres >= SMALL_METRES || metres * 4 >= other);
  const [aside, ahead] = [said(across, along), said(along, across)];
  const moves: { readonly metres: number; readonly words: string }[] = [];
  if (aside)
    moves.push({
      metres: across,
      words: `${formatLength(across, lengths)} to the ${rightMetres > 0 ? 'right' : 'left'}`,
    });
  if (ahead) {
    const way = towardsMetres > 0 ? ['towards', ' the camera'] : ['away', ' from the camera'];
    moves.push({ metres: along, words: `${formatLength(along, lengths)} ${way[0]}${aside ? '' : way[1]}` });
  }
  const words = moves.toSorted((a, b) => b.metres - a.metres).map((move) => move.words);
  if (Math.abs(turnDegrees) >= LEAST_DEGREES)
    words.push(
      `turned ${Math.round(Math.abs(turnDegrees))}° ${turnDegrees > 0 ? 'clockwise' : 'anticlockwise'}`,
    );
  if (words.length === 0) return `as the master in ${letter} too`;
  const last = words.pop() ?? '';
  return `${words.length > 0 ? `${words.join(', ')} and ` : ''}${last} in ${letter} only`;
}
