/** A cell of a grid by where it is on the page. */
export interface Cell {
  readonly left: number;
  readonly top: number;
}

/** A row's cells share their top to within this, pixels. */
const SAME_ROW = 4;

/**
 * The cell that a key leads to from one of them, as they lie on the page: along the row and on to the next, up and
 * down to the nearest in the next row, Home and End to the first and the last. Null for any other key and at the ends.
 */
export function cellFrom(cells: readonly Cell[], at: number, key: string): number | null {
  const here = cells[at];
  if (!here) return null;
  const within = (place: number): number | null => (place >= 0 && place < cells.length ? place : null);
  switch (key) {
    case 'ArrowRight':
      return within(at + 1);
    case 'ArrowLeft':
      return within(at - 1);
    case 'Home':
      return 0;
    case 'End':
      return cells.length - 1;
    case 'ArrowDown':
    case 'ArrowUp': {
      const way = key === 'ArrowDown' ? 1 : -1;
      let best: number | null = null;
      let nearest: readonly [number, number] = [Number.POSITIVE_INFINITY, 0];
      for (const [place, cell] of cells.entries()) {
        const rows = (cell.top - here.top) * way;
        const aside = Math.abs(cell.left - here.left);
        if (rows <= SAME_ROW || rows > nearest[0] + SAME_ROW) continue;
        if (rows < nearest[0] - SAME_ROW || aside < nearest[1]) {
          best = place;
          nearest = [rows, aside];
        }
      }
      return best;
    }
    default:
      return null;
  }
}
