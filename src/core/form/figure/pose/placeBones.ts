import { asin, atan2, cos, hypot, sin } from '../../../units/steadyMath';
import {
  compose,
  moved,
  movedBy,
  type Placement,
  rolledBy,
  standingAt,
  tiltedBy,
  turned,
} from '../../build/placement';
import { add, directionOf, mix, scale, subtract, unit, type Vec3 } from '../../build/vector';
import { BALL_AHEAD, HEEL_BEHIND, solePoints } from '../shape/foot';
import { SIDES, type Side, type Skeleton } from '../skeleton';
import type { ArmPose, LegPose, Pose, Turn } from './pose';
import { bend, facing, sided, squareTo } from './reaching';

type Paired = 'upper arm' | 'forearm' | 'hand' | 'thigh' | 'shin' | 'foot' | 'skirt';
/** The bones that shapes ride on. */
export type Bone = 'pelvis' | 'chest' | 'neck' | 'head' | `right ${Paired}` | `left ${Paired}`;
/** Where each bone is in the figure's own frame: feet at the origin, facing −z. */
export type Bones = Readonly<Record<Bone, Placement>>;

const ORIGIN: Vec3 = [0, 0, 0];

function turnedBy([pitch, roll, yaw]: Turn): Placement {
  const level = roll === 0 ? tiltedBy(pitch) : compose(tiltedBy(pitch), rolledBy(roll));
  return yaw === 0 ? level : compose(standingAt(ORIGIN, yaw), level);
}

const at = (outer: Placement, joint: Vec3, turn: Turn): Placement =>
  compose(compose(outer, movedBy(joint)), turnedBy(turn));

/** A turn about the origin, put at a place. */
const placed = ([x, y, z]: Vec3, turn: Placement): Placement => [
  turn[0],
  turn[1],
  turn[2],
  x,
  turn[4],
  turn[5],
  turn[6],
  y,
  turn[8],
  turn[9],
  turn[10],
  z,
];

const raised = (m: Placement, by: number): Placement => m.map((value, k) => (k === 7 ? value + by : value));

const mirrored = (v: Vec3, side: Side): Vec3 => [v[0] * side, v[1], v[2]];

interface FootPlace {
  readonly ankle: Vec3;
  readonly turn: Placement;
}

/** Where a foot is, its lowest point at its clearance above the floor. */
function footPlace(skeleton: Skeleton, leg: LegPose, side: Side): FootPlace {
  const stature = skeleton.measures.statureMetres;
  const tilt = tiltedBy(leg.pitchDegrees);
  const yaw = standingAt(ORIGIN, side * leg.toeOutDegrees);
  let lowest = Number.POSITIVE_INFINITY;
  for (const p of solePoints(stature, skeleton.ankleHeight)) lowest = Math.min(lowest, turned(tilt, p)[1]);
  const pivot: Vec3 = [
    0,
    -skeleton.ankleHeight,
    (leg.pitchDegrees < 0 ? -BALL_AHEAD : HEEL_BEHIND) * stature,
  ];
  const drawn = turned(yaw, subtract(pivot, turned(tilt, pivot)));
  const flat = scale(mirrored(leg.ankle, side), stature);
  return { ankle: [flat[0] + drawn[0], flat[1] - lowest, flat[2] + drawn[2]], turn: compose(yaw, tilt) };
}

function placeArm(
  skeleton: Skeleton,
  chest: Placement,
  arm: ArmPose,
  side: Side,
): [Placement, Placement, Placement] {
  const local = subtract(mirrored(skeleton.shoulder, side), skeleton.waist);
  const shoulder = moved(chest, local);
  const reach = skeleton.upperArm + skeleton.forearm;
  const target = moved(chest, add(local, scale(mirrored(arm.wrist, side), reach)));
  const pole = turned(chest, mirrored(arm.elbow, side));
  const [elbow, wrist] = bend(shoulder, target, skeleton.upperArm, skeleton.forearm, pole);
  const fore = unit(subtract(wrist, elbow));
  const palm = squareTo(turned(chest, mirrored(arm.palm, side)), fore);
  const turn = (arm.bendDegrees * Math.PI) / 180;
  const fingers = add(scale(fore, cos(turn)), scale(palm, sin(turn)));
  const outer = scale(palm, -side);
  return [
    facing(shoulder, unit(subtract(elbow, shoulder)), scale(pole, -1)),
    sided(elbow, fore, outer),
    sided(wrist, fingers, outer),
  ];
}

/** How far a coat's skirt goes along with the thigh. */
const SKIRT_FOLLOWS = { hanging: 0.65, gathered: 0.93 } as const;

function placeLeg(
  skeleton: Skeleton,
  pelvis: Placement,
  leg: LegPose,
  foot: FootPlace,
  side: Side,
  drape: Pose['drape'],
): [Placement, Placement, Placement, Placement] {
  const hip = moved(pelvis, [side * skeleton.hip[0], 0, 0]);
  const pole = turned(pelvis, directionOf(side * leg.kneeOutDegrees));
  const [knee, ankle] = bend(hip, foot.ankle, skeleton.thigh, skeleton.shin, pole);
  const thigh = unit(subtract(knee, hip));
  const hanging = turned(pelvis, [0, -1, 0]);
  return [
    facing(hip, thigh, pole),
    facing(knee, unit(subtract(ankle, knee)), pole),
    compose(movedBy(ankle), foot.turn),
    facing(hip, unit(mix(hanging, thigh, SKIRT_FOLLOWS[drape])), pole),
  ];
}

/** The trunk of a figure in its own frame, before the head is turned or a hand reaches for anything. */
export interface Trunk {
  readonly pelvis: Placement;
  readonly chest: Placement;
  readonly neck: Placement;
  readonly head: Placement;
  readonly feet: readonly FootPlace[];
}

/**
 * Places the trunk for a pose. The pelvis sinks as far as the legs need to reach the floor, and where the pose is
 * upright the crown comes to the full stature.
 */
export function placeTrunk(skeleton: Skeleton, pose: Pose): Trunk {
  const stature = skeleton.measures.statureMetres;
  const middle: Vec3 = [0, skeleton.hip[1], skeleton.hip[2]];
  const low = at(movedBy(add(middle, scale(pose.pelvisShift, stature))), ORIGIN, pose.pelvisTurn);
  const half = scale(pose.headTurn, 0.5);
  const lowChest = at(low, subtract(skeleton.waist, middle), pose.chestTurn);
  const lowNeck = at(lowChest, subtract(skeleton.neck, skeleton.waist), half);
  const lowHead = at(lowNeck, subtract(skeleton.head, skeleton.neck), half);
  let rise = pose.upright * (stature - moved(lowHead, [0, skeleton.crown, 0])[1]);
  const feet = SIDES.map((side, k) => footPlace(skeleton, pose.legs[k], side));
  const longest = (skeleton.thigh + skeleton.shin) * 0.9995;
  SIDES.forEach((side, k) => {
    const hip = moved(low, [side * skeleton.hip[0], 0, 0]);
    const { ankle } = feet[k];
    const level = Math.min(longest, hypot(ankle[0] - hip[0], ankle[2] - hip[2]));
    const highest = ankle[1] + Math.sqrt(longest * longest - level * level);
    rise = Math.min(rise, highest - hip[1]);
  });
  return {
    pelvis: raised(low, rise),
    chest: raised(lowChest, rise),
    neck: raised(lowNeck, rise),
    head: raised(lowHead, rise),
    feet,
  };
}

/** How a head is turned: by angles of the face in the figure's own frame, and what of it the chest turns along. */
export interface HeadAim {
  readonly chestTurnDegrees: number;
  readonly turnDegrees: number;
  readonly tiltDegrees: number;
  readonly rollDegrees: number;
}

const degrees = (value: number): number => (value * 180) / Math.PI;

/** The turn of a placement in the figure's own frame: pitch, roll, yaw, degrees. */
export function turnOf(m: Placement): Turn {
  return [degrees(asin(-m[6])), degrees(atan2(m[4], m[5])), degrees(atan2(-m[2], m[10]))];
}

/** The same trunk with the head turned as told, the neck half way between chest and head. */
export function aimHead(skeleton: Skeleton, pose: Pose, trunk: Trunk, aim: HeadAim): Trunk {
  const middle: Vec3 = [0, skeleton.hip[1], skeleton.hip[2]];
  const { chestTurnDegrees } = aim;
  const chest =
    chestTurnDegrees === 0
      ? trunk.chest
      : at(trunk.pelvis, subtract(skeleton.waist, middle), add(pose.chestTurn, [0, 0, chestTurnDegrees]));
  const face: Turn = [aim.tiltDegrees, aim.rollDegrees, aim.turnDegrees];
  const neckAt = moved(chest, subtract(skeleton.neck, skeleton.waist));
  const neck = placed(neckAt, turnedBy(mix(turnOf(chest), face, 0.5)));
  const headAt = moved(neck, subtract(skeleton.head, skeleton.neck));
  return { ...trunk, chest, neck, head: placed(headAt, turnedBy(face)) };
}

/** Places every bone of a figure for a pose, on its trunk. */
export function placeBones(skeleton: Skeleton, pose: Pose, trunk: Trunk): Bones {
  const { pelvis, chest, neck, head, feet } = trunk;
  const [rightArm, leftArm] = SIDES.map((side, k) => placeArm(skeleton, chest, pose.arms[k], side));
  const [rightLeg, leftLeg] = SIDES.map((side, k) =>
    placeLeg(skeleton, pelvis, pose.legs[k], feet[k], side, pose.drape),
  );
  return {
    pelvis,
    chest,
    neck,
    head,
    'right upper arm': rightArm[0],
    'right forearm': rightArm[1],
    'right hand': rightArm[2],
    'left upper arm': leftArm[0],
    'left forearm': leftArm[1],
    'left hand': leftArm[2],
    'right thigh': rightLeg[0],
    'right shin': rightLeg[1],
    'right foot': rightLeg[2],
    'right skirt': rightLeg[3],
    'left thigh': leftLeg[0],
    'left shin': leftLeg[1],
    'left foot': leftLeg[2],
    'left skirt': leftLeg[3],
  };
}

/**
 * An arm whose palm gets to a place in the figure's own frame, as far as it is long enough.
 * @param palmAt in the figure's own frame, metres
 */
export function armTo(
  skeleton: Skeleton,
  trunk: Trunk,
  side: Side,
  palmAt: Vec3,
  hand: Pick<ArmPose, 'elbow' | 'palm' | 'bendDegrees'>,
): ArmPose {
  const shoulder = moved(trunk.chest, subtract(mirrored(skeleton.shoulder, side), skeleton.waist));
  const way = subtract(palmAt, shoulder);
  const wrist = subtract(way, scale(unit(way), skeleton.hand / 2));
  const reach = skeleton.upperArm + skeleton.forearm;
  const m = trunk.chest;
  const inChest: Vec3 = [
    m[0] * wrist[0] + m[4] * wrist[1] + m[8] * wrist[2],
    m[1] * wrist[0] + m[5] * wrist[1] + m[9] * wrist[2],
    m[2] * wrist[0] + m[6] * wrist[1] + m[10] * wrist[2],
  ];
  return { ...hand, wrist: scale(mirrored(inChest, side), 1 / reach) };
}
