import type { Performer, Towards } from '../../plan/schema/cast';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { changedOnTheSpot, type Place, placeAt } from './place';
import { paceOf } from './pose/gait';
import { type Track, trackOf, type Walk } from './track';
import { followed, type HeadingLine, smooth, steadyHeading, turnBetween } from './turning';
import { headingBetween, headingOn } from './way/path';

/** Which way a performer is turned on a walk, before the turns at its ends, and how the strides add up. */
interface WalkLine {
  /** Which way the walk goes. */
  readonly way: HeadingLine;
  /** Which way the body faces: the same, or what it keeps facing. */
  readonly body: HeadingLine;
}

/** A performer's track with the headings along it. Headings depend on places alone, so who faces whom goes in no circle. */
export interface Course {
  readonly track: Track;
  readonly stay: (k: number) => HeadingLine;
  readonly walk: (k: number) => WalkLine;
  /** Cycles of two steps gone on a walk after `gone` seconds, `metres` along it. */
  readonly strides: (k: number, gone: number, metres: number) => number;
}

/** Time of the turn at each end of a walk; common practice, no source. */
const TURN_SECONDS = 0.5;
/** Nearer than this, somebody is at the same spot and gives nothing to face; common practice, no source. */
const SAME_SPOT_METRES = 0.05;
/** How often strides of changing length are added up. */
const STRIDES_PER_SECOND = 48;

/** What is faced: where it is at an instant, and whether it moves between two. */
interface Target {
  readonly at: (seconds: number) => Spot | null;
  readonly moves: (fromSeconds: number, untilSeconds: number) => boolean;
  /** The instants between which it moves at all. */
  readonly restless: readonly [number, number] | null;
}

const levelOf = (place: Place | null): Spot | null => place && [place.at[0], place.at[2]];

function targetOf(towards: Towards, performer: Performer, plan: Plan): Target | null {
  if ('point' in towards) {
    const [x, , z] = towards.point;
    return { at: () => [x, z], moves: () => false, restless: null };
  }
  const other = plan.cast.find(({ id }) => id === towards.who);
  if (!other || other.id === performer.id) return null;
  const track = trackOf(other, plan);
  const { stays, walks } = track;
  return {
    at: (seconds) => levelOf(placeAt(track, seconds)),
    moves: (fromSeconds, untilSeconds) =>
      walks.some(
        ({ goes }, k) =>
          goes && stays[k].untilSeconds < untilSeconds && stays[k + 1].fromSeconds > fromSeconds,
      ),
    restless: walks.length > 0 ? [stays[0].untilSeconds, stays[walks.length].fromSeconds] : null,
  };
}

/** The heading from one place towards another; `otherwise` at the same spot. */
function towardsHeading(from: Spot, to: Spot | null, otherwise: number): number {
  if (!to) return otherwise;
  const [dx, dz] = [to[0] - from[0], to[1] - from[1]];
  const isThere = dx * dx + dz * dz < SAME_SPOT_METRES * SAME_SPOT_METRES;
  return isThere ? otherwise : (headingBetween(from, to) ?? otherwise);
}

function stayLine(performer: Performer, plan: Plan, track: Track, k: number): HeadingLine {
  const { mark, fromSeconds, untilSeconds } = track.stays[k];
  const target = mark.faces ? targetOf(mark.faces, performer, plan) : null;
  if (!target) return steadyHeading(mark.headingDegrees);
  const wanted = (seconds: number) => towardsHeading(mark.at, target.at(seconds), mark.headingDegrees);
  const walk = track.walks[k];
  // Until they leave; before the first mark and after the last for as long as the other moves.
  const begins = k === 0 && target.restless ? Math.min(fromSeconds, target.restless[0]) : fromSeconds;
  let ends = untilSeconds;
  if (!walk) ends = target.restless ? Math.max(fromSeconds, target.restless[1]) : fromSeconds;
  else if (!walk.goes) ends = track.stays[k + 1].fromSeconds;
  return target.moves(begins, ends) ? followed(wanted, begins, ends) : steadyHeading(wanted(begins));
}

function walkLine(performer: Performer, plan: Plan, track: Track, k: number): WalkLine {
  const [from, to] = [track.stays[k], track.stays[k + 1]];
  const { path, headingReachMetres: reach } = track.walks[k];
  const metresAt = (seconds: number) => placeAt(track, seconds)?.metres ?? 0;
  const straight = path.places.length === 2;
  const first = headingOn(path, 0, path.metres / 2) ?? from.mark.headingDegrees;
  const way = straight
    ? steadyHeading(first)
    : followed(
        (seconds) =>
          // At the very end the next stay has begun.
          headingOn(path, seconds < to.fromSeconds ? metresAt(seconds) : path.metres, reach) ?? first,
        from.untilSeconds,
        to.fromSeconds,
      );
  const faces = to.mark.facesOnTheWay;
  const target = faces ? targetOf(faces, performer, plan) : null;
  if (!target) return { way, body: way };
  const body = followed(
    (seconds) => {
      const own = seconds < to.fromSeconds ? levelOf(placeAt(track, seconds)) : to.mark.at;
      return towardsHeading(own ?? to.mark.at, target.at(seconds), way.at(seconds));
    },
    from.untilSeconds,
    to.fromSeconds,
  );
  return { way, body };
}

/** How the strides of a walk add up whose steps change in length with which way the body faces. */
function strideLine(course: Course, k: number): (gone: number) => number {
  const { track } = course;
  const walk = track.walks[k];
  const start = track.stays[k].untilSeconds;
  const steps = Math.max(1, Math.ceil(walk.seconds * STRIDES_PER_SECOND));
  const each = walk.seconds / steps;
  const strides = new Float64Array(steps + 1);
  let before = 0;
  for (let n = 1; n <= steps; n += 1) {
    const end = n === steps ? walk.path.metres : (placeAt(track, start + n * each)?.metres ?? 0);
    const middle = start + (n - 0.5) * each;
    const place = placeAt(track, middle);
    const turn = place ? turnBetween(headingAt(course, place, middle), course.walk(k).way.at(middle)) : 0;
    strides[n] = strides[n - 1] + (end - before) / (walk.strideMetres * paceOf(turn, walk.gait));
    before = end;
  }
  return (gone) => {
    const at = Math.min(steps, Math.max(0, gone / each));
    const lower = Math.min(steps - 1, Math.floor(at));
    return strides[lower] + (strides[lower + 1] - strides[lower]) * (at - lower);
  };
}

function lazily<Made>(make: (k: number) => Made): (k: number) => Made {
  const made: Made[] = [];
  return (k) => {
    made[k] ??= make(k);
    return made[k];
  };
}

function buildCourse(performer: Performer, plan: Plan): Course {
  const track = trackOf(performer, plan);
  const strideLines = lazily((k: number) => strideLine(course, k));
  const course: Course = {
    track,
    stay: lazily((k) => stayLine(performer, plan, track, k)),
    walk: lazily((k) => walkLine(performer, plan, track, k)),
    strides: (k, gone, metres) =>
      track.stays[k + 1].mark.facesOnTheWay ? strideLines(k)(gone) : metres / track.walks[k].strideMetres,
  };
  return course;
}

/** Which way the body faces at an instant, compass degrees. */
export function headingAt(course: Course, place: Place, seconds: number): number {
  const { track } = course;
  const { stay: k, gone } = place;
  if (gone === null) return course.stay(k).at(seconds);
  const walk = track.walks[k];
  const [leave, arrive] = [track.stays[k].untilSeconds, track.stays[k + 1].fromSeconds];
  const there = course.stay(k + 1).at(arrive);
  if (!walk.goes) {
    const here = course.stay(k);
    const [now, last] = [here.at(seconds), here.at(arrive)];
    // What is left to turn is counted at the end, so that following somebody until then cannot change its way round.
    return now + changedOnTheSpot(walk, gone) * (turnBetween(last, there) + turnBetween(now, last));
  }
  return turnedAtEnds(course.stay(k).at(leave), there, course.walk(k).body, walk, leave, seconds);
}

/** The heading on a walk: out of the one that it begins with, and into the one that it ends with. */
function turnedAtEnds(
  here: number,
  there: number,
  body: HeadingLine,
  walk: Walk,
  leave: number,
  seconds: number,
): number {
  const turn = Math.min(TURN_SECONDS, walk.seconds / 2);
  const gone = seconds - leave;
  const left = walk.seconds - gone;
  const now = body.at(seconds);
  if (gone < turn) {
    const turned = body.at(leave + turn);
    return here + smooth(gone / turn) * (turnBetween(here, turned) + turnBetween(turned, now));
  }
  if (left >= turn) return now;
  const turned = body.at(leave + walk.seconds - turn);
  return there + smooth(left / turn) * (turnBetween(there, turned) + turnBetween(turned, now));
}

interface Kept {
  readonly track: Track;
  /** The cast, where somebody of it is faced. */
  readonly beside: Plan['cast'] | null;
  readonly course: Course;
}

const courses = new WeakMap<Performer, Kept>();
const isSomebody = (towards: Towards | undefined): boolean => towards !== undefined && 'who' in towards;

/** The performer's course among the plan's cast, kept while what it depends on stays the same. */
export function courseOf(performer: Performer, plan: Plan): Course {
  const track = trackOf(performer, plan);
  const known = courses.get(performer);
  if (known && known.track === track && (known.beside === null || known.beside === plan.cast))
    return known.course;
  const follows = performer.marks.some((mark) => isSomebody(mark.faces) || isSomebody(mark.facesOnTheWay));
  const course = buildCourse(performer, plan);
  courses.set(performer, { track, beside: follows ? plan.cast : null, course });
  return course;
}
