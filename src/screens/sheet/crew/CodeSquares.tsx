import type { CodeOutline } from '../../../desk/share/shareApi';
import { QUIET_SQUARES } from '../../../exchange/link/qrRuns';

/** A code, black on white in both themes, since that is what is read, with its quiet zone. @param side pixels */
export function CodeSquares({ code, side }: { readonly code: CodeOutline; readonly side: number }) {
  const all = code.size + 2 * QUIET_SQUARES;
  return (
    <svg
      className="code-squares"
      width={side}
      height={side}
      viewBox={`${-QUIET_SQUARES} ${-QUIET_SQUARES} ${all} ${all}`}
      shapeRendering="crispEdges"
      role="img"
      aria-label="The code of the link"
    >
      <rect x={-QUIET_SQUARES} y={-QUIET_SQUARES} width={all} height={all} fill="#fff" />
      <path d={code.path} fill="#000" />
    </svg>
  );
}
