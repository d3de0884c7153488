import type { Prism } from './prism';
import type { GroundSquares } from './types';

/** Two heights that are as one, metres. */
const SAME_HEIGHT = 1e-7;
/** What the numbers are good for, metres. */
const HAIR = 1e-6;
/** Numbers that there is room for at first. */
const FIRST_ROOM = 256;

/** Sorts pairs of numbers by the first, then by the second, in place: few as they are, by insertion. */
function sortPairs(pairs: Float64Array, count: number): void {
  for (let k = 2; k < count; k += 2) {
    const x = pairs[k];
    const z = pairs[k + 1];
    let at = k - 2;
    while (at >= 0 && (pairs[at] > x || (pairs[at] === x && pairs[at + 1] > z))) {
      pairs[at + 2] = pairs[at];
      pairs[at + 3] = pairs[at + 1];
      at -= 2;
    }
    pairs[at + 2] = x;
    pairs[at + 3] = z;
  }
}

/** Adds a place to a chain of `size` numbers, less what no longer bends outwards; how many numbers it then has. */
function chained(chain: Float64Array, size: number, least: number, x: number, z: number): number {
  let end = size;
  while (end >= least) {
    const ux = chain[end - 2] - chain[end - 4];
    const uz = chain[end - 1] - chain[end - 3];
    if (ux * (z - chain[end - 3]) - uz * (x - chain[end - 4]) > 0) break;
    end -= 2;
  }
  chain[end] = x;
  chain[end + 1] = z;
  return end + 2;
}

/**
 * Where feet may not stand. Gathers the places of a foot [x, z] at which a stretch of a thing touches a prism: for each
 * height of the stretch the prism's section there, less where the stretch is at that height. All these places together
 * are convex, and their corners come from the corners of the prism between the heights of the two ends and from where
 * its edges pass these. Then lays the squares that the hull of all points touches under it, row by row.
 */
export class SweepRows {
  /** x and z of the places gathered, and of the corners of their hull. */
  private points = new Float64Array(FIRST_ROOM);
  private count = 0;
  private hull = new Float64Array(2 * FIRST_ROOM + 4);
  private corners = 0;
  /** By row, the first and last column that the hull touches; last < first where none. Valid from `top` to `bottom`. */
  readonly first: Int32Array;
  readonly last: Int32Array;
  top = 0;
  bottom = -1;
  private readonly low: Float64Array;
  private readonly high: Float64Array;

  constructor(private readonly squares: GroundSquares) {
    this.first = new Int32Array(squares.rows);
    this.last = new Int32Array(squares.rows);
    this.low = new Float64Array(squares.rows);
    this.high = new Float64Array(squares.rows);
  }

  /** Forgets all points. */
  clear(): void {
    this.count = 0;
  }

  private put(x: number, z: number): void {
    if (this.count + 2 > this.points.length) {
      const wider = new Float64Array(this.points.length * 2);
      wider.set(this.points);
      this.points = wider;
      this.hull = new Float64Array(2 * wider.length + 4);
    }
    this.points[this.count] = x;
    this.points[this.count + 1] = z;
    this.count += 2;
  }

  /** Adds the stretch from a to b, in the thing's own frame over a foot on a deck of a height. */
  add({ near, far }: Prism, a: readonly number[], b: readonly number[], deckMetres: number): void {
    const isRising = b[1] >= a[1];
    const [p, q] = isRising ? [a, b] : [b, a];
    const low = p[1] + deckMetres;
    const high = q[1] + deckMetres;
    const dx = q[0] - p[0];
    const dz = q[2] - p[2];
    if (high - low < SAME_HEIGHT) {
      this.section(near, far, (low + high) / 2, p, q);
      return;
    }
    const size = near.length;
    const perMetre = 1 / (high - low);
    for (const end of [near, far]) {
      for (let k = 0; k < size; k += 3) {
        const y = end[k + 1];
        if (y < low || y > high) continue;
        const share = (y - low) * perMetre;
        this.put(end[k] - p[0] - dx * share, end[k + 2] - p[2] - dz * share);
      }
    }
    this.edges(near, far, low, p[0], p[2]);
    this.edges(near, far, high, q[0], q[2]);
  }

  /** A level stretch: the section at its height, less each of its ends. */
  private section(
    near: Float64Array,
    far: Float64Array,
    level: number,
    p: readonly number[],
    q: readonly number[],
  ): void {
    this.edges(near, far, level, p[0], p[2]);
    if (p[0] !== q[0] || p[2] !== q[2]) this.edges(near, far, level, q[0], q[2]);
  }

  /** Where the edges of the prism pass a level, less [x, z]. */
  private edges(near: Float64Array, far: Float64Array, level: number, x: number, z: number): void {
    const size = near.length;
    for (let k = 0; k < size; k += 3) {
      const n = k + 3 === size ? 0 : k + 3;
      this.edge(near, k, near, n, level, x, z);
      this.edge(far, k, far, n, level, x, z);
      this.edge(near, k, far, k, level, x, z);
    }
  }

  private edge(
    from: Float64Array,
    k: number,
    to: Float64Array,
    n: number,
    level: number,
    x: number,
    z: number,
  ): void {
    const y0 = from[k + 1] - level;
    const y1 = to[n + 1] - level;
    if (y0 > 0 === y1 > 0 && y0 !== 0 && y1 !== 0) return;
    if (y0 === y1) {
      this.put(from[k] - x, from[k + 2] - z);
      this.put(to[n] - x, to[n + 2] - z);
      return;
    }
    const share = y0 / (y0 - y1);
    if (share < 0 || share > 1) return;
    this.put(from[k] + (to[n] - from[k]) * share - x, from[k + 2] + (to[n + 2] - from[k + 2]) * share - z);
  }

  /** Lays the squares under the hull of all points; false where it touches none. */
  lay(): boolean {
    const { points, count, squares, low, high, first, last } = this;
    const { corner, columns, rows, stepMetres } = squares;
    if (count === 0) return false;
    let [leftmost, rightmost, back, front] = [Infinity, -Infinity, Infinity, -Infinity];
    for (let k = 0; k < count; k += 2) {
      leftmost = Math.min(leftmost, points[k]);
      rightmost = Math.max(rightmost, points[k]);
      back = Math.min(back, points[k + 1]);
      front = Math.max(front, points[k + 1]);
    }
    if (leftmost > corner[0] + columns * stepMetres + HAIR || rightmost < corner[0] - HAIR) return false;
    this.top = Math.max(0, Math.floor((back - HAIR - corner[1]) / stepMetres));
    this.bottom = Math.min(rows - 1, Math.floor((front + HAIR - corner[1]) / stepMetres));
    if (this.top > this.bottom) return false;
    low.fill(Infinity, this.top, this.bottom + 1);
    high.fill(-Infinity, this.top, this.bottom + 1);
    this.wrap();
    const { hull, corners } = this;
    for (let k = 0; k < corners; k += 2) {
      const n = k + 2 === corners ? 0 : k + 2;
      this.side(hull[k], hull[k + 1], hull[n], hull[n + 1]);
    }
    for (let row = this.top; row <= this.bottom; row += 1) {
      first[row] = Math.max(0, Math.floor((low[row] - HAIR - corner[0]) / stepMetres));
      last[row] = Math.min(columns - 1, Math.floor((high[row] + HAIR - corner[0]) / stepMetres));
    }
    return true;
  }

  /** The hull of all points, by Andrew's monotone chain. Source: [monotone-chain] */
  private wrap(): void {
    const { points, hull, count } = this;
    sortPairs(points, count);
    let size = 0;
    for (let k = 0; k < count; k += 2) size = chained(hull, size, 4, points[k], points[k + 1]);
    const lower = size + 2;
    for (let k = count - 4; k >= 0; k -= 2) size = chained(hull, size, lower, points[k], points[k + 1]);
    this.corners = size > 2 ? size - 2 : size;
  }

  /** Takes one side of the hull into the rows that it passes. */
  private side(x0: number, z0: number, x1: number, z1: number): void {
    const { low, high, squares } = this;
    const { corner, stepMetres } = squares;
    const [xa, za, xb, zb] = z0 <= z1 ? [x0, z0, x1, z1] : [x1, z1, x0, z0];
    const from = Math.max(this.top, Math.floor((za - HAIR - corner[1]) / stepMetres));
    const to = Math.min(this.bottom, Math.floor((zb + HAIR - corner[1]) / stepMetres));
    const slope = zb - za > HAIR ? (xb - xa) / (zb - za) : 0;
    for (let row = from; row <= to; row += 1) {
      const rowFrom = corner[1] + row * stepMetres;
      let [xs, xe] = [xa, xb];
      if (slope !== 0) {
        xs = xa + (Math.min(zb, Math.max(za, rowFrom - HAIR)) - za) * slope;
        xe = xa + (Math.min(zb, Math.max(za, rowFrom + stepMetres + HAIR)) - za) * slope;
      }
      if (xs < low[row]) low[row] = xs;
      if (xe < low[row]) low[row] = xe;
      if (xs > high[row]) high[row] = xs;
      if (xe > high[row]) high[row] = xe;
    }
  }
}
