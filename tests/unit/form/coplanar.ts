import { AT_ORIGIN, moved } from '../../../src/core/form/build/placement';
import {
  add,
  cross,
  dot,
  length,
  scale,
  subtract,
  unit,
  type Vec3,
} from '../../../src/core/form/build/vector';
import type { PlacedPart } from '../../../src/core/form/types';
import { openEdges } from './solids';

/** Normals that differ by less than this are parallel, and planes that are nearer than this are the same. */
const PARALLEL = 1e-4;
const SAME_PLANE_METRES = 0.0002;
/** Overlaps below this, all of two parts together, are no more than touching corners: 1 cm². */
const LEAST_SQUARE_METRES = 1e-4;

interface Face {
  readonly part: number;
  readonly corners: readonly [Vec3, Vec3, Vec3];
  readonly normal: Vec3;
  /** Of its plane from the item's middle, along the normal. */
  readonly offset: number;
}

/** The triangles of a part in the world, about `middle`; those of a sheet once for each of its sides. */
function facesOf({ shape, worldFromPart }: PlacedPart, part: number, middle: Vec3): Face[] {
  const at = (index: number): Vec3 => {
    const own: Vec3 = [
      shape.positions[3 * index],
      shape.positions[3 * index + 1],
      shape.positions[3 * index + 2],
    ];
    return subtract(moved(worldFromPart ?? AT_ORIGIN, own), middle);
  };
  const isSheet = openEdges(shape).length > 0;
  const faces: Face[] = [];
  for (let k = 0; k < shape.indices.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((corner) => at(shape.indices[k + corner]));
    const square = cross(subtract(b, a), subtract(c, a));
    if (length(square) < 1e-10) continue;
    const normal = unit(square);
    const offset = dot(normal, a);
    faces.push({ part, corners: [a, b, c], normal, offset });
    if (isSheet) faces.push({ part, corners: [a, c, b], normal: scale(normal, -1), offset: -offset });
  }
  return faces;
}

/** What of `subject` lies within `clip`, seen along the normal of `clip`; corners stay in the plane of `subject`. */
function clipped(subject: Face, clip: Face): readonly Vec3[] {
  let polygon: readonly Vec3[] = subject.corners;
  for (let k = 0; k < 3 && polygon.length > 0; k += 1) {
    const [from, to] = [clip.corners[k], clip.corners[(k + 1) % 3]];
    const inward = cross(clip.normal, subtract(to, from));
    const depth = (p: Vec3) => dot(inward, subtract(p, from));
    polygon = polygon.flatMap((p, n): Vec3[] => {
      const next = polygon[(n + 1) % polygon.length];
      const [here, there] = [depth(p), depth(next)];
      const crossing = here >= 0 !== there >= 0;
      return [
        ...(here >= 0 ? [p] : []),
        ...(crossing ? [add(p, scale(subtract(next, p), here / (here - there)))] : []),
      ];
    });
  }
  return polygon;
}

function areaOf(polygon: readonly Vec3[]): number {
  let twice: Vec3 = [0, 0, 0];
  for (let k = 1; k + 1 < polygon.length; k += 1)
    twice = add(twice, cross(subtract(polygon[k], polygon[0]), subtract(polygon[k + 1], polygon[0])));
  return length(twice) / 2;
}

/** The area on which two faces lie in one plane and face one way, square metres. */
function sharedArea(a: Face, b: Face): number {
  if (length(subtract(a.normal, b.normal)) > PARALLEL) return 0;
  for (let axis = 0; axis < 3; axis += 1) {
    const [of, other] = [a, b].map(({ corners }) => corners.map((corner) => corner[axis]));
    if (Math.max(...of) < Math.min(...other) || Math.max(...other) < Math.min(...of)) return 0;
  }
  const overlap = clipped(a, b);
  if (overlap.length < 3) return 0;
  const middle = scale(
    overlap.reduce((sum, corner) => add(sum, corner)),
    1 / overlap.length,
  );
  if (Math.abs(dot(b.normal, middle) - b.offset) > SAME_PLANE_METRES) return 0;
  return areaOf(overlap);
}

/**
 * Pairs of parts of one item that have faces in one plane, one over the other and facing the same way, with the area
 * of it: which of them is seen there is chance. Faces against each other, as of a box on a floor, hide each other.
 */
export function coplanarPairs(parts: readonly PlacedPart[]): string[] {
  if (parts.length === 0) return [];
  const { positions } = parts[0].shape;
  const middle = moved(parts[0].worldFromPart ?? AT_ORIGIN, [positions[0], positions[1], positions[2]]);
  const faces = parts.flatMap((part, k) => facesOf(part, k, middle));
  faces.sort((a, b) => a.offset - b.offset);
  const farthest = Math.max(...faces.flatMap(({ corners }) => corners.map((corner) => length(corner))));
  const reach = SAME_PLANE_METRES + PARALLEL * farthest;
  const areas = new Map<string, number>();
  faces.forEach((a, k) => {
    for (let n = k + 1; n < faces.length && faces[n].offset - a.offset <= reach; n += 1) {
      const b = faces[n];
      if (a.part === b.part) continue;
      const area = sharedArea(a, b);
      if (area === 0) continue;
      const [first, second] = [Math.min(a.part, b.part), Math.max(a.part, b.part)];
      const pair = `${parts[first].name} (${first}) and ${parts[second].name} (${second})`;
      areas.set(pair, (areas.get(pair) ?? 0) + area);
    }
  });
  return [...areas]
    .filter(([, area]) => area > LEAST_SQUARE_METRES)
    .map(([pair, area]) => `${pair}: ${(area * 1e4).toFixed(1)} cm²`);
}
