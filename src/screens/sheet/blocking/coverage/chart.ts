import type { Coverage, CoverageInterval, CoverageRow } from '../../../../core/continuity/coverage';
import type { ShotSize } from '../../../../core/continuity/framing';

/** Intervals one after another, by their places: from the first to the last of them. */
interface Stretch {
  readonly first: number;
  readonly last: number;
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

/** What one setup has of a row in one size, without a gap. */
export interface Bar extends Stretch {
  readonly setupId: string;
  readonly size: ShotSize;
  /** Whether it has all of these intervals, or only part of one of them. */
  readonly whole: boolean;
  /** Its line within the row, from the top. */
  readonly line: number;
}

export interface ChartRow {
  readonly performerIds: readonly string[];
  readonly bars: readonly Bar[];
  /** Where something happens with them and no setup has it. */
  readonly holes: readonly Stretch[];
  /** How many lines its bars need; one at least. */
  readonly lines: number;
}

/** Shares from here up are all of an interval: ends of spans fall between frames. */
const WHOLE_SHARE = 0.995;

const stretchOf = (intervals: readonly CoverageInterval[], first: number, last: number): Stretch => ({
  first,
  last,
  fromSeconds: intervals[first].fromSeconds,
  toSeconds: intervals[last].toSeconds,
});

/** Runs of places that follow each other and are alike. */
function runsOf<Kind>(
  count: number,
  kindAt: (place: number) => Kind | null,
): readonly { readonly kind: Kind; readonly first: number; readonly last: number }[] {
  const runs: { kind: Kind; first: number; last: number }[] = [];
  for (let place = 0; place < count; place += 1) {
    const kind = kindAt(place);
    const before = runs[runs.length - 1];
    if (kind === null) continue;
    if (before && before.last === place - 1 && before.kind === kind) before.last = place;
    else runs.push({ kind, first: place, last: place });
  }
  return runs;
}

function barsOf({ cells }: CoverageRow, intervals: readonly CoverageInterval[]): readonly Bar[] {
  const setupIds = [...new Set(cells.flatMap(({ setups }) => setups.map(({ setupId }) => setupId)))];
  // A setup keeps to one line of the row; a line is taken again once the setup on it is over.
  const taken: number[] = [];
  return setupIds
    .map((setupId) => {
      const at = (place: number) => cells[place].setups.find((each) => each.setupId === setupId);
      const runs = runsOf(cells.length, (place) => at(place)?.size ?? null);
      return { setupId, at, runs };
    })
    .toSorted((a, b) => a.runs[0].first - b.runs[0].first)
    .flatMap(({ setupId, at, runs }) => {
      const free = taken.findIndex((last) => last < runs[0].first);
      const line = free < 0 ? taken.length : free;
      taken[line] = runs[runs.length - 1].last;
      return runs.map(({ kind, first, last }): Bar => {
        const places = Array.from({ length: last - first + 1 }, (_, k) => first + k);
        const whole = places.every((place) => (at(place)?.share ?? 0) >= WHOLE_SHARE);
        return { ...stretchOf(intervals, first, last), setupId, size: kind, whole, line };
      });
    });
}

/** The rows of a chart of coverage: stretches of one setup in one size as bars, and what nobody has of single performers. */
export function chartRows({ rows, intervals }: Coverage): readonly ChartRow[] {
  return rows.map((row) => {
    const bars = barsOf(row, intervals);
    const holeAt = (place: number): true | null =>
      row.performerIds.length === 1 && row.cells[place].isInPlay && row.cells[place].share === 0
        ? true
        : null;
    return {
      performerIds: row.performerIds,
      bars,
      holes: runsOf(intervals.length, holeAt).map(({ first, last }) => stretchOf(intervals, first, last)),
      lines: Math.max(1, ...bars.map(({ line }) => line + 1)),
    };
  });
}

/**
 * Where each interval begins and the last one ends, pixels: each as wide as it has to be to be lettered, and what room
 * is left shared out by their length.
 */
export function columnEdges(
  intervals: readonly CoverageInterval[],
  room: number,
  leastPixels: number,
): readonly number[] {
  const total = intervals.reduce((sum, { fromSeconds, toSeconds }) => sum + toSeconds - fromSeconds, 0);
  const spare = Math.max(0, room - leastPixels * intervals.length);
  const edges = [0];
  for (const { fromSeconds, toSeconds } of intervals)
    edges.push(edges[edges.length - 1] + leastPixels + (spare * (toSeconds - fromSeconds)) / total);
  return edges;
}

/** Where a moment of the clock lies among the columns, pixels; at their ends where it lies outside. */
export function pixelAt(
  intervals: readonly CoverageInterval[],
  edges: readonly number[],
  seconds: number,
): number {
  const place = intervals.findIndex(({ toSeconds }) => seconds < toSeconds);
  if (place < 0) return edges[edges.length - 1];
  const { fromSeconds, toSeconds } = intervals[place];
  const share = Math.max(0, (seconds - fromSeconds) / (toSeconds - fromSeconds));
  return edges[place] + share * (edges[place + 1] - edges[place]);
}
