import type { Looks, Performer } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { asin, atan2, cos, hypot } from '../../units/steadyMath';
import { compose, moved, type Placement } from '../build/placement';
import { radians, subtract, type Vec3 } from '../build/vector';
import { placeAt } from './place';
import { aimHead, type HeadAim, type Trunk, turnOf } from './pose/placeBones';
import type { Pose } from './pose/pose';
import type { Skeleton } from './skeleton';
import type { Track } from './track';
import { smooth, turnBetween } from './turning';

/** What somebody looks at on the way from one thing to another; undefined for ahead. */
export interface Take {
  readonly from: Looks | undefined;
  readonly to: Looks | undefined;
  readonly share: number;
}

/** How long a head takes to turn to something else; common practice, no source. */
const TAKE_SECONDS = 0.4;

/**
 * How far a neck turns against the chest: a little inside of what healthy young adults can (80 degrees to each side,
 * 50 down, 80 up), since nobody acts at the end of their range; for up, common practice, no source.
 * Source: [neck-range]
 */
export const NECK_LIMITS = { turnDegrees: 75, downDegrees: 50, upDegrees: 60 } as const;
/** Beyond this the chest comes along, by half of what is more, up to its own limit; common practice, no source. */
const CHEST_BEYOND_DEGREES = 45;
const CHEST_SHARE = 0.5;
const CHEST_LIMIT_DEGREES = 25;
/** As far round as a head gets with the chest's help. */
export const FARTHEST_LOOK_DEGREES = NECK_LIMITS.turnDegrees + CHEST_LIMIT_DEGREES;
/**
 * Farther behind than this a look is given up, by and by until straight behind, so that a head does not snap from one
 * shoulder to the other when somebody passes behind; common practice, no source.
 */
const GIVEN_UP_FROM_DEGREES = 140;
/**
 * Nearer than this to the eyes nothing is looked at, by and by, so that nobody's head whirls round when somebody brushes
 * past; common practice, no source.
 */
const TOO_NEAR_METRES = 0.25;
/** The eyes move as the head turns, so the angles are found by coming nearer: at most this often, and until this near. */
const ROUNDS = 6;
const NEAR_ENOUGH_DEGREES = 1e-4;

/** What a performer looks at, at an instant: at a mark what it says, on the way what the next one says of the way. */
export function takeAt({ stays, walks }: Track, seconds: number): Take {
  const place = placeAt({ stays, walks }, seconds);
  if (!place) return { from: undefined, to: undefined, share: 0 };
  const { stay: k, gone } = place;
  const here = stays[k].mark.looks;
  if (gone === null) return { from: here, to: here, share: 0 };
  const [walk, next] = [walks[k], stays[k + 1].mark];
  const left = walk.seconds - gone;
  const take = Math.min(TAKE_SECONDS, walk.goes ? walk.seconds / 2 : walk.seconds);
  if (!walk.goes) return { from: here, to: next.looks, share: smooth(1 - left / take) };
  const onTheWay = next.looksOnTheWay;
  if (gone < take) return { from: here, to: onTheWay, share: smooth(gone / take) };
  return { from: onTheWay, to: next.looks, share: smooth(1 - left / take) };
}

/** Whether there is anything but looking ahead in a take. */
export const isAhead = ({ from, to, share }: Take): boolean =>
  (from === undefined || share >= 1) && (to === undefined || share <= 0);

/** Angles of a face in the figure's own frame, and how much of them is done. */
interface Wanted {
  readonly turnDegrees: number;
  readonly tiltDegrees: number;
  readonly turnShare: number;
  readonly tiltShare: number;
}

const AHEAD: Wanted = { turnDegrees: 0, tiltDegrees: 0, turnShare: 0, tiltShare: 0 };
const degrees = (value: number): number => (value * 180) / Math.PI;

/** The place in the figure's own frame of a place in the world. */
export function intoOwn(worldFromOwn: Placement, place: Vec3): Vec3 {
  const m = worldFromOwn;
  const [x, y, z] = subtract(place, [m[3], m[7], m[11]]);
  return [m[0] * x + m[4] * y + m[8] * z, m[1] * x + m[5] * y + m[9] * z, m[2] * x + m[6] * y + m[10] * z];
}

function wantedFor(looks: Looks | undefined, target: Vec3 | null, eyes: Vec3): Wanted {
  if (!looks) return AHEAD;
  if ('turnDegrees' in looks) return { ...looks, turnShare: 1, tiltShare: 1 };
  if (!target) return AHEAD;
  const [x, y, z] = subtract(target, eyes);
  const level = hypot(x, z);
  const turnDegrees = degrees(atan2(x, -z));
  const noticed = 1 - (Math.abs(turnDegrees) - GIVEN_UP_FROM_DEGREES) / (180 - GIVEN_UP_FROM_DEGREES);
  const behind = Math.min(1, Math.max(0, noticed));
  return {
    turnDegrees,
    tiltDegrees: level + Math.abs(y) > 0 ? degrees(asin(y / hypot(x, y, z))) : 0,
    turnShare: behind * smooth(level / TOO_NEAR_METRES),
    tiltShare: behind * smooth(hypot(x, y, z) / TOO_NEAR_METRES),
  };
}

const clamped = (value: number, lowest: number, highest: number): number =>
  Math.min(highest, Math.max(lowest, value));

/** Who looks: the body as it holds itself before the head turns. */
export interface Looker {
  readonly skeleton: Skeleton;
  readonly pose: Pose;
  readonly trunk: Trunk;
  readonly worldFromOwn: Placement;
}

/**
 * How a head is turned for a take, within what a neck can do. Exact: what is looked at lies straight ahead of the point
 * between the eyes, in the direction of the face, where the neck reaches that far.
 * @param targets where the two things of the take are in the world, metres; null for angles and for ahead
 */
export function aimFor(looker: Looker, take: Take, targets: readonly [Vec3 | null, Vec3 | null]): HeadAim {
  const { skeleton, pose, trunk, worldFromOwn } = looker;
  const [from, to] = targets.map((target) => target && intoOwn(worldFromOwn, target));
  const [headTilt, headRoll, headTurn] = turnOf(trunk.head);
  const [chestTilt, , chestTurn] = turnOf(trunk.chest);
  let eyes = moved(trunk.head, skeleton.eyes);
  let aim: HeadAim = {
    chestTurnDegrees: 0,
    turnDegrees: headTurn,
    tiltDegrees: headTilt,
    rollDegrees: headRoll,
  };
  for (let round = 0; round < ROUNDS; round += 1) {
    const angles = (wanted: Wanted): [number, number, number] => {
      const turn = clamped(wanted.turnDegrees, -FARTHEST_LOOK_DEGREES, FARTHEST_LOOK_DEGREES);
      const bent = chestTilt * cos(radians(turn));
      const tilt = clamped(wanted.tiltDegrees, bent - NECK_LIMITS.downDegrees, bent + NECK_LIMITS.upDegrees);
      return [
        headTurn + wanted.turnShare * (turn - headTurn),
        headTilt + wanted.tiltShare * (tilt - headTilt),
        headRoll * (1 - wanted.turnShare),
      ];
    };
    const a = angles(wantedFor(take.from, from, eyes));
    const b = take.share > 0 ? angles(wantedFor(take.to, to, eyes)) : a;
    const [turn, tilt, roll] = [0, 1, 2].map((k) => a[k] + take.share * (b[k] - a[k]));
    const more = Math.max(0, Math.abs(turn) - CHEST_BEYOND_DEGREES) * CHEST_SHARE;
    const chest = Math.sign(turn) * Math.min(CHEST_LIMIT_DEGREES, more);
    // The pose's own twist counts against the neck too.
    const most = NECK_LIMITS.turnDegrees;
    const before = aim;
    aim = {
      chestTurnDegrees: chest,
      turnDegrees: clamped(turn, chestTurn + chest - most, chestTurn + chest + most),
      tiltDegrees: tilt,
      rollDegrees: roll,
    };
    const isNear =
      Math.abs(before.turnDegrees - aim.turnDegrees) < NEAR_ENOUGH_DEGREES &&
      Math.abs(before.tiltDegrees - aim.tiltDegrees) < NEAR_ENOUGH_DEGREES;
    if (isNear) break;
    eyes = moved(aimHead(skeleton, pose, trunk, aim).head, skeleton.eyes);
  }
  return aim;
}

/** The face's direction of a head in the world, a unit vector, and its compass heading near that of the body. */
export function gazeOf(
  worldFromOwn: Placement,
  head: Placement,
  bodyDegrees: number,
): { readonly gaze: Vec3; readonly headHeadingDegrees: number } {
  const m = compose(worldFromOwn, head);
  const gaze: Vec3 = [-m[2], -m[6], -m[10]];
  const heading = hypot(gaze[0], gaze[2]) > 1e-9 ? degrees(atan2(gaze[0], -gaze[2])) : bodyDegrees;
  return { gaze, headHeadingDegrees: bodyDegrees + turnBetween(bodyDegrees, heading) };
}

/** The performers that a take looks at, in its order; null for points, angles, ahead and oneself. */
export function lookedAt(
  take: Take,
  performer: Performer,
  plan: Plan,
): readonly [Performer | null, Performer | null] {
  const who = (looks: Looks | undefined): Performer | null => {
    if (!looks || !('who' in looks) || looks.who === performer.id) return null;
    return plan.cast.find(({ id }) => id === looks.who) ?? null;
  };
  return [who(take.from), who(take.to)];
}
