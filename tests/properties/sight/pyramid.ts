import { cameraFromWorld } from '../../../src/core/optics/project';
import type { Camera } from '../../../src/core/optics/types';
import { NEAREST_METRES } from '../../../src/core/sight/clip';
import type { SightStage } from '../../../src/core/sight/stage';

type Point = readonly [number, number, number];
export type Triangle = readonly [Point, Point, Point];

/** The triangles of one item in camera coordinates: x right, y up, z forward, metres. */
export function trianglesOf(stage: SightStage, item: number, camera: Camera): Triangle[] {
  return stage.parts
    .slice(stage.firstPart[item], stage.firstPart[item + 1])
    .flatMap(({ shape: { positions, indices }, worldFromPart: m }) => {
      const corner = (index: number): Point => {
        const [x, y, z] = positions.subarray(index * 3, index * 3 + 3);
        return cameraFromWorld(
          camera.pose,
          m
            ? [
                m[0] * x + m[1] * y + m[2] * z + m[3],
                m[4] * x + m[5] * y + m[6] * z + m[7],
                m[8] * x + m[9] * y + m[10] * z + m[11],
              ]
            : [x, y, z],
        );
      };
      return Array.from(
        { length: indices.length / 3 },
        (_, k): Triangle => [corner(indices[3 * k]), corner(indices[3 * k + 1]), corner(indices[3 * k + 2])],
      );
    });
}

/** What is left of a polygon where `side` is not negative. */
const cut = (polygon: readonly Point[], side: (p: Point) => number): readonly Point[] =>
  polygon.flatMap((p, k): Point[] => {
    const q = polygon[(k + 1) % polygon.length];
    const [atP, atQ] = [side(p), side(q)];
    const kept: Point[] = atP >= 0 ? [p] : [];
    return atP >= 0 === atQ >= 0 ? kept : [...kept, between(p, q, atP / (atP - atQ))];
  });

const between = (p: Point, q: Point, share: number): Point => [
  p[0] + (q[0] - p[0]) * share,
  p[1] + (q[1] - p[1]) * share,
  p[2] + (q[2] - p[2]) * share,
];

const inFront = ([, , z]: Point): number => z - NEAREST_METRES;

/** Whether any of a triangle, moved by (dx, dy) square to the axis, is in the frame's pyramid: cut plane by plane. */
function isInPyramid(triangle: Triangle, { frame }: Camera, dx: number, dy: number): boolean {
  const { tanHalfWidth: tx, tanHalfHeight: ty } = frame;
  const inside: readonly ((p: Point) => number)[] = [
    inFront,
    ([x, , z]) => tx * z - x - dx,
    ([x, , z]) => tx * z + x + dx,
    ([, y, z]) => ty * z - y - dy,
    ([, y, z]) => ty * z + y + dy,
  ];
  if (inside.some((side) => triangle.every((p) => side(p) < 0))) return false;
  let polygon: readonly Point[] = triangle;
  for (const side of inside) {
    polygon = cut(polygon, side);
    if (polygon.length === 0) return false;
  }
  return true;
}

/** Whether any of the triangles is in the frame's pyramid after a move square to the axis, metres. */
export const isInside = (triangles: readonly Triangle[], camera: Camera, dx = 0, dy = 0): boolean =>
  triangles.some((triangle) => isInPyramid(triangle, camera, dx, dy));

/** The edges of the triangles, as far as they are in front of the camera. */
function* edgesOf(triangles: readonly Triangle[]): Generator<readonly [Point, Point]> {
  for (const triangle of triangles) {
    const polygon = cut(triangle, inFront);
    for (let k = 0; k < polygon.length; k += 1) yield [polygon[k], polygon[(k + 1) % polygon.length]];
  }
}

/** Places along the edges, even in the picture: tangents to the right and upwards, and how far apart they are. */
export function* alongEdges(triangles: readonly Triangle[], places: number): Generator<Point> {
  for (const [p, q] of edgesOf(triangles)) {
    const [ax, ay, bx, by] = [p[0] / p[2], p[1] / p[2], q[0] / q[2], q[1] / q[2]];
    const step = Math.hypot(bx - ax, by - ay) / places;
    for (let k = 0; k <= places; k += 1) {
      yield [ax + ((bx - ax) * k) / places, ay + ((by - ay) * k) / places, step];
    }
  }
}

/**
 * For each edge the move square to the axis, [right, up] in metres, that brings its nearest place to the frame line.
 * The length of that move is a convex function of the place, so narrowing an interval in thirds finds it.
 */
export function* movesIn(
  triangles: readonly Triangle[],
  { frame }: Camera,
): Generator<readonly [number, number]> {
  const needed = (place: number, limit: number) => Math.sign(place) * Math.min(0, limit - Math.abs(place));
  for (const [p, q] of edgesOf(triangles)) {
    const moveOf = (share: number) => {
      const [x, y, z] = between(p, q, share);
      return [needed(x, frame.tanHalfWidth * z), needed(y, frame.tanHalfHeight * z)] as const;
    };
    let [low, high] = [0, 1];
    for (let round = 0; round < 60; round += 1) {
      const third = (high - low) / 3;
      if (Math.hypot(...moveOf(low + third)) <= Math.hypot(...moveOf(high - third))) high -= third;
      else low += third;
    }
    yield moveOf((low + high) / 2);
  }
}
