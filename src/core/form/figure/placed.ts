import type { Performer } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { moved } from '../build/placement';
import type { Vec3 } from '../build/vector';
import { courseOf } from './course';
import { type Figure, figureAt } from './figureAt';
import { aimFor, isAhead, lookedAt, takeAt } from './looking';
import { type HandReach, handReachAt, reaching } from './meeting';
import { aimHead, type Bones, type HeadAim, placeBones } from './pose/placeBones';
import type { Pose } from './pose/pose';

/** The figure at an instant: its bones in its own frame. */
export interface Placed {
  readonly figure: Figure;
  readonly aim: HeadAim | null;
  readonly reach: HandReach | null;
  readonly pose: Pose;
  readonly bones: Bones;
}

/**
 * How often the eyes of two who look at each other are worked out from each other's: each time the rest is some eight
 * times smaller, so that a metre apart a hundredth of a degree is left.
 */
const GLANCES = 3;

interface Glanced {
  readonly cast: Plan['cast'];
  readonly beats: Plan['beats'];
  readonly passes: Plan['passes'];
  readonly seconds: number;
  /** By how many glances they are after. */
  readonly eyes: (Vec3 | null)[];
}

/** The eyes of one instant, since everybody who looks at somebody asks for them. */
const glanced = new WeakMap<Performer, Glanced>();

function glancesAt(performer: Performer, { cast, beats, passes }: Plan, seconds: number): Glanced {
  const known = glanced.get(performer);
  const isSame =
    known?.seconds === seconds && known.cast === cast && known.beats === beats && known.passes === passes;
  if (known && isSame) return known;
  const made: Glanced = { cast, beats, passes, seconds, eyes: [] };
  glanced.set(performer, made);
  return made;
}

/** The point between a performer's eyes in the world; after so many glances at whoever they look at. */
function eyesAfter(glances: number, performer: Performer, plan: Plan, seconds: number): Vec3 | null {
  const { eyes } = glancesAt(performer, plan, seconds);
  const known = eyes[glances];
  if (known !== undefined) return known;
  const figure = figureAt(performer, plan, seconds);
  if (!figure) return null;
  const { skeleton, pose, trunk, worldFromOwn } = figure;
  const aim = glances > 0 ? aimAt(glances - 1, figure, performer, plan, seconds) : null;
  const { head } = aim ? aimHead(skeleton, pose, trunk, aim) : trunk;
  const found = moved(worldFromOwn, moved(head, skeleton.eyes));
  eyes[glances] = found;
  return found;
}

/** How the head is turned, towards where others' eyes are after so many glances; null for as the pose has it. */
function aimAt(
  glances: number,
  figure: Figure,
  performer: Performer,
  plan: Plan,
  seconds: number,
): HeadAim | null {
  const take = takeAt(courseOf(performer, plan).track, seconds);
  if (isAhead(take)) return null;
  const people = lookedAt(take, performer, plan);
  const target = (k: 0 | 1): Vec3 | null => {
    const looks = k === 0 ? take.from : take.to;
    const person = people[k];
    if (looks && 'point' in looks) return looks.point;
    return person && eyesAfter(glances, person, plan, seconds);
  };
  return aimFor(figure, take, [target(0), target(1)]);
}

const isSameAim = (a: HeadAim | null, b: HeadAim | null): boolean =>
  a === b ||
  (a !== null &&
    b !== null &&
    a.chestTurnDegrees === b.chestTurnDegrees &&
    a.turnDegrees === b.turnDegrees &&
    a.tiltDegrees === b.tiltDegrees &&
    a.rollDegrees === b.rollDegrees);

const isSameReach = (a: HandReach | null, b: HandReach | null): boolean =>
  a === b ||
  (a !== null &&
    b !== null &&
    a.share === b.share &&
    a.prop === b.prop &&
    a.propTurnDegrees === b.propTurnDegrees &&
    a.at.every((value, k) => value === b.at[k]));

const last = new WeakMap<Performer, Placed>();

/** Places a performer's bones at an instant of the action's clock; null without marks. The same object while still. */
export function placedAt(performer: Performer, plan: Plan, seconds: number): Placed | null {
  const figure = figureAt(performer, plan, seconds);
  if (!figure) return null;
  const aim = aimAt(GLANCES, figure, performer, plan, seconds);
  const reach = handReachAt(figure, plan, seconds);
  const known = last.get(performer);
  if (known && known.figure === figure && isSameAim(known.aim, aim) && isSameReach(known.reach, reach)) {
    return known;
  }
  const { skeleton } = figure;
  const trunk = aim ? aimHead(skeleton, figure.pose, figure.trunk, aim) : figure.trunk;
  const pose = reach ? reaching(figure.pose, skeleton, trunk, reach) : figure.pose;
  const placed: Placed = { figure, aim, reach, pose, bones: placeBones(skeleton, pose, trunk) };
  last.set(performer, placed);
  return placed;
}
