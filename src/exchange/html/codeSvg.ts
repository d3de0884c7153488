import type { QrSquares } from '../link/qr';
import { QUIET_SQUARES, runsPath } from '../link/qrRuns';
import { html, type Markup } from './markup';

/** A code as a picture: black on white in any theme, since that is what is read. */
export function codeSvg(squares: QrSquares): Markup {
  const all = squares.size + 2 * QUIET_SQUARES;
  return html`<svg class="code" viewBox="-${QUIET_SQUARES} -${QUIET_SQUARES} ${all} ${all}" shape-rendering="crispEdges" role="img" aria-label="The code of the link"><rect x="-${QUIET_SQUARES}" y="-${QUIET_SQUARES}" width="${all}" height="${all}" fill="#fff"/><path d="${runsPath(squares)}" fill="#000"/></svg>`;
}
