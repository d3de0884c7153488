import type { PartShape } from '../../core/form/types';

/** Cosine of the sharpest bend that is still drawn round: the sides of an octagon pass, the rim of its cap does not. */
const CREASE_COSINE = Math.cos((62 * Math.PI) / 180);
/** Corners nearer than this are one corner, metres. */
const WELD_METRES = 1e-4;

/** Triangles corner by corner, with a normal at each corner. */
export interface Facets {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
}

/** A shape as separate triangles: with the facet's own normal, or, where it is to look round, averaged over the crease. */
export function facetsOf(shape: PartShape): Facets {
  const { positions: corners, indices } = shape;
  const positions = new Float32Array(indices.length * 3);
  const facet = new Float32Array(indices.length * 3);
  for (let k = 0; k < indices.length; k += 1) {
    const from = indices[k] * 3;
    positions[k * 3] = corners[from];
    positions[k * 3 + 1] = corners[from + 1];
    positions[k * 3 + 2] = corners[from + 2];
  }
  for (let t = 0; t < positions.length; t += 9) writeFacetNormal(positions, facet, t);
  return { positions, normals: unitNormals(shape.smooth ? rounded(positions, facet) : facet) };
}

/** Twice the triangle's area along its normal, at all three of its corners. */
function writeFacetNormal(p: Float32Array, out: Float32Array, t: number): void {
  const [ax, ay, az] = [p[t + 3] - p[t], p[t + 4] - p[t + 1], p[t + 5] - p[t + 2]];
  const [bx, by, bz] = [p[t + 6] - p[t], p[t + 7] - p[t + 1], p[t + 8] - p[t + 2]];
  for (let corner = t; corner < t + 9; corner += 3) {
    out[corner] = ay * bz - az * by;
    out[corner + 1] = az * bx - ax * bz;
    out[corner + 2] = ax * by - ay * bx;
  }
}

function rounded(positions: Float32Array, facet: Float32Array): Float32Array {
  const meetings = new Map<string, number[]>();
  for (let k = 0; k < positions.length; k += 3) {
    const key = `${Math.round(positions[k] / WELD_METRES)},${Math.round(positions[k + 1] / WELD_METRES)},${Math.round(positions[k + 2] / WELD_METRES)}`;
    const meeting = meetings.get(key);
    if (meeting) meeting.push(k);
    else meetings.set(key, [k]);
  }
  const out = new Float32Array(facet.length);
  for (const meeting of meetings.values()) {
    for (const k of meeting) {
      for (const other of meeting) {
        if (cosineBetween(facet, k, other) < CREASE_COSINE) continue;
        for (let axis = 0; axis < 3; axis += 1) out[k + axis] += facet[other + axis];
      }
    }
  }
  return out;
}

function cosineBetween(n: Float32Array, a: number, b: number): number {
  const dot = n[a] * n[b] + n[a + 1] * n[b + 1] + n[a + 2] * n[b + 2];
  const sizes = Math.hypot(n[a], n[a + 1], n[a + 2]) * Math.hypot(n[b], n[b + 1], n[b + 2]);
  return sizes > 0 ? dot / sizes : -1;
}

function unitNormals(normals: Float32Array): Float32Array {
  for (let k = 0; k < normals.length; k += 3) {
    const size = Math.hypot(normals[k], normals[k + 1], normals[k + 2]);
    if (size > 0) {
      normals[k] /= size;
      normals[k + 1] /= size;
      normals[k + 2] /= size;
    } else normals[k + 1] = 1;
  }
  return normals;
}
