import { segmentWithin } from './clipping';
import type { Bounds, Spot } from './spots';

/** Side of a square of the sheet that has a list of its own, pixels: about as long as a name. */
const CELL = 64;

/**
 * Things on the sheet by the squares that they touch, so that a question about a place is not put to all of them.
 * What lies outside of the pane is left out.
 */
export class Buckets {
  private readonly across: number;
  private readonly down: number;
  private readonly cells: number[][];

  constructor(private readonly pane: Bounds) {
    this.across = Math.max(1, Math.ceil((pane[2] - pane[0]) / CELL));
    this.down = Math.max(1, Math.ceil((pane[3] - pane[1]) / CELL));
    this.cells = Array.from({ length: this.across * this.down }, () => []);
  }

  /** Puts the thing of that number where its rectangle is. */
  addBox(index: number, bounds: Bounds): void {
    for (const cell of this.cellsIn(bounds)) this.cells[cell].push(index);
  }

  /** Puts the line of that number into the squares that it goes through. */
  addLine(index: number, from: Spot, to: Spot): void {
    const bounds: Bounds = [
      Math.min(from[0], to[0]),
      Math.min(from[1], to[1]),
      Math.max(from[0], to[0]),
      Math.max(from[1], to[1]),
    ];
    for (const cell of this.cellsIn(bounds)) {
      if (segmentWithin(from, to, this.squareOf(cell))) this.cells[cell].push(index);
    }
  }

  /** The numbers of what may touch the rectangle, in ascending order. */
  near(bounds: Bounds): readonly number[] {
    const cells = [...this.cellsIn(bounds)];
    const [only] = cells;
    if (only !== undefined && cells.length === 1) return this.cells[only];
    return [...new Set(cells.flatMap((cell) => this.cells[cell]))].sort((a, b) => a - b);
  }

  private *cellsIn([left, top, right, bottom]: Bounds): Generator<number> {
    const [x, y] = this.pane;
    const [firstColumn, firstRow] = [Math.floor((left - x) / CELL), Math.floor((top - y) / CELL)];
    const [lastColumn, lastRow] = [Math.floor((right - x) / CELL), Math.floor((bottom - y) / CELL)];
    for (let row = Math.max(0, firstRow); row <= Math.min(this.down - 1, lastRow); row += 1) {
      for (
        let column = Math.max(0, firstColumn);
        column <= Math.min(this.across - 1, lastColumn);
        column += 1
      )
        yield row * this.across + column;
    }
  }

  /** A square with a little around it, so that no line is lost on its edges. */
  private squareOf(cell: number): Bounds {
    const [left, top] = [
      this.pane[0] + (cell % this.across) * CELL,
      this.pane[1] + Math.floor(cell / this.across) * CELL,
    ];
    return [left - 1, top - 1, left + CELL + 1, top + CELL + 1];
  }
}
