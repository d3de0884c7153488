import { areaOf, isWithin } from '../areas';
import { crosses } from '../crossings';
import type { Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { freeId } from './freeId';
import { MOST } from './limits';
import { tidySpot } from './tidy';

type Deck = Extract<Piece, { readonly kind: 'deck' }>;

/** The smallest hole that is one, square metres. */
const SMALLEST_SQUARE_METRES = 1e-4;

/**
 * Whether an outline can be a hole of a deck: it does not cross itself, lies inside the deck's outline, and neither
 * over another hole nor around it. `except` is the hole that it takes the place of.
 */
export function isHoleOf(deck: Deck, outline: readonly Spot[], except?: string): boolean {
  if (outline.length < 3 || outline.length > MOST.corners) return false;
  if (areaOf(outline) < SMALLEST_SQUARE_METRES || crosses(outline, outline)) return false;
  if (!outline.every((corner) => isWithin(deck.outline, corner))) return false;
  if (crosses(outline, deck.outline) || deck.outline.some((corner) => isWithin(outline, corner, false)))
    return false;
  return (deck.holes ?? []).every(
    (hole) =>
      hole.id === except ||
      !(
        crosses(outline, hole.outline) ||
        outline.some((corner) => isWithin(hole.outline, corner)) ||
        hole.outline.some((corner) => isWithin(outline, corner))
      ),
  );
}

/** Cuts a hole through a deck. An outline that cannot be a hole of it (see `isHoleOf`) changes nothing. */
export function addHole(
  plan: Plan,
  { id, outline }: { readonly id: string; readonly outline: readonly Spot[] },
): Plan {
  const corners = outline.map(tidySpot);
  return editRecord(plan, id, {
    piece: (piece) => {
      if (piece.kind !== 'deck' || !isHoleOf(piece, corners)) return piece;
      const holes = piece.holes ?? [];
      if (holes.length >= MOST.holes) return piece;
      return { ...piece, holes: [...holes, { id: freeId(holes, 'hole'), outline: corners }] };
    },
  });
}
