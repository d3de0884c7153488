import { bearingOf, metresBetween } from '../../plan/runs';
import type { Spot } from '../../plan/schema/numbers';
import type { Piece } from '../../plan/schema/pieces';
import type { Plan } from '../../plan/schema/plan';
import { thingName } from '../../plan/snap/names';
import { topAt } from '../../plan/surfaces';
import { isFloor } from '../../plan/walkWays/edges';
import { type Anchor, isOnLevel, type RawAnchor } from './anchor';
import { told } from './anchorWords';
import { windOf } from './compassWords';
import { type Corner, headingWithin, outlineCorners, rectangleCorners, runCorners } from './cornersOf';

/** How much longer a tape may be to spare what is worse to measure from, metres. Source: common practice, no source */
const RELUCTANCE = { corner: 0, post: 1.5, deck: 3, movable: 20 } as const;
/** A deck's corner is not used where something firmer is as near as this, metres. */
const FIRMER_METRES = 1;
/** A tape round a post comes off it no nearer than this, metres. */
const BESIDE_METRES = 0.02;
/** How far in front of a corner there has to be floor for somebody's hand, metres. */
const HAND_METRES = 0.05;

const kept = new WeakMap<Plan['pieces'], { readonly north: number; readonly anchors: readonly Anchor[] }>();

/**
 * The fixed corners of a plan that tapes are drawn from: inner corners of parapets and walls and their ends, corners of
 * stair houses, sheds and chimneys, posts, and corners of decks where nothing firmer is near. Each has words of its own.
 * The same list for the same set pieces.
 */
export function anchorsOf(plan: Plan): readonly Anchor[] {
  const known = kept.get(plan.pieces);
  const north = plan.place.northDegrees;
  if (known?.north === north) return known.anchors;
  const raw = plan.pieces.flatMap((piece) => (piece.hidden ? [] : ofPiece(piece, plan)));
  const firm = raw.filter(({ hold, reluctance }) => hold !== 'deck' && reluctance < RELUCTANCE.movable);
  const anchors = told(
    raw.filter(
      ({ hold, at, levels }) =>
        hold !== 'deck' ||
        firm.every(
          (other) => metresBetween(other.at, at) > FIRMER_METRES || !sameLevel(other.levels, levels),
        ),
    ),
    plan,
  );
  kept.set(plan.pieces, { north, anchors });
  return anchors;
}

/** What the anchors of one piece have in common. */
type Rest = Pick<RawAnchor, 'levels' | 'hold' | 'reluctance'>;

function ofPiece(piece: Piece, plan: Plan): readonly RawAnchor[] {
  const north = plan.place.northDegrees;
  const owner = thingName(piece.label);
  const named = (corners: readonly Corner[], rest: Rest, what = 'corner'): RawAnchor[] =>
    corners.map(({ at, headingDegrees }) => ({
      ...rest,
      owner,
      what,
      wind: windOf(headingDegrees, north),
      at,
      pieceId: piece.id,
      withinMetres: 0,
    }));
  switch (piece.kind) {
    case 'parapet':
    case 'wall':
      return ofRun(piece, plan);
    case 'fence':
      return fencePosts(piece, plan);
    case 'stair house':
    case 'shed': {
      const [width, , depth] = piece.size;
      const over = 2 * piece.overhangMetres;
      const top = topAt(piece, [piece.at[0], piece.at[2]]) ?? piece.at[1];
      const firm = { hold: 'corner', reluctance: RELUCTANCE.corner } as const;
      const roof = rectangleCorners(piece, width + over, depth + over);
      return [
        ...named(rectangleCorners(piece, width, depth), { ...firm, levels: [piece.at[1]] }),
        ...named(roof, { ...firm, levels: [top] }, 'roof corner'),
      ];
    }
    case 'chimney':
      return named(rectangleCorners(piece, piece.size[0], piece.size[2]), {
        levels: [piece.at[1]],
        hold: 'corner',
        reluctance: RELUCTANCE.corner,
      });
    case 'riser':
    case 'box':
      return named(rectangleCorners(piece, piece.size[0], piece.size[2]), {
        levels: [piece.at[1], piece.at[1] + piece.size[1]],
        hold: 'corner',
        reluctance: RELUCTANCE.movable,
      });
    case 'deck':
      return named(outlineCorners(piece.outline, north), {
        levels: [piece.topMetres],
        hold: 'deck',
        reluctance: RELUCTANCE.deck,
      });
    case 'post':
      return [
        {
          owner,
          what: '',
          wind: 'north',
          at: [piece.at[0], piece.at[2]],
          levels: [piece.at[1]],
          pieceId: piece.id,
          hold: 'post',
          withinMetres: piece.diameterMetres / 2 + BESIDE_METRES,
          reluctance: RELUCTANCE.post,
        },
      ];
    default:
      return [];
  }
}

type Run = Extract<Piece, { readonly kind: 'wall' | 'parapet' }>;

/** Corners of a run on those faces that somebody can stand before. */
function ofRun(run: Run, plan: Plan): readonly RawAnchor[] {
  const corners = runCorners(run.path, run.closed, run.thicknessMetres).filter(({ at, end }) =>
    hasFloorBefore(at, end, run.baseMetres, plan),
  );
  const north = plan.place.northDegrees;
  return corners.map((corner): RawAnchor => {
    const { at, end, bend } = corner;
    const both = corners.some((other) => other.end === end && other !== corner);
    return {
      owner: thingName(run.label),
      what: bend === null ? 'end' : both ? `${bend} corner` : 'corner',
      wind: windOf(headingWithin(run.path, end, north), north),
      // The two corners of an open end are told apart by the face that they are on.
      ...(bend === null && both && { face: windOf(bearingOf(end, at), north) }),
      at,
      levels: [run.baseMetres],
      pieceId: run.id,
      hold: 'corner',
      withinMetres: 0,
      reluctance: RELUCTANCE.corner,
    };
  });
}

/** Whether there is floor for a hand before the corner of a run, on the far side of it as seen from its middle. */
function hasFloorBefore(at: Spot, end: Spot, level: number, plan: Plan): boolean {
  const thick = metresBetween(end, at);
  if (thick === 0) return false;
  const out = (thick + HAND_METRES) / thick;
  const before: Spot = [end[0] + (at[0] - end[0]) * out, end[1] + (at[1] - end[1]) * out];
  return isFloor(plan.pieces, before, [level, level]);
}

/** The posts of a fence at its ends and bends. */
function fencePosts(fence: Extract<Piece, { readonly kind: 'fence' }>, plan: Plan): readonly RawAnchor[] {
  const north = plan.place.northDegrees;
  return fence.path.map((at, k) => ({
    owner: thingName(fence.label),
    what: !fence.closed && (k === 0 || k === fence.path.length - 1) ? 'end post' : 'corner post',
    wind: windOf(headingWithin(fence.path, at, north), north),
    at,
    levels: [fence.baseMetres],
    pieceId: fence.id,
    hold: 'post',
    withinMetres: fence.postMetres + BESIDE_METRES,
    reluctance: RELUCTANCE.post,
  }));
}

const sameLevel = (some: readonly number[], others: readonly number[]): boolean =>
  some.some((level) => others.some((other) => isOnLevel(level, other)));
