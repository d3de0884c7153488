import type { QrSquares } from '../../exchange/link/qr';
import { runsPath } from '../../exchange/link/qrRuns';
import type { CodeOutline } from './shareApi';

/** The squares of a code as one outline, a rectangle for each run of dark ones in a row. */
export const codeOutline = (squares: QrSquares): CodeOutline => ({
  size: squares.size,
  path: runsPath(squares),
});
