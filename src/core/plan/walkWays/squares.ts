import type { Spot } from '../schema/numbers';
import type { Bounds } from './planar';

/** Side of a square that has a list of its own, metres: about what stands around a person. Another would only take longer or shorter for the same answers. */
const SIDE_METRES = 2;
/** What lies in more squares than this, as a deck, is asked each time. Another would only take longer or shorter for the same answers. */
const MOST_SQUARES = 256;
/** Rows are told apart by this many columns, more than any roof has. */
const ROW = 1_048_576;

/** Something that lies within bounds, metres. */
interface Lying {
  readonly bounds: Bounds;
  /** What it covers, where that is known: convex. A long wall askew lies in few of the squares of its bounds. */
  readonly outline?: readonly Spot[];
}

/** The squares in one row that something lies in: the first and the last column. */
type Columns = readonly [row: number, first: number, last: number];

const squareOf = (metres: number): number => Math.floor(metres / SIDE_METRES);

/**
 * Things by the squares of the ground that they touch, so that a question about a place or a straight line is put
 * only to what is near. It may give what is not near, and the same thing twice, as long as it lies in more than one
 * square; it never leaves out what is.
 */
export class Squares<Thing extends Lying> {
  private readonly lists = new Map<number, Thing[]>();
  private readonly wide: Thing[] = [];

  constructor(private readonly all: readonly Thing[]) {
    for (const thing of all) {
      const rows = columnsOf(thing);
      if (!rows) this.wide.push(thing);
      else
        for (const [row, first, last] of rows)
          for (let column = first; column <= last; column += 1) this.put(row * ROW + column, thing);
    }
  }

  private put(key: number, thing: Thing): void {
    const list = this.lists.get(key);
    if (list) list.push(thing);
    else this.lists.set(key, [thing]);
  }

  /** Whether all that may be so near to a straight piece, metres, is as asked. */
  every(a: Spot, b: Spot, byMetres: number, holds: (thing: Thing) => boolean): boolean {
    const top = squareOf(Math.min(a[1], b[1]) - byMetres - ROUNDING_METRES);
    const bottom = squareOf(Math.max(a[1], b[1]) + byMetres + ROUNDING_METRES);
    const columns = squareOf(Math.max(a[0], b[0]) + byMetres) - squareOf(Math.min(a[0], b[0]) - byMetres) + 1;
    // Where there are more squares than lists, asking all is less.
    if (!((bottom - top + 1) * columns <= Math.max(this.lists.size, 1))) return this.all.every(holds);
    if (!this.wide.every(holds)) return false;
    for (let row = top; row <= bottom; row += 1) {
      // The part of the line that this row has to do with.
      const [from, until] = sharesWithin(
        a[1],
        b[1],
        row * SIDE_METRES - byMetres,
        (row + 1) * SIDE_METRES + byMetres,
      );
      const [x, toX] = [a[0] + (b[0] - a[0]) * from, a[0] + (b[0] - a[0]) * until];
      const last = squareOf(Math.max(x, toX) + byMetres + ROUNDING_METRES);
      for (
        let column = squareOf(Math.min(x, toX) - byMetres - ROUNDING_METRES);
        column <= last;
        column += 1
      ) {
        const list = this.lists.get(row * ROW + column);
        if (list && !list.every(holds)) return false;
      }
    }
    return true;
  }
}

/** The squares that something lies in, row by row; null where they are too many. */
function columnsOf({ bounds, outline }: Lying): readonly Columns[] | null {
  const [left, top, right, bottom] = bounds.map(squareOf);
  // Bounds that are no numbers are too many too.
  if (!(bottom - top + 1 <= MOST_SQUARES)) return null;
  const rows: Columns[] = [];
  let count = 0;
  for (let row = top; row <= bottom; row += 1) {
    const [first, last] = outline ? columnsIn(outline, row) : [left, right];
    count += Math.max(0, last - first + 1);
    if (!(count <= MOST_SQUARES)) return null;
    rows.push([row, first, last]);
  }
  return rows;
}

/** The first and the last column in which a convex outline lies in a row; none where the last is before the first. */
function columnsIn(outline: readonly Spot[], row: number): readonly [first: number, last: number] {
  const [low, high] = [row * SIDE_METRES - ROUNDING_METRES, (row + 1) * SIDE_METRES + ROUNDING_METRES];
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [k, from] of outline.entries()) {
    const to = outline[(k + 1) % outline.length];
    if (Math.max(from[1], to[1]) < low || Math.min(from[1], to[1]) > high) continue;
    for (const share of sharesWithin(from[1], to[1], low, high)) {
      const x = from[0] + (to[0] - from[0]) * share;
      left = Math.min(left, x);
      right = Math.max(right, x);
    }
  }
  return left > right ? [0, -1] : [squareOf(left - ROUNDING_METRES), squareOf(right + ROUNDING_METRES)];
}

/** A line that is cut into rows may be off by this, metres. */
const ROUNDING_METRES = 1e-6;

/** The shares of the way from one value to another between which it lies within two bounds, some rounding wider. */
function sharesWithin(from: number, to: number, low: number, high: number): readonly [number, number] {
  const length = to - from;
  if (Math.abs(length) < ROUNDING_METRES) return [0, 1];
  const [one, other] = [(low - ROUNDING_METRES - from) / length, (high + ROUNDING_METRES - from) / length];
  return [Math.max(0, Math.min(one, other)), Math.min(1, Math.max(one, other))];
}
