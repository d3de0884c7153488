import { add, scale } from '../form/build/vector';
import { type Landmark, landmarksAt } from '../form/figure/landmarks';
import { type Whereabouts, whereabouts } from '../form/figure/whereabouts';
import { cameraAt } from '../optics/camera';
import { cameraFromWorld, projectPoint } from '../optics/project';
import type { Camera } from '../optics/types';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { atan2, hypot } from '../units/steadyMath';
import { type Shot, signedDegrees } from './continuityShots';
import { type Framing, framingOf, SHOT_SIZES } from './framing';

const DEGREES = 180 / Math.PI;

/** A face turned farther from the lens than this is not what a frame is about: somebody's back. Source: common practice, no source */
const FACE_SEEN_DEGREES = 100;
/** With two faces in frame, the larger is the subject when it is this many times as high. Source: common practice, no source */
const SUBJECT_TIMES = 1.5;
/** Who is nearer to the lens than this share of a subject's distance is before them; others are beside them. Source: common practice, no source */
const BEFORE_SHARE = 0.9;
const WIDEST_SINGLE = SHOT_SIZES.indexOf('medium long shot');
/** Whose gaze is within this of another is with them. Source: common practice, no source */
const LOOKS_AT_DEGREES = 45;

/** A performer in a frame. */
export interface InFrame {
  readonly performerId: string;
  readonly place: Whereabouts;
  readonly framing: Framing;
  /** From where the face looks to the lens, clockwise from above, −180 to 180; positive: they look to frame right. */
  readonly offLensDegrees: number;
  /** From the lens along its axis to the eyes, metres. */
  readonly depthMetres: number;
}

/** Whereto a face looks, as a compass heading. */
export const gazeDegrees = ({ headHeadingDegrees }: Whereabouts): number => headHeadingDegrees;

/** Compass heading from one point to another, degrees. */
export const headingTo = (from: readonly number[], to: readonly number[]): number =>
  atan2(to[0] - from[0], from[2] - to[2]) * DEGREES;

function inFrame(
  camera: Camera,
  performerId: string,
  place: Whereabouts | null,
  framing: Framing | null,
): InFrame | null {
  if (!place || !framing?.size) return null;
  return {
    performerId,
    place,
    framing,
    offLensDegrees: signedDegrees(headingTo(place.eyes, camera.pose.position) - gazeDegrees(place)),
    depthMetres: cameraFromWorld(camera.pose, place.eyes)[2],
  };
}

/** A frame at one of a shot's instants. */
interface Look {
  readonly seen: readonly InFrame[];
  readonly main: InFrame | null;
}

const kept = new WeakMap<Shot, Look[]>();

/** What a shot has in frame at one of its instants: every check asks for it, so it is worked out once. */
function lookOf(shot: Shot, k: number): Look {
  const looks = kept.get(shot) ?? [];
  kept.set(shot, looks);
  const known = looks[k];
  if (known) return known;
  const seen = [...shot.seen].flatMap(([id, each]) => {
    const found = inFrame(shot.cameras[k], id, each[k].place, each[k].framing);
    return found ? [found] : [];
  });
  const look = { seen, main: mainOf(seen) };
  looks[k] = look;
  return look;
}

/** Everybody of whose head a part is in frame at one of a shot's instants. */
export const inShot = (shot: Shot, k: number): readonly InFrame[] => lookOf(shot, k).seen;

/** Whom a shot is about at one of its instants, as `mainOf` has it. */
export const mainIn = (shot: Shot, k: number): InFrame | null => lookOf(shot, k).main;

/** Everybody of whose head a part is in a setup's frame at an instant of the action's clock. */
export function inFrameAt(plan: Plan, setup: Setup, seconds: number): readonly InFrame[] {
  const scene = played(plan, setup);
  const camera = cameraAt(plan, setup, seconds);
  return scene.cast.flatMap((performer) => {
    const place = whereabouts(performer, scene, seconds);
    const framing = framingOf(camera, scene, performer, seconds);
    const found = inFrame(camera, performer.id, place, framing);
    return found ? [found] : [];
  });
}

/** Whether the eyes are inside the frame line. */
const hasEyesIn = ({ framing: { eyes } }: InFrame): boolean =>
  eyes.every((place) => place >= 0 && place <= 1);

/** Of those in frame, whose faces are turned to the lens. */
export const facesOf = (seen: readonly InFrame[]): readonly InFrame[] =>
  seen.filter((each) => hasEyesIn(each) && Math.abs(each.offLensDegrees) <= FACE_SEEN_DEGREES);

/** Whether something so far along the axis is before a subject, and not beside them. */
export const isNearer = (depthMetres: number, subject: InFrame): boolean =>
  depthMetres < BEFORE_SHARE * subject.depthMetres;

/** Whether somebody is framed as in a single: from the knees up, or closer. */
export const isSingle = ({ framing: { size } }: InFrame): boolean =>
  size !== null && SHOT_SIZES.indexOf(size) <= WIDEST_SINGLE;

/**
 * Whom a frame is about: the largest face in it, where every other head is much smaller, or a back before it; where no
 * face is turned to the lens, the one head. Null for a two shot, a group, or nobody.
 */
export function mainOf(seen: readonly InFrame[]): InFrame | null {
  const faces = facesOf(seen);
  const heads = seen.filter(hasEyesIn);
  const [largest] = (faces.length > 0 ? faces : heads).toSorted(
    (a, b) => b.framing.headHeight - a.framing.headHeight,
  );
  if (!largest) return null;
  const isRival = (each: InFrame): boolean =>
    each !== largest &&
    SUBJECT_TIMES * each.framing.headHeight > largest.framing.headHeight &&
    (faces.includes(each) || !isNearer(each.depthMetres, largest));
  return heads.some(isRival) ? null : largest;
}

/** Whether one of two looks at the other. */
export function lookAtEachOther(a: Whereabouts, b: Whereabouts): boolean {
  const isAt = (from: Whereabouts, to: Whereabouts): boolean =>
    Math.abs(signedDegrees(headingTo(from.eyes, to.eyes) - gazeDegrees(from))) <= LOOKS_AT_DEGREES;
  return isAt(a, b) || isAt(b, a);
}

/** A camera to somebody's eyes: how far off, over the deck and straight, and how high above them; metres. */
export function offEyes(
  camera: readonly number[],
  eyes: readonly number[],
): { readonly levelMetres: number; readonly straightMetres: number; readonly aboveMetres: number } {
  const levelMetres = hypot(camera[0] - eyes[0], camera[2] - eyes[2]);
  const aboveMetres = camera[1] - eyes[1];
  return { levelMetres, straightMetres: hypot(levelMetres, aboveMetres), aboveMetres };
}

/** From where to where a body is asked whether it is in a frame, in the middle of it. */
const UPPER_BODY: readonly Landmark[] = ['crown', 'breast'];
/** Half the breadth of a clothed pair of shoulders, metres. Source: common practice, no source */
const HALF_SHOULDERS = 0.25;

/**
 * Who stands nearer to the lens than a subject with head or shoulders in frame, roughly: from the crown to the breast,
 * and half the breadth of the shoulders to either side, `wider` metres more. Whether something hides them is not asked.
 */
export function nearerThan(
  camera: Camera,
  scene: Plan,
  subject: InFrame,
  seconds: number,
  wider = 0,
): readonly string[] {
  const aside = scale(camera.pose.right, HALF_SHOULDERS + wider);
  return scene.cast.flatMap((performer) => {
    if (performer.id === subject.performerId) return [];
    const marks = landmarksAt(performer, scene, seconds);
    if (!marks || !isNearer(cameraFromWorld(camera.pose, marks.eyes)[2], subject)) return [];
    const corners = UPPER_BODY.flatMap((name) =>
      [-1, 1].flatMap((side) => projectPoint(camera, add(marks[name], scale(aside, side))) ?? []),
    );
    const touches = (places: readonly number[]): boolean =>
      places.length > 0 && Math.min(...places) <= 1 && Math.max(...places) >= 0;
    return touches(corners.map(({ x }) => x)) && touches(corners.map(({ y }) => y)) ? [performer.id] : [];
  });
}
