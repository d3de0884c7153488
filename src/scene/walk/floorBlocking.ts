import { BufferGeometry } from 'three';
import { walksOf } from '../../core/form/figure/walks';
import type { Performer } from '../../core/plan/schema/cast';
import type { Plan } from '../../core/plan/schema/plan';
import { endsOfPair, type Pair } from '../../desk/blocking/lines';
import { headingAt, tapeAt } from '../../desk/blocking/tapeShape';
import { linesThrough } from './helperShapes';

/** How high above the floor it is drawn, metres. */
const LIFT_METRES = 0.012;
/** Dashes of a walk and of a line, with the gaps after them; metres. */
const WALK_DASHES = [0.22, 0.13] as const;
const LINE_DASHES = [0.7, 0.15, 0.06, 0.15] as const;
/** How far the line goes on beyond the two, metres. */
const BEYOND_METRES = 5;

/** The corners of a taped T that make its bar and its stem, as triangles. */
const TRIANGLES = [0, 7, 2, 0, 2, 1, 3, 6, 5, 3, 5, 4] as const;

type Point = readonly [number, number, number];

/** The cast's marks as taped Ts on the floor, the bar under the toes; in triangles. */
export function tapeMarks(plan: Plan): BufferGeometry {
  const points: number[] = [];
  for (const performer of plan.cast) {
    if (performer.hidden) continue;
    for (const mark of performer.marks) {
      const corners = tapeAt(mark.at, headingAt(plan, performer, mark));
      const y = (mark.floorMetres ?? 0) + LIFT_METRES;
      for (const k of TRIANGLES) points.push(corners[k][0], y, corners[k][1]);
    }
  }
  return points.length > 0 ? linesThrough(points) : new BufferGeometry();
}

/** Pairs of points along a path: dashes and gaps in turn. */
function dashes(path: readonly Point[], lengths: readonly number[]): number[] {
  const points: number[] = [];
  let [turn, left] = [0, lengths[0]];
  for (let k = 0; k + 1 < path.length; k += 1) {
    const [a, b] = [path[k], path[k + 1]];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
    const at = (metres: number): number[] =>
      [0, 1, 2].map((axis) => a[axis] + ((b[axis] - a[axis]) * metres) / length);
    for (let from = 0; from < length; ) {
      const to = Math.min(length, from + left);
      if (turn % 2 === 0) points.push(...at(from), ...at(to));
      left -= to - from;
      from = to;
      if (left > 1e-9) continue;
      turn = (turn + 1) % lengths.length;
      left = lengths[turn];
    }
  }
  return points;
}

/** The outlines of somebody's marks, as something that is not taped yet; pairs of points, metres. */
export const markOutlines = (plan: Plan, performer: Performer): readonly number[] =>
  performer.marks.flatMap((mark) => {
    const corners = tapeAt(mark.at, headingAt(plan, performer, mark));
    const y = (mark.floorMetres ?? 0) + LIFT_METRES;
    return corners.flatMap(([x, z], k) => {
      const [nextX, nextZ] = corners[(k + 1) % corners.length];
      return [x, y, z, nextX, y, nextZ];
    });
  });

/** The walks from mark to mark, dashed on the floor; pairs of points. Of everybody, unless one is said. */
export function walkLines(plan: Plan, onlyId: string | null = null): BufferGeometry {
  const points = plan.cast.flatMap((performer) =>
    performer.hidden || (onlyId !== null && performer.id !== onlyId)
      ? []
      : walksOf(performer, plan).flatMap(({ fromMark, toMark, path }) => {
          const [from, to] = [fromMark, toMark].map(
            (id) => performer.marks.find((mark) => mark.id === id)?.floorMetres ?? 0,
          );
          const last = Math.max(1, path.length - 1);
          return dashes(
            path.map(([x, z], k): Point => [x, from + ((to - from) * k) / last + LIFT_METRES, z]),
            WALK_DASHES,
          );
        }),
  );
  return points.length > 0 ? linesThrough(points) : new BufferGeometry();
}

/** The lines through pairs of performers at an instant, dashed and dotted on the deck; pairs of points, metres. */
export const pairLines = (plan: Plan, pairs: readonly Pair[], seconds: number): readonly number[] =>
  pairs.flatMap((pair) => {
    const ends = endsOfPair(plan, pair, seconds);
    if (!ends) return [];
    const [[ax, az], [bx, bz]] = ends;
    const size = Math.hypot(bx - ax, bz - az);
    const [x, z] = [((bx - ax) / size) * BEYOND_METRES, ((bz - az) / size) * BEYOND_METRES];
    return dashes(
      [
        [ax - x, LIFT_METRES, az - z],
        [bx + x, LIFT_METRES, bz + z],
      ],
      LINE_DASHES,
    );
  });
