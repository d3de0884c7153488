import { tidySpot } from '../../plan/edits/tidy';
import { metresBetween } from '../../plan/runs';
import type { Spot } from '../../plan/schema/numbers';
import { between, fromOutline, mayMeet } from '../../plan/walkWays/planar';
import { type Ground, middleOf, squareAt } from './ground';

/** All ways from one place, each to its cheapest. */
export interface Ways {
  readonly from: Spot;
  readonly cost: Float64Array;
  readonly before: Int32Array;
}

/** A binary heap of squares by cost. */
class Heap {
  private readonly squares: number[] = [];
  private readonly keys: number[] = [];

  get size(): number {
    return this.squares.length;
  }

  push(square: number, key: number): void {
    let at = this.squares.length;
    this.squares.push(square);
    this.keys.push(key);
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (this.keys[up] <= this.keys[at]) break;
      this.swap(up, at);
      at = up;
    }
  }

  /** The cheapest square; −1 where there is none. */
  pop(): number {
    if (this.squares.length === 0) return -1;
    const [top] = this.squares;
    const [square, key] = [this.squares.pop() ?? -1, this.keys.pop() ?? 0];
    if (this.squares.length === 0) return top;
    this.squares[0] = square;
    this.keys[0] = key;
    let at = 0;
    for (;;) {
      const [one, two] = [2 * at + 1, 2 * at + 2];
      let least = at;
      if (one < this.keys.length && this.keys[one] < this.keys[least]) least = one;
      if (two < this.keys.length && this.keys[two] < this.keys[least]) least = two;
      if (least === at) return top;
      this.swap(least, at);
      at = least;
    }
  }

  private swap(a: number, b: number): void {
    [this.squares[a], this.squares[b]] = [this.squares[b], this.squares[a]];
    [this.keys[a], this.keys[b]] = [this.keys[b], this.keys[a]];
  }
}

/** Squares around one that is blocked, as far as this many steps, are looked at for a way in. */
const MOST_STEPS = 12;

/** Whether a straight piece goes through or off nothing but what it begins in. */
const isFree = ({ obstacles }: Ground, from: Spot, to: Spot): boolean =>
  obstacles.every(
    ({ outline, bounds }) =>
      !mayMeet(from, to, bounds, 0) ||
      fromOutline(outline, from, to) > 0 ||
      fromOutline(outline, from, from) === 0,
  );

/** The square nearest to a place on which a cord can lie, on its side of a wall if it can be; −1 where there is none near. */
function openNear(ground: Ground, spot: Spot): number {
  const own = squareAt(ground, spot);
  if (Number.isFinite(ground.cost[own])) return own;
  const [column, row] = [own % ground.columns, Math.floor(own / ground.columns)];
  let [best, nearest] = [-1, Number.POSITIVE_INFINITY];
  let [beyond, beyondMetres] = [-1, Number.POSITIVE_INFINITY];
  for (let z = Math.max(0, row - MOST_STEPS); z <= Math.min(ground.rows - 1, row + MOST_STEPS); z += 1)
    for (
      let x = Math.max(0, column - MOST_STEPS);
      x <= Math.min(ground.columns - 1, column + MOST_STEPS);
      x += 1
    ) {
      const square = z * ground.columns + x;
      const middle = middleOf(ground, square);
      const metres = metresBetween(middle, spot);
      if (!Number.isFinite(ground.cost[square]) || metres >= nearest) continue;
      if (isFree(ground, spot, middle)) [best, nearest] = [square, metres];
      else if (metres < beyondMetres) [beyond, beyondMetres] = [square, metres];
    }
  return best >= 0 ? best : beyond;
}

const AROUND = [
  [-1, -1],
  [0, -1],
  [1, -1],
  [-1, 0],
  [1, 0],
  [-1, 1],
  [0, 1],
  [1, 1],
] as const;

/** The cheapest ways from a place over all of the ground (Dijkstra, over eight neighbours). */
export function waysFrom(ground: Ground, from: Spot): Ways {
  const { columns, rows, stepMetres, cost: dear } = ground;
  const cost = new Float64Array(columns * rows).fill(Number.POSITIVE_INFINITY);
  const before = new Int32Array(columns * rows).fill(-1);
  const start = openNear(ground, from);
  if (start < 0) return { from, cost, before };
  cost[start] = 0;
  const heap = new Heap();
  heap.push(start, 0);
  const done = new Uint8Array(columns * rows);
  while (heap.size > 0) {
    const square = heap.pop();
    if (done[square]) continue;
    done[square] = 1;
    const [column, row] = [square % columns, Math.floor(square / columns)];
    for (const [dx, dz] of AROUND) {
      const [x, z] = [column + dx, row + dz];
      if (x < 0 || z < 0 || x >= columns || z >= rows) continue;
      const next = z * columns + x;
      if (done[next] || !Number.isFinite(dear[next])) continue;
      const metres = dx !== 0 && dz !== 0 ? stepMetres * Math.SQRT2 : stepMetres;
      const through = cost[square] + (metres * (dear[square] + dear[next])) / 2;
      if (through >= cost[next]) continue;
      cost[next] = through;
      before[next] = square;
      heap.push(next, through);
    }
  }
  return { from, cost, before };
}

/** Places along a straight piece are asked at this distance, metres. */
const ASK_METRES = 0.05;

/** What a straight piece costs; infinite where it meets what nothing can lie on. */
function straightCost(ground: Ground, a: Spot, b: Spot): number {
  const metres = metresBetween(a, b);
  const count = Math.max(1, Math.ceil(metres / ASK_METRES));
  let sum = 0;
  for (let k = 0; k <= count; k += 1) {
    const each = ground.cost[squareAt(ground, between(a, b, k / count))];
    if (!Number.isFinite(each)) return Number.POSITIVE_INFINITY;
    sum += each * (k === 0 || k === count ? 0.5 : 1);
  }
  return (sum / count) * metres;
}

/** A straight piece that costs so much less than a way by squares takes its place. */
const HARDLY_DEARER = 1.001;

/** The cheapest way to a place as straight pieces, both its ends as they are; null where there is none. */
export function wayTo(
  ground: Ground,
  ways: Ways,
  to: Spot,
): { readonly path: Spot[]; readonly cost: number } | null {
  const end = openNear(ground, to);
  if (end < 0 || !Number.isFinite(ways.cost[end])) return null;
  const squares: number[] = [];
  for (let square = end; square >= 0; square = ways.before[square]) squares.unshift(square);
  const middles = squares.map((square) => middleOf(ground, square));
  const path: Spot[] = [];
  let at = 0;
  while (at < middles.length) {
    path.push(middles[at]);
    let next = at + 1;
    for (let far = middles.length - 1; far > next; far -= 1) {
      const byStep = ways.cost[squares[far]] - ways.cost[squares[at]];
      if (straightCost(ground, middles[at], middles[far]) > byStep * HARDLY_DEARER) continue;
      next = far;
      break;
    }
    at = next;
  }
  return { path: withEnds(ground, path, ways.from, to), cost: ways.cost[end] };
}

/** The way from end to end, without a first or last middle that only leads astray. */
function withEnds(ground: Ground, path: readonly Spot[], from: Spot, to: Spot): Spot[] {
  const inner = [...path];
  const direct = (a: Spot, b: Spot, over: Spot): boolean => {
    const straight = straightCost(ground, a, b);
    const about = straightCost(ground, a, over) + straightCost(ground, over, b);
    return Number.isFinite(straight) && straight <= about + 1e-9;
  };
  if (inner.length > 1 && direct(from, inner[1], inner[0])) inner.shift();
  const last = inner.length - 1;
  if (last > 0 && direct(inner[last - 1], to, inner[last])) inner.pop();
  else if (inner.length === 1 && direct(from, to, inner[0])) inner.pop();
  const all = [from, ...inner, to].map(tidySpot);
  return all.filter((spot, k) => k === 0 || k === all.length - 1 || metresBetween(spot, all[k - 1]) > 1e-6);
}
