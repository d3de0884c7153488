import { outOfOwnFrame } from '../../plan/areas';
import { bearingOf, metresBetween } from '../../plan/runs';
import type { Point, Spot } from '../../plan/schema/numbers';

/** A corner, and which way from the middle of the thing it lies. */
export interface Corner {
  readonly at: Spot;
  /** Heading on the plan, degrees, for the word by the compass. */
  readonly headingDegrees: number;
}

/** The corners of a rectangle on its foot's middle, wide and deep in metres; each quarter of the compass has one. */
export function rectangleCorners(
  { at, headingDegrees }: { readonly at: Point; readonly headingDegrees: number },
  wide: number,
  deep: number,
): readonly Corner[] {
  const signs: readonly Spot[] = [
    [1, -1],
    [1, 1],
    [-1, 1],
    [-1, -1],
  ];
  return signs.map(([right, back], k) => ({
    at: outOfOwnFrame(at, headingDegrees, [(right * wide) / 2, (back * deep) / 2]),
    headingDegrees: headingDegrees + 45 + 90 * k,
  }));
}

/** Corners of an outline, each named by where it lies in the rectangle around the whole. */
export function outlineCorners(outline: readonly Spot[], northDegrees: number): readonly Corner[] {
  return outline.map((at) => ({ at, headingDegrees: headingWithin(outline, at, northDegrees) }));
}

/**
 * Which way a place lies from the middle of others, as if the rectangle around them, set to north, were a square: the
 * corner of a long roof is north-east even where it lies almost due east.
 */
export function headingWithin(spots: readonly Spot[], at: Spot, northDegrees: number): number {
  const turned = (spot: Spot): Spot => outOfOwnFrame([0, 0, 0], -northDegrees, spot);
  const all = spots.map(turned);
  const [x, z] = turned(at);
  const share = (axis: 0 | 1, value: number): number => {
    const values = all.map((spot) => spot[axis]);
    const [low, high] = [Math.min(...values), Math.max(...values)];
    return high - low < 1e-6 ? 0 : (2 * (value - low)) / (high - low) - 1;
  };
  return bearingOf([0, 0], [share(0, x), share(1, z)]) + northDegrees;
}

/** A corner of a run on one of its faces. */
export interface RunCorner {
  readonly at: Spot;
  /** The corner of the path that it belongs to: one object for both faces. */
  readonly end: Spot;
  /** Of a bend: whether it is within it. Of an open end: neither. */
  readonly bend: 'inner' | 'outer' | null;
}

/** A run that bends by less than this has no corner to hook a tape on; one that bends by more has none to get at. Degrees. */
const LEAST_BEND = 20;
const MOST_BEND = 160;

type Way = Spot;

/** The corners on both faces of a run, metres: where faces meet at its bends, and the two at each open end. */
export function runCorners(
  path: readonly Spot[],
  closed: boolean,
  thicknessMetres: number,
): readonly RunCorner[] {
  const spots = path.filter((spot, k) => k === 0 || metresBetween(spot, path[k - 1]) > 1e-6);
  const half = thicknessMetres / 2;
  return spots.flatMap((at, k): RunCorner[] => {
    const before = spots[k - 1] ?? (closed ? spots[spots.length - 1] : null);
    const after = spots[k + 1] ?? (closed ? spots[0] : null);
    const into = before && wayTo(before, at);
    const out = after && wayTo(at, after);
    if (into && out) return bendCorners(at, into, out, half);
    const way = into ?? out;
    return way
      ? [1, -1].map((side) => ({
          at: [at[0] - way[1] * half * side, at[1] + way[0] * half * side],
          end: at,
          bend: null,
        }))
      : [];
  });
}

function bendCorners(at: Spot, into: Way, out: Way, half: number): RunCorner[] {
  const bend = (Math.abs(bearingOf([0, 0], out) - bearingOf([0, 0], into)) + 360) % 360;
  const degrees = Math.min(bend, 360 - bend);
  if (degrees < LEAST_BEND || degrees > MOST_BEND) return [];
  const cross = into[0] * out[1] - into[1] * out[0];
  // Both faces' normals added and stretched so that the place lies half the thickness from both legs.
  const [nx, nz] = [-(into[1] + out[1]), into[0] + out[0]];
  const stretch = half / (1 + into[0] * out[0] + into[1] * out[1]);
  return [1, -1].map((side) => ({
    at: [at[0] + nx * stretch * side, at[1] + nz * stretch * side],
    end: at,
    bend: cross * side > 0 ? 'inner' : 'outer',
  }));
}

function wayTo(from: Spot, to: Spot): Way | null {
  const length = metresBetween(from, to);
  return length > 1e-6 ? [(to[0] - from[0]) / length, (to[1] - from[1]) / length] : null;
}
