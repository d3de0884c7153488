import type { Plan } from '../plan/schema/plan';
import { inOneGo } from '../units/steps';
import { looksWhere, type Shot, shotsOf, spansWhere } from './continuityShots';
import { type Eyeline, type EyelineWord, eyelineOf, eyesOfOthers, isFaceSeen } from './eyelineAt';
import { type JudgedLine, linesOf } from './linesWanted';
import { stepsOver } from './stepsOver';
import type { ContinuityBase, Side } from './types';

/**
 * Where somebody looks in one setup (*alone*), or how two singles of a pair answer each other: the looks *meet* across
 * the cut, go the *same way*, or meet but at *heights* that do not.
 */
export type EyelineWhat = 'alone' | 'meet' | 'same way' | 'heights';

/** A performer's eyeline in a setup. `performerIds` names them first, and where two singles are compared the other too. */
export interface EyelineFinding extends ContinuityBase<'eyeline'> {
  readonly what: EyelineWhat;
  /** Off the lens at `atSeconds`, seen from above, degrees; positive to camera right. */
  readonly offDegrees: number;
  /** Above the lens then, degrees; negative below it. */
  readonly upDegrees: number;
  readonly word: EyelineWord;
  /** Null for a look into the lens. */
  readonly side: Side | null;
  /** Least and most of `offDegrees` while the face is seen. */
  readonly rangeDegrees: readonly [number, number];
  /** Whom the face points at then; null for nobody. */
  readonly atId: string | null;
  /** When the face is seen, on the action's clock, seconds. */
  readonly spans: readonly (readonly [number, number])[];
  /** The other single's eyeline; null where it stands alone. */
  readonly against: {
    readonly offDegrees: number;
    readonly upDegrees: number;
    readonly side: Side | null;
    readonly atSeconds: number;
  } | null;
}

/** How much the angle up of one may differ from the angle down of the other, degrees. Source: common practice, no source */
const HEIGHTS_DEGREES = 10;

/** A head smaller than this tells nobody where it looks, as a share of the frame's height. Source: common practice, no source */
const LEAST_HEAD = 0.05;

/** A performer in a setup at the looks at which their face is seen. */
interface FaceSeen {
  readonly shot: Shot;
  readonly performerId: string;
  /** Places among the shot's instants. */
  readonly places: readonly number[];
  readonly eyelines: ReadonlyMap<number, Eyeline>;
}

function facesIn(shot: Shot): readonly FaceSeen[] {
  return shot.scene.cast.flatMap(({ id }): FaceSeen[] => {
    const eyelines = new Map<number, Eyeline>();
    const places = looksWhere(shot, (k) => {
      const { place, framing } = shot.seen.get(id)?.[k] ?? {};
      if (!place || !framing?.size || framing.headHeight < LEAST_HEAD) return false;
      const others = eyesOfOthers(shot.scene.cast, id, (other) => shot.seen.get(other)?.[k]?.place ?? null);
      const eyeline = eyelineOf(place, shot.cameras[k].pose.position, others);
      eyelines.set(k, eyeline);
      return isFaceSeen(eyeline);
    });
    return places.length > 0 ? [{ shot, performerId: id, places, eyelines }] : [];
  });
}

const middleOf = (places: readonly number[]): number => places[Math.floor((places.length - 1) / 2)];

function eyelineAt({ eyelines }: FaceSeen, k: number): Eyeline {
  const eyeline = eyelines.get(k);
  if (!eyeline) throw new Error(`eyelineAt: nothing at look ${k}`);
  return eyeline;
}

/** The look that a face is told by: in the middle of when it looks at whom it looks at most, else of when it is seen. */
function tellingLook(face: FaceSeen): number {
  const at = new Map<string, number[]>();
  for (const k of face.places) {
    const { atId } = eyelineAt(face, k);
    if (atId !== null) at.set(atId, [...(at.get(atId) ?? []), k]);
  }
  const longest = [...at.values()].reduce<readonly number[]>(
    (best, each) => (each.length > best.length ? each : best),
    [],
  );
  return middleOf(longest.length > 0 ? longest : face.places);
}

function findingOf(face: FaceSeen, k: number, rest: Partial<EyelineFinding>): EyelineFinding {
  const { shot, performerId, places } = face;
  const { offDegrees, upDegrees, word, side, atId } = eyelineAt(face, k);
  const all = places.map((place) => eyelineAt(face, place).offDegrees);
  return {
    kind: 'eyeline',
    standing: 'holds',
    setupId: shot.setup.id,
    againstId: null,
    performerIds: [performerId],
    atSeconds: shot.instants[k],
    what: 'alone',
    offDegrees,
    upDegrees,
    word,
    side,
    rangeDegrees: [Math.min(...all), Math.max(...all)],
    atId,
    spans: spansWhere(shot, places),
    against: null,
    ...rest,
  };
}

/** The looks at which a setup has one of a pair to itself: the face is seen and looks at the other, whose face is not. */
function singleLooks(face: FaceSeen, otherId: string, other: FaceSeen | undefined): readonly number[] {
  const seen = new Set(other?.places);
  return face.places.filter((k) => eyelineAt(face, k).atId === otherId && !seen.has(k));
}

interface Single {
  readonly face: FaceSeen;
  readonly looks: readonly number[];
}

/** The looks of two singles that come nearest to each other on the action's clock; of many at once, those in the middle. */
function nearestLooks(
  a: Single,
  b: Single,
): { readonly a: number; readonly b: number; readonly apart: number } {
  const couples = a.looks.map((k) => {
    const seconds = a.face.shot.instants[k];
    let best = { a: k, b: b.looks[0], apart: Infinity };
    for (const other of b.looks) {
      const apart = Math.abs(b.face.shot.instants[other] - seconds);
      if (apart < best.apart) best = { a: k, b: other, apart };
    }
    return best;
  });
  const least = Math.min(...couples.map(({ apart }) => apart));
  // Spans need not begin together, so their looks may lie up to half a look apart.
  const near = couples.filter(({ apart }) => apart <= least + 0.13);
  return near[Math.floor((near.length - 1) / 2)];
}

function compared(later: Single, earlier: Single): EyelineFinding {
  const { a, b } = nearestLooks(later, earlier);
  const own = eyelineAt(later.face, a);
  const other = eyelineAt(earlier.face, b);
  const isSameWay = own.side !== null && own.side === other.side;
  const isApart = Math.abs(own.upDegrees + other.upDegrees) > HEIGHTS_DEGREES;
  return findingOf(later.face, a, {
    what: isSameWay ? 'same way' : isApart ? 'heights' : 'meet',
    standing: isSameWay ? 'breaks' : isApart ? 'said' : 'holds',
    againstId: earlier.face.shot.setup.id,
    performerIds: [later.face.performerId, earlier.face.performerId],
    against: {
      offDegrees: other.offDegrees,
      upDegrees: other.upDegrees,
      side: other.side,
      atSeconds: earlier.face.shot.instants[b],
    },
  });
}

/** Each single of a pair against an earlier one of the other, by the plan's order: the nearest in time, then in order. */
function answersOf({ pair }: JudgedLine, faces: readonly FaceSeen[]): readonly EyelineFinding[] {
  const facesOf = (id: string): readonly FaceSeen[] => faces.filter(({ performerId }) => performerId === id);
  const byShot = new Map(
    pair.map((id) => [id, new Map(facesOf(id).map((face) => [face.shot, face]))] as const),
  );
  const singlesOf = (id: string, otherId: string): readonly Single[] =>
    facesOf(id)
      .map((face) => ({ face, looks: singleLooks(face, otherId, byShot.get(otherId)?.get(face.shot)) }))
      .filter(({ face, looks }) => looks.length > 0 && 2 * looks.length >= face.places.length);
  const [firsts, seconds] = [singlesOf(pair[0], pair[1]), singlesOf(pair[1], pair[0])];
  return [...firsts, ...seconds].flatMap((single): EyelineFinding[] => {
    const { order } = single.face.shot;
    const others = (single.face.performerId === pair[0] ? seconds : firsts).filter(
      ({ face }) => face.shot.order < order,
    );
    let best: { readonly other: Single; readonly apart: number } | null = null;
    for (const other of others) {
      const { apart } = nearestLooks(single, other);
      if (!best || apart <= best.apart + 0.13) best = { other, apart };
    }
    return best ? [compared(single, best.other)] : [];
  });
}

/**
 * Where each performer looks in each setup that sees their face: how far off the lens and to which side of the camera,
 * how far above or below it, and at whom. And for each pair with a line, whether the singles of the two answer each
 * other: across the cut the one has to look to the left of the frame where the other looks to the right, and up by
 * about as much as the other looks down. A single is a setup that has the face of the one, looking at the other, and
 * not the other's face, whose shoulder may well be in it, for half of the time at least that the face is seen. Each is held against the earlier single of the other, by the
 * plan's order, that comes nearest to it on the action's clock; of several, the last.
 *
 * Source: [line-of-action]
 */
export const eyelineFindings = (plan: Plan): readonly EyelineFinding[] => inOneGo(eyelineSteps(plan));

/** The same, setup by setup and then line by line: yields the done share, 0..1. */
export function* eyelineSteps(plan: Plan): Generator<number, readonly EyelineFinding[], void> {
  const faces = yield* stepsOver(shotsOf(plan), facesIn);
  const alone = faces.map((face) => findingOf(face, tellingLook(face), {}));
  return [...alone, ...linesOf(plan).flatMap((line) => answersOf(line, faces))];
}
