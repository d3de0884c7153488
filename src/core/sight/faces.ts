import type { PartShape } from '../form/types';

/** The faces of a shape by the numbers of their corners: flat convex quadrangles, four each, and triangles, three each. */
export interface Faces {
  readonly quadrangles: Uint32Array;
  readonly triangles: Uint32Array;
}

/** A corner no farther than this from the plane of three others, metres, lies in it; single precision is not finer. */
const FLAT_METRES = 2e-5;

const KNOWN = new WeakMap<PartShape, Faces>();

/** Whether two corners of a shape lie in one place. */
const isOnePlace = (positions: Float32Array, a: number, b: number): boolean =>
  a === b ||
  (positions[3 * a] === positions[3 * b] &&
    positions[3 * a + 1] === positions[3 * b + 1] &&
    positions[3 * a + 2] === positions[3 * b + 2]);

/** Of the quadrangle in hand: its corners, its normal at the second of them, and that at another. */
const found = new Uint32Array(4);
const normal = new Float64Array(3);
const turned = new Float64Array(3);

/** The normal of the turn at `at` on the way from `from` to `to`, as long as the parallelogram of both ways is large. */
function turnAt(positions: Float32Array, from: number, at: number, to: number, into: Float64Array): void {
  const ux = positions[3 * at] - positions[3 * from];
  const uy = positions[3 * at + 1] - positions[3 * from + 1];
  const uz = positions[3 * at + 2] - positions[3 * from + 2];
  const vx = positions[3 * to] - positions[3 * at];
  const vy = positions[3 * to + 1] - positions[3 * at + 1];
  const vz = positions[3 * to + 2] - positions[3 * at + 2];
  into[0] = uy * vz - uz * vy;
  into[1] = uz * vx - ux * vz;
  into[2] = ux * vy - uy * vx;
}

/** Whether the four corners that were found lie in a plane, and the way round turns the same way at each. */
function isFlatAndConvex(positions: Float32Array): boolean {
  turnAt(positions, found[0], found[1], found[2], normal);
  const [nx, ny, nz] = normal;
  const length = Math.sqrt(nx * nx + ny * ny + nz * nz);
  const [from, to] = [3 * found[0], 3 * found[3]];
  const height =
    nx * (positions[to] - positions[from]) +
    ny * (positions[to + 1] - positions[from + 1]) +
    nz * (positions[to + 2] - positions[from + 2]);
  if (!(Math.abs(height) <= FLAT_METRES * length)) return false;
  for (let k = 1; k < 4; k += 1) {
    turnAt(positions, found[k], found[(k + 1) & 3], found[(k + 2) & 3], turned);
    if (!(turned[0] * nx + turned[1] * ny + turned[2] * nz > 0)) return false;
  }
  return true;
}

/** Finds the quadrangle that the triangles at `k` and `k + 3` make up, which share a side; false where they make up none. */
function findQuadrangle({ positions, indices }: PartShape, k: number): boolean {
  if (k + 6 > indices.length) return false;
  for (let side = 0; side < 3; side += 1) {
    // The first triangle, begun so that the side from its last corner to its first is the shared one.
    const a = indices[k + side];
    const c = indices[k + ((side + 2) % 3)];
    for (let other = 0; other < 3; other += 1) {
      if (!isOnePlace(positions, indices[k + 3 + other], a)) continue;
      if (!isOnePlace(positions, indices[k + 3 + ((other + 1) % 3)], c)) continue;
      found[0] = a;
      found[1] = indices[k + ((side + 1) % 3)];
      found[2] = c;
      found[3] = indices[k + 3 + ((other + 2) % 3)];
      return isFlatAndConvex(positions);
    }
  }
  return false;
}

function pairUp(shape: PartShape): Faces {
  const { indices } = shape;
  // Each pair takes the room of two triangles at most.
  const quadrangles = new Uint32Array((indices.length / 3) * 2);
  const triangles = new Uint32Array(indices.length);
  let [four, three] = [0, 0];
  for (let k = 0; k < indices.length; k += 3) {
    if (findQuadrangle(shape, k)) {
      quadrangles.set(found, four);
      four += 4;
      k += 3;
      continue;
    }
    for (let corner = 0; corner < 3; corner += 1) triangles[three + corner] = indices[k + corner];
    three += 3;
  }
  return { quadrangles: quadrangles.slice(0, four), triangles: triangles.slice(0, three) };
}

/**
 * The faces of a shape, worked out once. Builders make most faces of two triangles, one after the other, of which a
 * screen's column would be worked out twice; such pairs are found again, and drawn as the one face that they are.
 */
export function facesOf(shape: PartShape): Faces {
  const known = KNOWN.get(shape);
  if (known) return known;
  const made = pairUp(shape);
  KNOWN.set(shape, made);
  return made;
}
