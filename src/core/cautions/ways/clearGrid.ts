import type { Spot } from '../../plan/schema/numbers';
import { type Bounds, boundsOf } from '../../plan/walkWays/planar';

/** Squares of this side, metres, or larger where the roof would take too many. */
const STEP_METRES = 0.1;
const MOST_SQUARES = 160_000;

/** How far the middles of the squares of a floor are from what stands there, up to a limit. */
export interface ClearGrid {
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
  readonly step: number;
  /** Row by row, metres. */
  readonly clear: Float32Array;
}

/** How far a place is from a convex outline, metres, squared; 0 inside. Plain loops: it is asked for each square. */
function squaredFrom(outline: readonly Spot[], x: number, z: number): number {
  let nearest = Number.POSITIVE_INFINITY;
  let isInside = outline.length > 2;
  for (let k = 0; k < outline.length; k += 1) {
    const [ax, az] = outline[k];
    const [bx, bz] = outline[k + 1 < outline.length ? k + 1 : 0];
    const [dx, dz] = [bx - ax, bz - az];
    if (dx * (z - az) - dz * (x - ax) < 0) isInside = false;
    const squared = dx * dx + dz * dz;
    const share = squared === 0 ? 0 : Math.min(Math.max(((x - ax) * dx + (z - az) * dz) / squared, 0), 1);
    const [px, pz] = [ax + dx * share - x, az + dz * share - z];
    nearest = Math.min(nearest, px * px + pz * pz);
  }
  return isInside ? 0 : nearest;
}

/** Reckons the grid over bounds from convex outlines; nothing is told beyond the limit, metres. */
export function clearGrid(
  outlines: readonly (readonly Spot[])[],
  [left, top, right, bottom]: Bounds,
  limitMetres: number,
): ClearGrid {
  const area = Math.max((right - left) * (bottom - top), 0);
  const step = Math.max(STEP_METRES, Math.sqrt(area / MOST_SQUARES));
  const columns = Math.max(1, Math.ceil((right - left) / step));
  const rows = Math.max(1, Math.ceil((bottom - top) / step));
  const clear = new Float32Array(columns * rows).fill(limitMetres);
  for (const outline of outlines) {
    const [low, from, high, to] = boundsOf(outline, limitMetres);
    const lastColumn = Math.min(columns - 1, Math.floor((high - left) / step));
    const lastRow = Math.min(rows - 1, Math.floor((to - top) / step));
    for (let row = Math.max(0, Math.floor((from - top) / step)); row <= lastRow; row += 1) {
      const z = top + (row + 0.5) * step;
      for (let column = Math.max(0, Math.floor((low - left) / step)); column <= lastColumn; column += 1) {
        const index = row * columns + column;
        const known = clear[index];
        if (known === 0) continue;
        const squared = squaredFrom(outline, left + (column + 0.5) * step, z);
        if (squared < known * known) clear[index] = Math.sqrt(squared);
      }
    }
  }
  return { left, top, columns, rows, step, clear };
}

/** The square of a place, or −1 outside of the grid. */
export function squareOf({ left, top, columns, rows, step }: ClearGrid, [x, z]: Spot): number {
  const column = Math.floor((x - left) / step);
  const row = Math.floor((z - top) / step);
  return column < 0 || row < 0 || column >= columns || row >= rows ? -1 : row * columns + column;
}

/** The middle of a square. */
export const middleOf = ({ left, top, columns, step }: ClearGrid, square: number): Spot => [
  left + ((square % columns) + 0.5) * step,
  top + (Math.floor(square / columns) + 0.5) * step,
];

/** The squares within a distance of a place, the nearest first. */
export function squaresNear(grid: ClearGrid, spot: Spot, metres: number): readonly number[] {
  const reach = Math.ceil(metres / grid.step);
  const own = squareOf(grid, spot);
  if (own < 0) return [];
  const [column, row] = [own % grid.columns, Math.floor(own / grid.columns)];
  const found: { readonly square: number; readonly away: number }[] = [];
  for (let r = Math.max(0, row - reach); r <= Math.min(grid.rows - 1, row + reach); r += 1)
    for (let c = Math.max(0, column - reach); c <= Math.min(grid.columns - 1, column + reach); c += 1) {
      const square = r * grid.columns + c;
      const [x, z] = middleOf(grid, square);
      const away = (x - spot[0]) * (x - spot[0]) + (z - spot[1]) * (z - spot[1]);
      if (away <= metres * metres) found.push({ square, away });
    }
  return found.sort((a, b) => a.away - b.away || a.square - b.square).map(({ square }) => square);
}

/** Steps to a neighbour, straight and aslant, in whole numbers in the ratio 5 : 7. */
const STRAIGHT = 5;
const ASLANT = 7;
/** What waits is never so much longer than what it comes from, so a list serves again after so many lengths. */
const LISTS = ASLANT + 1;

/**
 * The shortest ways to some squares over all that are at least so clear: for each square the next one on its way, itself
 * at the goal, −1 where there is no way. By Dijkstra's search, with a list for each length, since lengths are whole.
 */
export function waysTo(grid: ClearGrid, goals: readonly number[], leastMetres: number): Int32Array {
  const { clear, columns, rows } = grid;
  const next = new Int32Array(clear.length).fill(-1);
  const lengths = new Int32Array(clear.length).fill(0x7fffffff);
  // Lists are written over, not made anew: a large floor has some hundred thousand squares.
  const lists = Array.from({ length: LISTS }, (): number[] => []);
  const counts = new Int32Array(LISTS);
  let waiting = 0;
  const put = (square: number, length: number): void => {
    const at = length % LISTS;
    lists[at][counts[at]] = square;
    counts[at] += 1;
    waiting += 1;
  };
  for (const goal of goals) {
    if (clear[goal] < leastMetres) continue;
    next[goal] = goal;
    lengths[goal] = 0;
    put(goal, 0);
  }
  for (let length = 0; waiting > 0; length += 1) {
    const list = lists[length % LISTS];
    const count = counts[length % LISTS];
    counts[length % LISTS] = 0;
    waiting -= count;
    for (let k = 0; k < count; k += 1) {
      const square = list[k];
      if (lengths[square] !== length) continue;
      const [column, row] = [square % columns, Math.floor(square / columns)];
      for (let dr = -1; dr <= 1; dr += 1)
        for (let dc = -1; dc <= 1; dc += 1) {
          const [r, c] = [row + dr, column + dc];
          if ((dr === 0 && dc === 0) || r < 0 || c < 0 || r >= rows || c >= columns) continue;
          const other = r * columns + c;
          const to = length + (dr === 0 || dc === 0 ? STRAIGHT : ASLANT);
          if (clear[other] < leastMetres || to >= lengths[other]) continue;
          lengths[other] = to;
          next[other] = square;
          put(other, to);
        }
    }
  }
  return next;
}

/** The squares of a way from one of them to its goal. */
export function wayFrom(next: Int32Array, square: number): readonly number[] {
  const way = [square];
  for (let at = square; next[at] !== at; at = next[at]) way.push(next[at]);
  return way;
}
