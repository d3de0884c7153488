import type { QrSquares } from './qr';
import { QUIET_SQUARES, runsPath } from './qrRuns';

/** A QR code as an SVG file, black on white, one unit a square. Nothing in it comes from whoever wrote the text. */
export function qrSvg(squares: QrSquares): string {
  const side = squares.size + 2 * QUIET_SQUARES;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" shape-rendering="crispEdges">`,
    `<path fill="#fff" d="M0 0h${side}v${side}H0z"/>`,
    `<path fill="#000" d="${runsPath(squares, QUIET_SQUARES)}"/>`,
    '</svg>',
    '',
  ].join('\n');
}
