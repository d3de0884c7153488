import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';

/** The least rectangle around the decks, [left, top, right, bottom], metres; null without any. */
export function deckBounds({ pieces }: Plan): readonly [number, number, number, number] | null {
  const corners = pieces.flatMap((piece) => (piece.kind === 'deck' ? piece.outline : []));
  if (corners.length === 0) return null;
  const [xs, zs] = [corners.map(([x]) => x), corners.map(([, z]) => z)];
  return [Math.min(...xs), Math.min(...zs), Math.max(...xs), Math.max(...zs)];
}

/** The middle of the roof, to the nearest 10 cm: where things go that nobody has placed. */
export function roofMiddle(plan: Plan): Spot {
  const bounds = deckBounds(plan);
  if (!bounds) return [0, 0];
  const [left, top, right, bottom] = bounds;
  return [Math.round((left + right) * 5) / 10, Math.round((top + bottom) * 5) / 10];
}
