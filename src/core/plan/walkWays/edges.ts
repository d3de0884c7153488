import { hypot } from '../../units/steadyMath';
import type { Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { isStoodOn } from '../surfaces';
import { between, boundsOf, cutsOf } from './planar';
import type { Floor, Obstacle } from './types';

/** A floor that is no farther than this above or below is the same walk, metres. Source: common practice, no source */
const LEVEL_METRES = 0.3;
/** How far beside an edge it is looked whether there is floor, metres. */
const BESIDE_METRES = 0.002;

/** Whether a place has a floor of a walk under it: a deck, or what else one stands on. */
export const isFloor = (pieces: readonly Piece[], spot: Spot, [lowest, highest]: Floor): boolean =>
  isStoodOn(pieces, spot, (top) => top >= lowest - LEVEL_METRES && top <= highest + LEVEL_METRES);

const known = new WeakMap<Plan['pieces'], boolean>();

/** Whether it is known where the floor of a plan ends: it has decks, and no model that may be one. */
export function hasEdges({ pieces }: Plan): boolean {
  const before = known.get(pieces);
  if (before !== undefined) return before;
  const found = pieces.some(({ kind }) => kind === 'deck') && !pieces.some(({ kind }) => kind === 'model');
  known.set(pieces, found);
  return found;
}

/** The edges of a floor: what of the outlines of decks and holes has no floor on one of its sides. */
export function edgesOf(plan: Plan, floor: Floor): readonly Obstacle[] {
  if (!hasEdges(plan)) return [];
  const decks = plan.pieces.flatMap((piece) => {
    if (piece.kind !== 'deck') return [];
    const isHere = piece.topMetres >= floor[0] - LEVEL_METRES && piece.topMetres <= floor[1] + LEVEL_METRES;
    return isHere ? [piece] : [];
  });
  const holes = decks.flatMap((deck) => (deck.holes ?? []).map(({ outline }) => ({ deck, outline })));
  const all = [...decks.map(({ outline }) => outline), ...holes.map(({ outline }) => outline)];
  const along = (deck: (typeof decks)[number], outline: readonly Spot[], kind: 'edge' | 'hole') =>
    outline.flatMap((from, k): Obstacle[] => {
      const to = outline[(k + 1) % outline.length];
      const length = hypot(to[0] - from[0], to[1] - from[1]);
      if (length === 0) return [];
      const aside: Spot = [
        (-(to[1] - from[1]) / length) * BESIDE_METRES,
        ((to[0] - from[0]) / length) * BESIDE_METRES,
      ];
      const cuts = cutsOf(from, to, all);
      return cuts.slice(1).flatMap((until, cut): Obstacle[] => {
        const [near, far] = [between(from, to, cuts[cut]), between(from, to, until)];
        const [x, z] = between(near, far, 0.5);
        const isSolid = ([dx, dz]: Spot): boolean => isFloor(plan.pieces, [x + dx, z + dz], floor);
        if (isSolid(aside) && isSolid([-aside[0], -aside[1]])) return [];
        const piece = [near, far];
        return [
          {
            pieceId: deck.id,
            kind,
            outline: piece,
            bounds: boundsOf(piece),
            bottomMetres: deck.topMetres - deck.dropMetres,
            topMetres: deck.topMetres,
          },
        ];
      });
    });
  return [
    ...decks.flatMap((deck) => along(deck, deck.outline, 'edge')),
    ...holes.flatMap(({ deck, outline }) => along(deck, outline, 'hole')),
  ];
}
