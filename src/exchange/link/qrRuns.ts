import type { QrSquares } from './qr';

/** The free margin that readers need round a code, in squares. ISO/IEC 18004, from memory. */
export const QUIET_SQUARES = 4;

/** Dark squares of a code that stand next to each other in a row, from its left. */
interface QrRun {
  readonly x: number;
  readonly y: number;
  readonly length: number;
}

/** All dark squares of a code as runs, row by row from the top: each square is in one. */
export function* darkRuns({ size, isDark }: QrSquares): Generator<QrRun, void> {
  for (let y = 0; y < size; y += 1)
    for (let x = 0; x < size; x += 1) {
      if (!isDark(x, y)) continue;
      const from = x;
      while (x + 1 < size && isDark(x + 1, y)) x += 1;
      yield { x: from, y, length: x + 1 - from };
    }
}

/** The dark squares as the `d` of a path, one unit a square. @param margin units before the first, on the left and on top */
export const runsPath = (squares: QrSquares, margin = 0): string =>
  Array.from(
    darkRuns(squares),
    ({ x, y, length }) => `M${x + margin} ${y + margin}h${length}v1h-${length}z`,
  ).join('');
