import { landmarksAt } from '../form/figure/landmarks';
import { walksOf } from '../form/figure/walks';
import { spanOf } from '../optics/camera';
import type { Beat, Performer } from '../plan/schema/cast';
import type { Plan } from '../plan/schema/plan';
import { inOneGo } from '../units/steps';
import { ByInstant } from './byInstant';
import { firstFrameWhere, framingIn, isFramed, type Shot, shotSteps } from './continuityShots';
import { SHOT_SIZES, type ShotSize } from './framing';
import { linesOf } from './linesWanted';

/** The action from one beat to the next, seconds on its clock. */
export interface CoverageInterval {
  readonly fromBeat: string;
  readonly toBeat: string;
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

/** What one setup has of a row in an interval. */
export interface CoveredBySetup {
  readonly setupId: string;
  /** For how much of the interval, 0..1. */
  readonly share: number;
  /** The size that it has them in longest; of two, that of the one who is larger in frame. */
  readonly size: ShotSize;
}

export interface CoverageCell {
  readonly setups: readonly CoveredBySetup[];
  /** For how much of the interval some setup has them, 0..1. */
  readonly share: number;
  /** Whether something happens with them: a mark of theirs is at the beat that it begins with, or they walk in it. */
  readonly isInPlay: boolean;
}

/** One performer, or two together, in every interval. */
export interface CoverageRow {
  readonly performerIds: readonly string[];
  /** One for each interval. */
  readonly cells: readonly CoverageCell[];
}

/** Something of the action that no setup has. */
export interface CoverageHole {
  readonly performerIds: readonly string[];
  readonly fromBeat: string;
  readonly toBeat: string;
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

/** Which setup covers whom, when, and at which size. */
export interface Coverage {
  readonly intervals: readonly CoverageInterval[];
  /** Each performer with marks, then each pair that has a line or that some setup frames together. */
  readonly rows: readonly CoverageRow[];
  readonly holes: readonly CoverageHole[];
}

/** A walk shorter than this is a shift of weight, metres. Source: common practice, no source */
const WALKS_METRES = 1;

function intervalsOf(beats: readonly Beat[]): readonly CoverageInterval[] {
  const timed = beats.toSorted((a, b) => a.atSeconds - b.atSeconds);
  return timed.slice(1).flatMap((to, k): CoverageInterval[] => {
    const from = timed[k];
    if (to.atSeconds <= from.atSeconds) return [];
    return [{ fromBeat: from.id, toBeat: to.id, fromSeconds: from.atSeconds, toSeconds: to.atSeconds }];
  });
}

/** When a setup frames all of some performers at once, seconds, to a frame; and in which size at each of its looks. */
interface Holds {
  readonly shot: Shot;
  readonly spans: readonly (readonly [number, number])[];
  readonly sizes: readonly { readonly seconds: number; readonly size: ShotSize }[];
}

type Landmarks = ByInstant<ReturnType<typeof landmarksAt>>;

function holdsOf(shot: Shot, ids: readonly string[], landmarks: Landmarks): Holds {
  const { instants } = shot;
  const framesAll = (k: number): boolean => ids.every((id) => isFramed(shot, id, k));
  const framesAllAt = (seconds: number): boolean =>
    ids.every((id) => (framingIn(shot, id, seconds, landmarks)?.size ?? null) !== null);
  const spans: [number, number][] = [];
  const sizes: { seconds: number; size: ShotSize }[] = [];
  instants.forEach((seconds, k) => {
    if (!framesAll(k)) {
      const last = spans[spans.length - 1];
      if (last && k > 0 && framesAll(k - 1))
        last[1] = firstFrameWhere(instants[k - 1], seconds, (at) => !framesAllAt(at));
      return;
    }
    const begins = k === 0 || !framesAll(k - 1);
    const from = begins && k > 0 ? firstFrameWhere(instants[k - 1], seconds, framesAllAt) : seconds;
    if (begins) spans.push([from, seconds]);
    else spans[spans.length - 1][1] = seconds;
    const framings = ids.flatMap((id) => shot.seen.get(id)?.[k]?.framing ?? []);
    const largest = framings.reduce((best, each) => (each.headHeight > best.headHeight ? each : best));
    if (largest.size) sizes.push({ seconds, size: largest.size });
  });
  return { shot, spans, sizes };
}

const inside = (
  [from, to]: readonly [number, number],
  interval: CoverageInterval,
): readonly [number, number] => [Math.max(from, interval.fromSeconds), Math.min(to, interval.toSeconds)];

function mostCommon(sizes: readonly ShotSize[]): ShotSize {
  const counts = SHOT_SIZES.map((size) => sizes.filter((each) => each === size).length);
  return SHOT_SIZES[counts.indexOf(Math.max(...counts))];
}

/** Seconds that spans cover together. */
function together(spans: readonly (readonly [number, number])[]): number {
  let [sum, until] = [0, -Infinity];
  for (const [from, to] of spans.toSorted((a, b) => a[0] - b[0])) {
    if (to > until) sum += to - Math.max(from, until);
    until = Math.max(until, to);
  }
  return sum;
}

function cellOf(interval: CoverageInterval, holds: readonly Holds[], isInPlay: boolean): CoverageCell {
  const length = interval.toSeconds - interval.fromSeconds;
  const all: (readonly [number, number])[] = [];
  const setups = holds.flatMap(({ shot, spans, sizes }): CoveredBySetup[] => {
    const own = spans.map((span) => inside(span, interval)).filter(([from, to]) => to > from);
    if (own.length === 0) return [];
    all.push(...own);
    const [first, last] = [own[0][0], own[own.length - 1][1]];
    const during = sizes.filter(({ seconds }) => seconds >= first && seconds <= last);
    const nearest = sizes.reduce((best, each) =>
      Math.abs(each.seconds - first) < Math.abs(best.seconds - first) ? each : best,
    );
    const size = mostCommon((during.length > 0 ? during : [nearest]).map((each) => each.size));
    return [{ setupId: shot.setup.id, share: together(own) / length, size }];
  });
  return { setups, share: together(all) / length, isInPlay };
}

/** Whether something happens with a performer between two beats. */
function isInPlay(plan: Plan, performer: Performer, interval: CoverageInterval): boolean {
  if (performer.marks.some(({ beat }) => beat === interval.fromBeat)) return true;
  return walksOf(performer, plan).some(
    ({ metres, leaveSeconds, arriveSeconds }) =>
      metres >= WALKS_METRES && leaveSeconds < interval.toSeconds && arriveSeconds > interval.fromSeconds,
  );
}

function pairsOf(plan: Plan, shots: readonly Shot[]): readonly (readonly [string, string])[] {
  const lines = linesOf(plan).map(({ pair }) => pair);
  const isKnown = (a: string, b: string): boolean =>
    lines.some((pair) => pair.includes(a) && pair.includes(b));
  const meets = plan.cast.map(() => new Set<number>());
  for (const shot of shots)
    for (const k of shot.instants.keys()) {
      const framed = [...plan.cast.keys()].filter((place) => isFramed(shot, plan.cast[place].id, k));
      for (const one of framed) for (const other of framed) if (other > one) meets[one].add(other);
    }
  const met = plan.cast.flatMap((one, place) =>
    plan.cast
      .slice(place + 1)
      .flatMap((other, k): (readonly [string, string])[] =>
        meets[place].has(place + 1 + k) && !isKnown(one.id, other.id) ? [[one.id, other.id]] : [],
      ),
  );
  return [...lines, ...met];
}

/**
 * Which setup has each performer, and each pair as a two shot, from beat to beat: for how much of it and in which size.
 * Somebody is covered while any of their head is in frame; what the set or the others hide is not asked.
 *
 * A hole is an interval in which something happens with a performer and no setup has them for any of it. Something
 * happens where one of their marks is at the beat that it begins with, or where they walk a metre or more in it. Who
 * only goes on standing where they were is no hole, nor is a pair that is never seen together.
 */
export const coverageOf = (plan: Plan): Coverage => inOneGo(coverageSteps(plan));

/** The same, row by row: yields the done share, 0..1. */
export function* coverageSteps(plan: Plan): Generator<number, Coverage, void> {
  const shots = yield* shotSteps(plan);
  const landmarks: Landmarks = new ByInstant(landmarksAt);
  const intervals = intervalsOf(plan.beats);
  const cast = plan.cast.filter(({ marks }) => marks.length > 0);
  const rowOf = (ids: readonly string[]): CoverageRow => {
    const holds = shots.map((shot) => holdsOf(shot, ids, landmarks)).filter(({ spans }) => spans.length > 0);
    const own = cast.filter(({ id }) => ids.includes(id));
    return {
      performerIds: ids,
      cells: intervals.map((interval) =>
        cellOf(
          interval,
          holds.filter(({ shot }) => spanOf(plan, shot.setup)[0] < interval.toSeconds),
          own.length === ids.length && own.every((performer) => isInPlay(plan, performer, interval)),
        ),
      ),
    };
  };
  const pairs = pairsOf(plan, shots);
  const rows: CoverageRow[] = [];
  for (const ids of [...cast.map(({ id }) => [id]), ...pairs]) {
    yield rows.length / (cast.length + pairs.length);
    rows.push(rowOf(ids));
  }
  const singles = rows.slice(0, cast.length);
  const holes = intervals.flatMap(({ ...interval }, k) => {
    const performerIds = singles
      .filter(({ cells }) => cells[k].isInPlay && cells[k].share === 0)
      .flatMap((row) => row.performerIds);
    return performerIds.length > 0 ? [{ performerIds, ...interval }] : [];
  });
  return { intervals, rows, holes };
}
