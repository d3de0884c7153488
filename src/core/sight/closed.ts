import type { PartShape } from '../form/types';

/** Corners nearer than this are one corner, metres. */
const WELD_METRES = 2e-5;

/** What is known of a shape as a solid: whether its faces shut it off, and the box that it fills. */
export interface Solid extends Filled {
  readonly isClosed: boolean;
}

/** The upright box that a shape fills, in its own coordinates. */
export interface Filled {
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
}

const KNOWN = new WeakMap<PartShape, Solid>();
const FILLED = new WeakMap<PartShape, Filled>();

type Cell = (value: number) => number;
const cell: Cell = (value) => Math.round(value / (WELD_METRES * 4));

/**
 * Numbers corners so that those in one place share a number. Quickly: by the cell that a corner rounds to. Thoroughly:
 * also in the cells next to it, for corners that lie on a border.
 */
function weldedCorners(positions: Float32Array, thoroughly: boolean): Int32Array {
  const count = positions.length / 3;
  const welded = new Int32Array(count);
  const places = new Map<number, number[]>();
  const sameAs = (k: number, key: number): number => {
    for (const other of places.get(key) ?? []) {
      const isNear = [0, 1, 2].every(
        (axis) => Math.abs(positions[other * 3 + axis] - positions[k * 3 + axis]) <= WELD_METRES,
      );
      if (isNear) return welded[other];
    }
    return -1;
  };
  for (let k = 0; k < count; k += 1) {
    const [x, y, z] = [positions[k * 3], positions[k * 3 + 1], positions[k * 3 + 2]];
    const key = hash(cell(x), cell(y), cell(z));
    let same = sameAs(k, key);
    for (let side = 0; thoroughly && same < 0 && side < 8; side += 1) {
      const nudge = (bit: number) => (side & bit ? WELD_METRES : -WELD_METRES);
      same = sameAs(k, hash(cell(x + nudge(1)), cell(y + nudge(2)), cell(z + nudge(4))));
    }
    welded[k] = same < 0 ? k : same;
    if (same >= 0) continue;
    const list = places.get(key);
    if (list) list.push(k);
    else places.set(key, [k]);
  }
  return welded;
}

const hash = (x: number, y: number, z: number): number =>
  (Math.imul(x, 73856093) ^ Math.imul(y, 19349663) ^ Math.imul(z, 83492791)) | 0;

/** Whether every edge is walked once each way, and the faces look outwards. */
function isShut(shape: PartShape, thoroughly: boolean): boolean {
  const { positions, indices } = shape;
  const welded = weldedCorners(positions, thoroughly);
  const corners = positions.length / 3;
  const balance = new Map<number, number>();
  let volume = 0;
  for (let k = 0; k < indices.length; k += 3) {
    for (let c = 0; c < 3; c += 1) {
      const a = welded[indices[k + c]];
      const b = welded[indices[k + ((c + 1) % 3)]];
      if (a === b) continue;
      const key = a < b ? a * corners + b : b * corners + a;
      balance.set(key, (balance.get(key) ?? 0) + (a < b ? 1 : -1));
    }
    const [a, b, c] = [indices[k] * 3, indices[k + 1] * 3, indices[k + 2] * 3];
    volume +=
      positions[a] * (positions[b + 1] * positions[c + 2] - positions[b + 2] * positions[c + 1]) +
      positions[a + 1] * (positions[b + 2] * positions[c] - positions[b] * positions[c + 2]) +
      positions[a + 2] * (positions[b] * positions[c + 1] - positions[b + 1] * positions[c]);
  }
  for (const sum of balance.values()) if (sum !== 0) return false;
  return volume > 0;
}

/** The box of a shape, computed once: for who does not ask whether it is closed, which takes longer. */
export function filledBy(shape: PartShape): Filled {
  const known = FILLED.get(shape);
  if (known) return known;
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let k = 0; k < shape.positions.length; k += 3)
    for (let axis = 0; axis < 3; axis += 1) {
      low[axis] = Math.min(low[axis], shape.positions[k + axis]);
      high[axis] = Math.max(high[axis], shape.positions[k + axis]);
    }
  const filled = { low, high };
  FILLED.set(shape, filled);
  return filled;
}

/**
 * What a shape is as a solid, computed once. From outside a closed solid only the faces that look at the eye can be
 * seen, and they cover all of its outline, so the others need not be drawn.
 */
export function solidOf(shape: PartShape): Solid {
  const known = KNOWN.get(shape);
  if (known) return known;
  const solid = {
    isClosed: shape.openness === null && !shape.isOpen && (isShut(shape, false) || isShut(shape, true)),
    ...filledBy(shape),
  };
  KNOWN.set(shape, solid);
  return solid;
}

/** Nearer to a solid's box than this, metres, the eye counts as inside it. */
const INSIDE_METRES = 0.02;

/** Whether the eye may be inside the solid's box; `eye` in the shape's own coordinates. */
export const mayBeInside = ({ low, high }: Solid, eye: readonly number[]): boolean =>
  [0, 1, 2].every((axis) => eye[axis] > low[axis] - INSIDE_METRES && eye[axis] < high[axis] + INSIDE_METRES);
