import type { Spot } from '../schema/numbers';
import type { Bounds } from './planar';

/** Side of a square, metres: about what stands around a person. Another would only take longer or shorter for the same answers. */
const SIDE_METRES = 2;
/** Where there would be more squares than this they are larger: something may lie 5 km off. */
const MOST_SQUARES = 65_536;
/** What lies in more squares than this, as a deck, is asked each time. Another would only take longer or shorter for the same answers. */
const MOST_OF_ONE = 256;
/** What lies in no more than so many squares beside the first, along each axis, is put into all of them: its outline would spare it one or two. */
const FEW = 1;

/** Something that lies within bounds, metres. */
interface Lying {
  readonly bounds: Bounds;
  /** What it covers, where that is known: convex. A long wall askew lies in few of the squares of its bounds. */
  readonly outline?: readonly Spot[];
}

/** The squares in one row that something lies in: the first and the last column. */
type Columns = readonly [row: number, first: number, last: number];

/** Squares in rows and columns over all that has bounds. */
interface Grid {
  readonly left: number;
  readonly top: number;
  readonly side: number;
  readonly columns: number;
  readonly rows: number;
}

/**
 * Things by the squares of the ground that they touch, so that a question about a place or a straight line is put
 * only to what is near. It may give what is not near, and the same thing twice, as long as it lies in more than one
 * square; it never leaves out what is.
 */
export class Squares<Thing extends Lying> {
  private readonly wide: Thing[] = [];
  private readonly grid: Grid;
  /** Which things lie in the squares, square by square and row by row; and where each square begins. */
  private readonly lying: Int32Array;
  private readonly starts: Int32Array;
  /** How many squares have something in them. */
  private readonly taken: number;

  constructor(private readonly all: readonly Thing[]) {
    this.grid = gridOver(all);
    const { columns } = this.grid;
    const inRows: (readonly [thing: number, rows: readonly Columns[]])[] = [];
    for (const [k, thing] of all.entries()) {
      const rows = columnsOf(thing, this.grid);
      if (rows) inRows.push([k, rows]);
      else this.wide.push(thing);
    }
    this.starts = new Int32Array(columns * this.grid.rows + 1);
    const { starts } = this;
    for (const [, rows] of inRows)
      for (const [row, first, last] of rows)
        for (let square = row * columns + first; square <= row * columns + last; square += 1)
          starts[square] += 1;
    let [sum, taken] = [0, 0];
    for (let square = 0; square < starts.length; square += 1) {
      if (starts[square] > 0) taken += 1;
      sum += starts[square];
      starts[square] = sum;
    }
    this.taken = taken;
    this.lying = new Int32Array(sum);
    // Each square is filled from its end, so that its start stands there afterwards.
    for (const [k, rows] of inRows)
      for (const [row, first, last] of rows)
        for (let square = row * columns + first; square <= row * columns + last; square += 1) {
          starts[square] -= 1;
          this.lying[starts[square]] = k;
        }
  }

  /** Whether all that may be so near to a straight piece, metres, is as asked. */
  every(a: Spot, b: Spot, byMetres: number, holds: (thing: Thing) => boolean): boolean {
    const { all, grid, lying, starts } = this;
    const { left, top, side, columns } = grid;
    const by = byMetres + ROUNDING_METRES;
    const [firstRow, lastRow] = within(
      grid.rows,
      top,
      side,
      Math.min(a[1], b[1]) - by,
      Math.max(a[1], b[1]) + by,
    );
    const [firstColumn, lastColumn] = within(
      columns,
      left,
      side,
      Math.min(a[0], b[0]) - by,
      Math.max(a[0], b[0]) + by,
    );
    const squares = Math.max(0, lastRow - firstRow + 1) * Math.max(0, lastColumn - firstColumn + 1);
    // Where there are more squares than have something in them, asking all is less.
    if (!(squares <= Math.max(this.taken, 1))) return all.every(holds);
    if (!this.wide.every(holds)) return false;
    for (let row = firstRow; row <= lastRow; row += 1) {
      // The part of the line that this row has to do with.
      const [from, until] = sharesWithin(
        a[1],
        b[1],
        top + row * side - byMetres,
        top + (row + 1) * side + byMetres,
      );
      const [x, toX] = [a[0] + (b[0] - a[0]) * from, a[0] + (b[0] - a[0]) * until];
      const [first, last] = within(columns, left, side, Math.min(x, toX) - by, Math.max(x, toX) + by);
      if (first > last) continue;
      // The squares of a row lie one behind the other.
      const end = starts[row * columns + last + 1];
      for (let k = starts[row * columns + first]; k < end; k += 1) if (!holds(all[lying[k]])) return false;
    }
    return true;
  }
}

/** The first and the last of so many steps along an axis that lie between two values; none where the last is before the first. */
function within(count: number, start: number, side: number, low: number, high: number): Spot {
  return [
    Math.max(0, Math.floor((low - start) / side)),
    Math.min(count - 1, Math.floor((high - start) / side)),
  ];
}

/** Squares over all bounds that are numbers. */
function gridOver(all: readonly Lying[]): Grid {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { bounds } of all) {
    if (!isSomewhere(bounds)) continue;
    left = Math.min(left, bounds[0]);
    top = Math.min(top, bounds[1]);
    right = Math.max(right, bounds[2]);
    bottom = Math.max(bottom, bounds[3]);
  }
  if (right < left) return { left: 0, top: 0, side: SIDE_METRES, columns: 0, rows: 0 };
  const [wide, deep] = [right - left, bottom - top];
  const side = Math.max(SIDE_METRES, Math.sqrt((wide * deep) / MOST_SQUARES));
  return { left, top, side, columns: Math.floor(wide / side) + 1, rows: Math.floor(deep / side) + 1 };
}

const isSomewhere = ([left, top, right, bottom]: Bounds): boolean =>
  right >= left && bottom >= top && Number.isFinite(right - left) && Number.isFinite(bottom - top);

/** The squares that something lies in, row by row; null where they are too many, or it is not known where. */
function columnsOf({ bounds, outline }: Lying, grid: Grid): readonly Columns[] | null {
  const [left, top, right, bottom] = bounds;
  // Bounds of nothing are nowhere, and bounds that are no numbers may be anywhere.
  if (right < left || bottom < top) return [];
  if (!isSomewhere(bounds)) return null;
  const column = (x: number): number => Math.floor((x - grid.left) / grid.side);
  const row = (z: number): number => Math.floor((z - grid.top) / grid.side);
  const [first, last, from, to] = [column(left), column(right), row(top), row(bottom)];
  const isSmall = last - first <= FEW && to - from <= FEW;
  if (to - from + 1 > MOST_OF_ONE) return null;
  const rows: Columns[] = [];
  let count = 0;
  for (let at = from; at <= to; at += 1) {
    const [start, end] = outline && !isSmall ? columnsIn(outline, at, grid) : [first, last];
    count += Math.max(0, end - start + 1);
    if (count > MOST_OF_ONE) return null;
    rows.push([at, start, end]);
  }
  return rows;
}

/** The first and the last column in which a convex outline lies in a row; none where the last is before the first. */
function columnsIn(outline: readonly Spot[], row: number, { left: start, top, side, columns }: Grid): Spot {
  const [low, high] = [top + row * side - ROUNDING_METRES, top + (row + 1) * side + ROUNDING_METRES];
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
  return within(columns, start, side, left - ROUNDING_METRES, right + ROUNDING_METRES);
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
