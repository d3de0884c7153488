import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { topAt } from '../../plan/surfaces';
import { boundsOf } from '../../plan/walkWays/planar';
import type { GroundSquares } from './types';

/** More squares than this are not asked: the step grows instead. */
const MOST_SQUARES = 60_000;

const deckOver = (plan: Plan, spot: Spot): number =>
  plan.pieces.reduce((highest, piece) => {
    const top = piece.kind === 'deck' ? topAt(piece, spot) : null;
    return top === null || top <= highest ? highest : top;
  }, Number.NEGATIVE_INFINITY);

/**
 * The decks of a plan in squares of a side, metres, from the lowest x and z; the side is doubled until there are at most
 * 60,000. Null for a plan without a deck.
 */
export function groundSquares(plan: Plan, sideMetres: number): GroundSquares | null {
  const spots = plan.pieces.flatMap((piece) => (piece.kind === 'deck' ? piece.outline : []));
  if (spots.length === 0) return null;
  const [left, back, right, front] = boundsOf(spots);
  let stepMetres = sideMetres;
  const count = (metres: number): number => Math.max(1, Math.ceil(metres / stepMetres - 1e-9));
  while (count(right - left) * count(front - back) > MOST_SQUARES) stepMetres *= 2;
  const [columns, rows] = [count(right - left), count(front - back)];
  const deckMetres = new Float64Array(columns * rows);
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const top = deckOver(plan, [left + (column + 0.5) * stepMetres, back + (row + 0.5) * stepMetres]);
      deckMetres[row * columns + column] = top === Number.NEGATIVE_INFINITY ? Number.NaN : top;
    }
  }
  return { stepMetres, corner: [left, back], columns, rows, deckMetres };
}

/** The heights of the decks that squares lie on, each once, lowest first. */
export const deckHeights = ({ deckMetres }: GroundSquares): readonly number[] =>
  [...new Set(deckMetres)].filter((metres) => !Number.isNaN(metres)).sort((a, b) => a - b);

/** The middle of a square, [x, z]. */
export const middleOf = (
  { corner, columns, stepMetres }: Pick<GroundSquares, 'corner' | 'columns' | 'stepMetres'>,
  square: number,
): Spot => [
  corner[0] + ((square % columns) + 0.5) * stepMetres,
  corner[1] + (Math.floor(square / columns) + 0.5) * stepMetres,
];
