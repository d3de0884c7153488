import { inOwnFrame, outOfOwnFrame } from '../../plan/areas';
import type { Spot } from '../../plan/schema/numbers';
import type { Piece } from '../../plan/schema/pieces';
import type { Plan } from '../../plan/schema/plan';
import { pieceUnder, surfaceUnder } from '../../plan/surfaces';
import { hasEdges } from '../../plan/walkWays/edges';
import { obstaclesOn } from '../../plan/walkWays/obstacles';
import { DROP_METRES, heldAlong, LEAST_GUARD_METRES, openEdgeNear } from '../../plan/walkWays/openEdges';

/** The top of a guardrail over whatever somebody stands on, metres: 42 inches. Source: [guardrail] */
export const GUARD_METRES = 1.1;
/** Nearer than this to an open edge something is told of, metres: the 6 feet of a warning line. Source: [unprotected-edge] */
export const NEAR_METRES = 1.8;

/** An edge without a guard that is high enough, near to somebody or something. */
export interface EdgeNear {
  readonly pieceId: string;
  readonly metres: number;
  readonly at: Spot;
  /** How high what stands along it is, above the floor; 0 for nothing. */
  readonly heldMetres: number;
  readonly isHole: boolean;
}

/** How an edge is looked for. */
interface EdgeOptions {
  /** How much above that foot somebody stands, as on a ladder. */
  readonly raisedMetres?: number;
  readonly withinMetres?: number;
}

type Raised = Extract<Piece, { readonly kind: 'box' | 'riser' | 'stair house' | 'shed' }>;

const isRaised = (piece: Piece): piece is Raised =>
  piece.kind === 'box' || piece.kind === 'riser' || piece.kind === 'stair house' || piece.kind === 'shed';

/** The nearest edge of a house's roof or a platform that one stands on, if there is a fall and no guard along it. */
function edgeOfRaised(
  plan: Plan,
  piece: Raised,
  at: Spot,
  top: number,
  raisedMetres: number,
  withinMetres: number,
): EdgeNear | null {
  const [width, , depth] = piece.size;
  const over = 'overhangMetres' in piece ? piece.overhangMetres : 0;
  const [right, back] = inOwnFrame(piece.at, piece.headingDegrees, at);
  const [x, z] = [width / 2 + over, depth / 2 + over];
  const world = (own: Spot): Spot => outOfOwnFrame(piece.at, piece.headingDegrees, own);
  const sides: readonly { readonly edge: Spot; readonly beyond: Spot; readonly metres: number }[] = [
    { edge: [x, back], beyond: [x + 0.1, back], metres: x - right },
    { edge: [-x, back], beyond: [-x - 0.1, back], metres: x + right },
    { edge: [right, z], beyond: [right, z + 0.1], metres: z - back },
    { edge: [right, -z], beyond: [right, -z - 0.1], metres: z + back },
  ];
  let found: EdgeNear | null = null;
  for (const { edge, beyond, metres } of sides) {
    if (metres > withinMetres || (found && metres >= found.metres)) continue;
    const [place, out] = [world(edge), world(beyond)];
    const below = surfaceUnder(plan, out, { belowMetres: top + 0.3 });
    if (below.id !== null && top - below.metres < DROP_METRES) continue;
    const solids = obstaclesOn(plan, [top, top]).filter(({ kind }) => kind === 'solid');
    const heldMetres = heldAlong(solids, top, place);
    if (heldMetres < raisedMetres + LEAST_GUARD_METRES)
      found = { pieceId: piece.id, metres: Math.max(metres, 0), at: place, heldMetres, isHole: false };
  }
  return found;
}

/**
 * The nearest edge within a distance of a place at a foot's height that has a fall beyond it and no guard that is
 * high enough for whoever stands so much above that foot; null for none, and where it is not known where floors end.
 * Source: [guardrail], [unprotected-edge]
 */
export function edgeAt(
  plan: Plan,
  at: Spot,
  footMetres: number,
  { raisedMetres = 0, withinMetres = NEAR_METRES }: EdgeOptions = {},
): EdgeNear | null {
  const { metres: top, piece: under } = pieceUnder(plan, at, { belowMetres: footMetres + 0.05 });
  if (under && isRaised(under)) {
    const own = edgeOfRaised(plan, under, at, top, raisedMetres, withinMetres);
    if (own) return own;
  }
  if (!hasEdges(plan)) return null;
  const edge = openEdgeNear(plan, at, [top, top], withinMetres, raisedMetres);
  return (
    edge && {
      pieceId: edge.pieceId,
      metres: edge.metres,
      at: edge.at,
      heldMetres: edge.heldMetres,
      isHole: edge.kind === 'hole',
    }
  );
}
