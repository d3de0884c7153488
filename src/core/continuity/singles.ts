import { cameraAt, glassOf, stateAt } from '../optics/camera';
import { angleDegrees } from '../optics/gate';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { inOneGo } from '../units/steps';
import { type Shot, shotsOf } from './continuityShots';
import { SHOT_SIZES, type ShotSize } from './framing';
import {
  type InFrame,
  inFrameAt,
  isSingle,
  lookAtEachOther,
  mainIn,
  mainOf,
  nearerThan,
  offEyes,
} from './pairs';
import { stepsOver } from './stepsOver';
import type { ContinuityBase, Side, Standing } from './types';

/** How one setup frames its subject at an instant, in what two singles are held against each other by. */
export interface Single {
  readonly setupId: string;
  readonly performerId: string;
  readonly size: ShotSize;
  readonly focalMm: number;
  readonly squeeze: number;
  /** Width of the delivered frame, and the tangent of its half. */
  readonly fieldDegrees: number;
  readonly tanHalfWidth: number;
  /** Straight from the lens to the eyes, metres. */
  readonly distanceMetres: number;
  /** Lens above the eyes, metres. */
  readonly aboveEyesMetres: number;
  readonly tiltDegrees: number;
  /** Crown to chin, and room over the crown, as shares of the frame's height. */
  readonly headHeight: number;
  readonly headroom: number;
  /** From the gaze to the lens, clockwise from above: positive looks to frame right, 0 into the lens. */
  readonly offLensDegrees: number;
  readonly looksTo: Side;
  /** From the eyes to the edge that the face looks to, as a share of the frame's width; what lies behind is the rest. */
  readonly aheadShare: number;
  /** Over whose shoulder it is taken; null for a clean single. */
  readonly overId: string | null;
}

/** By what singles are compared. */
export const SINGLES_ASPECTS = [
  'lens',
  'squeeze',
  'distance',
  'height',
  'tilt',
  'head',
  'looking room',
  'headroom',
  'eyeline',
] as const;
export type SinglesAspect = (typeof SINGLES_ASPECTS)[number];

/**
 * How far two singles may lie apart and still match. Lens, distance and head are the larger over the smaller less one;
 * height is in metres, tilt and eyeline in degrees; looking room and headroom are shares of the frame.
 * Source: common practice, no source
 */
export const SINGLES_TOLERANCES: Readonly<Record<SinglesAspect, number>> = {
  lens: 0.05,
  squeeze: 0,
  distance: 0.1,
  height: 0.1,
  tilt: 3,
  head: 0.1,
  'looking room': 0.05,
  headroom: 0.05,
  eyeline: 8,
};

/** One aspect of two singles: its value in each, and how far that lies apart, in the unit of its tolerance. */
export interface SinglesDifference {
  readonly aspect: SinglesAspect;
  readonly values: readonly [number, number];
  readonly apart: number;
  readonly tolerance: number;
  readonly within: boolean;
}

/** A pair of singles, the earlier setup first, held against each other. */
export interface MatchingSinglesFinding extends ContinuityBase<'matching singles'> {
  readonly singles: readonly [Single, Single];
  /** One for every aspect, in the order of the aspects. */
  readonly differences: readonly SinglesDifference[];
}

/** What a cut shows at once; the others are how it came about. */
const SHOWN: readonly SinglesAspect[] = ['head', 'looking room', 'headroom', 'eyeline'];
/** So many tolerances apart, what a cut shows at once breaks it. Source: common practice, no source */
const BREAKS_TIMES = 3;

function readSingle(plan: Plan, setup: Setup, subject: InFrame, seconds: number): Single {
  const camera = cameraAt(plan, setup, seconds);
  const { focalMm, tiltDegrees } = stateAt(plan, setup, seconds);
  const { framing, place, offLensDegrees, performerId } = subject;
  const { straightMetres, aboveMetres } = offEyes(camera.pose.position, place.eyes);
  const looksTo: Side = offLensDegrees >= 0 ? 'right' : 'left';
  const { tanHalfWidth } = camera.frame;
  return {
    setupId: setup.id,
    performerId,
    // In frame with a part of the head, else nobody would be the subject.
    size: framing.size ?? 'long shot',
    focalMm,
    squeeze: glassOf(plan, setup).lens.squeeze,
    fieldDegrees: angleDegrees(tanHalfWidth),
    tanHalfWidth,
    distanceMetres: straightMetres,
    aboveEyesMetres: aboveMetres,
    tiltDegrees,
    headHeight: framing.headHeight,
    headroom: framing.headroom,
    offLensDegrees,
    looksTo,
    aheadShare: looksTo === 'right' ? 1 - framing.eyes[0] : framing.eyes[0],
    overId: nearerThan(camera, played(plan, setup), subject, seconds)[0] ?? null,
  };
}

/**
 * How a setup frames its subject at an instant of the action's clock, or another performer who is named; null where
 * there is none, or nothing of their head is in frame.
 */
export function singleAt(plan: Plan, setup: Setup, seconds: number, performerId?: string): Single | null {
  const seen = inFrameAt(plan, setup, seconds);
  const subject =
    performerId === undefined ? mainOf(seen) : seen.find((each) => each.performerId === performerId);
  return subject ? readSingle(plan, setup, subject, seconds) : null;
}

const timesLess1 = (a: number, b: number): number => Math.max(a, b) / Math.min(a, b) - 1;
const between = (a: number, b: number): number => Math.abs(a - b);

/** Two singles aspect by aspect. Whoever is shot from the other side has the eyeline mirrored. */
export function compareSingles(
  a: Single,
  b: Single,
  tolerances: Readonly<Record<SinglesAspect, number>> = SINGLES_TOLERANCES,
): readonly SinglesDifference[] {
  const of = (aspect: SinglesAspect, read: (single: Single) => number, apart: number): SinglesDifference => ({
    aspect,
    values: [read(a), read(b)],
    apart,
    tolerance: tolerances[aspect],
    within: apart <= tolerances[aspect],
  });
  return [
    of('lens', (each) => each.fieldDegrees, timesLess1(a.tanHalfWidth, b.tanHalfWidth)),
    of('squeeze', (each) => each.squeeze, between(a.squeeze, b.squeeze)),
    of('distance', (each) => each.distanceMetres, timesLess1(a.distanceMetres, b.distanceMetres)),
    of('height', (each) => each.aboveEyesMetres, between(a.aboveEyesMetres, b.aboveEyesMetres)),
    of('tilt', (each) => each.tiltDegrees, between(a.tiltDegrees, b.tiltDegrees)),
    of('head', (each) => each.headHeight, timesLess1(a.headHeight, b.headHeight)),
    of('looking room', (each) => each.aheadShare, between(a.aheadShare, b.aheadShare)),
    of('headroom', (each) => each.headroom, between(a.headroom, b.headroom)),
    of('eyeline', (each) => each.offLensDegrees, Math.abs(a.offLensDegrees + b.offLensDegrees)),
  ];
}

function standingOf(differences: readonly SinglesDifference[]): Standing {
  if (differences.every(({ within }) => within)) return 'holds';
  const breaks = differences.some(
    ({ aspect, apart, tolerance }) => SHOWN.includes(aspect) && apart > BREAKS_TIMES * tolerance,
  );
  return breaks ? 'breaks' : 'said';
}

/** How often the time that two setups share is looked at for whom each is about. */
const LOOKS = 9;

/** The place among a shot's instants that is nearest to a time; of two as near, the earlier. */
function nearestLook({ instants }: Shot, seconds: number): number {
  let [before, after] = [0, instants.length - 1];
  while (after - before > 1) {
    const middle = (before + after) >> 1;
    if (instants[middle] < seconds) before = middle;
    else after = middle;
  }
  return Math.abs(instants[after] - seconds) < Math.abs(instants[before] - seconds) ? after : before;
}

/** A setup with whom it has a single of, at each of its looks. */
interface Singles {
  readonly shot: Shot;
  readonly subjects: readonly (InFrame | null)[];
}

/** The setups that have a single at any of their looks: only those are held against each other. */
const withSingles = (shots: readonly Shot[]): readonly Singles[] =>
  shots.flatMap((shot) => {
    const subjects = shot.instants.map((_, k) => {
      const main = mainIn(shot, k);
      return main && isSingle(main) ? main : null;
    });
    return subjects.some((subject) => subject !== null) ? [{ shot, subjects }] : [];
  });

/** An instant at which two setups are each about another of two who play together. */
interface Meeting {
  readonly atSeconds: number;
  readonly subjects: readonly [InFrame, InFrame];
}

/** Whether two shot sizes are the same or next to each other. */
const isSimilar = (a: InFrame, b: InFrame): boolean =>
  a.framing.size !== null &&
  b.framing.size !== null &&
  Math.abs(SHOT_SIZES.indexOf(a.framing.size) - SHOT_SIZES.indexOf(b.framing.size)) <= 1;

function isPair(plan: Plan, a: InFrame, b: InFrame): boolean {
  if (a.performerId === b.performerId || !isSimilar(a, b)) return false;
  const isDrawn = (plan.lines ?? []).some(
    ({ pair }) => pair.includes(a.performerId) && pair.includes(b.performerId),
  );
  return isDrawn || lookAtEachOther(a.place, b.place);
}

/**
 * When to hold two setups against each other: of the looks at the time they share, the one nearest to its middle at
 * which both are about a pair, better while both stand still. Null where that is so at less than half of the looks.
 */
function meetingOf(plan: Plan, a: Singles, b: Singles): Meeting | null {
  const [own, others] = [a.shot.instants, b.shot.instants];
  const from = Math.max(own[0], others[0]);
  const to = Math.min(own[own.length - 1], others[others.length - 1]);
  if (from > to) return null;
  const looks = from === to ? 1 : LOOKS;
  const found: Meeting[] = [];
  // Ended where what is left could no longer make half of the looks.
  for (let look = 0; look < looks && 2 * (found.length + looks - look) >= looks; look += 1) {
    const atSeconds = from + (looks === 1 ? 0 : ((to - from) * look) / (looks - 1));
    const first = a.subjects[nearestLook(a.shot, atSeconds)];
    const second = b.subjects[nearestLook(b.shot, atSeconds)];
    if (first && second && isPair(plan, first, second)) found.push({ atSeconds, subjects: [first, second] });
  }
  if (found.length === 0 || 2 * found.length < looks) return null;
  const middle = (from + to) / 2;
  const unrest = ({ subjects, atSeconds }: Meeting): number =>
    (subjects.some(({ place }) => place.isMoving) ? to - from : 0) + Math.abs(atSeconds - middle);
  return found.reduce((best, each) => (unrest(each) < unrest(best) ? each : best));
}

function findingOf(
  [a, b]: readonly [Shot, Shot],
  { atSeconds }: Meeting,
  singles: SinglesAt,
  tolerances: Readonly<Record<SinglesAspect, number>>,
): MatchingSinglesFinding | null {
  const [first, second] = [singles.at(a.setup, atSeconds), singles.at(b.setup, atSeconds)];
  if (!first || !second) return null;
  const differences = compareSingles(first, second, tolerances);
  return {
    kind: 'matching singles',
    standing: standingOf(differences),
    setupId: b.setup.id,
    againstId: a.setup.id,
    performerIds: [first.performerId, second.performerId],
    atSeconds,
    singles: [first, second],
    differences,
  };
}

/** The singles of a plan's setups, each worked out once: the same one is held against many. */
class SinglesAt {
  private readonly known = new Map<Setup, Map<number, Single | null>>();

  constructor(private readonly plan: Plan) {}

  at(setup: Setup, seconds: number): Single | null {
    const bySeconds = this.known.get(setup) ?? new Map<number, Single | null>();
    this.known.set(setup, bySeconds);
    const known = bySeconds.get(seconds);
    if (known !== undefined) return known;
    const found = singleAt(this.plan, setup, seconds);
    bySeconds.set(seconds, found);
    return found;
  }
}

/** Whether both are clean, or both over a shoulder. */
const isAlike = ({ singles: [a, b] }: MatchingSinglesFinding): boolean =>
  (a.overId === null) === (b.overId === null);

/**
 * The pairs of singles of a plan, each held against the other: setups that share time and are each about another of two
 * who look at one another (or whose line is drawn), in sizes that are the same or next to each other. A clean single is
 * held against one over a shoulder only where neither has a partner of its own sort.
 */
export const matchingSingles = (
  plan: Plan,
  tolerances: Readonly<Record<SinglesAspect, number>> = SINGLES_TOLERANCES,
): readonly MatchingSinglesFinding[] => inOneGo(matchingSteps(plan, tolerances));

/** The same, setup by setup: yields the done share, 0..1. */
export function* matchingSteps(
  plan: Plan,
  tolerances: Readonly<Record<SinglesAspect, number>> = SINGLES_TOLERANCES,
): Generator<number, readonly MatchingSinglesFinding[], void> {
  const all = withSingles(shotsOf(plan));
  const singles = new SinglesAt(plan);
  const found = yield* stepsOver(all, (a, place) =>
    all.slice(place + 1).flatMap((b) => {
      const meeting = meetingOf(plan, a, b);
      const finding = meeting && findingOf([a.shot, b.shot], meeting, singles, tolerances);
      return finding ? [finding] : [];
    }),
  );
  const settled = new Set(found.filter(isAlike).flatMap(({ setupId, againstId }) => [setupId, againstId]));
  return found.filter((each) => isAlike(each) || !(settled.has(each.setupId) || settled.has(each.againstId)));
}
