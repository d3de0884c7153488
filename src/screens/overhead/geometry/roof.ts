import { holesThatFit } from '../../../core/form/pieces/making/holes';
import type { Piece } from '../../../core/plan/schema/pieces';
import type { Plan } from '../../../core/plan/schema/plan';
import { polygon } from './paths';
import { segmentsOf } from './runs';
import { type Bounds, between, boundsOf, distance, nearestOnSegment, type Spot } from './spots';

export type Deck = Extract<Piece, { kind: 'deck' }>;
export type Parapet = Extract<Piece, { kind: 'parapet' }>;

export const decksOf = (plan: Plan): Deck[] => plan.pieces.filter((piece) => piece.kind === 'deck');
/** SVG path of a deck, to be filled even-odd: its outline, and the holes that its form has. */
export const deckPath = ({ outline, holes = [] }: Deck): string =>
  [
    outline,
    ...holesThatFit(
      outline,
      holes.map((hole) => hole.outline),
    ),
  ]
    .map(polygon)
    .join('');
export const parapetsOf = (plan: Plan): Parapet[] => plan.pieces.filter((piece) => piece.kind === 'parapet');

/** A piece of ground to show while a plan has no deck, metres. */
const NOTHING_YET: Bounds = [-10, -7, 10, 7];
/** Skyline blocks stand apart from the roof; they are lettered at the edge, not drawn. */
const ON_THE_SHEET = (piece: Piece): boolean => piece.kind !== 'skyline block';

/** What the sheet is measured by: the decks; without any, whatever stands on the plan; else a piece of empty ground. */
export function roofBounds(plan: Plan): Bounds {
  const decks = decksOf(plan).flatMap((deck) => deck.outline.map(([x, z]): Spot => [x, z]));
  if (decks.length > 0) return boundsOf(decks) ?? NOTHING_YET;
  const places = [
    ...plan.pieces.filter(ON_THE_SHEET).flatMap((piece) => ('at' in piece ? [piece.at] : [])),
    ...plan.gear.flatMap((gear) => ('at' in gear ? [gear.at] : [])),
  ].map(([x, , z]): Spot => [x, z]);
  const marks = plan.cast.flatMap((performer) =>
    performer.marks.map((mark): Spot => [mark.at[0], mark.at[1]]),
  );
  const around = boundsOf([...places, ...marks]);
  if (!around) return NOTHING_YET;
  const [left, top, right, bottom] = around;
  return [
    Math.min(left - 3, (left + right) / 2 - 6),
    Math.min(top - 3, (top + bottom) / 2 - 4),
    Math.max(right + 3, (left + right) / 2 + 6),
    Math.max(bottom + 3, (top + bottom) / 2 + 4),
  ];
}

/** The bounds with what stands around their edge: half the thickest parapet on each side. */
export function drawnBounds(plan: Plan): Bounds {
  const [left, top, right, bottom] = roofBounds(plan);
  const edge = boundsOf([
    [left, top],
    [right, bottom],
    ...parapetsOf(plan).flatMap((parapet) =>
      parapet.path.flatMap(([x, z]): Spot[] => {
        const half = parapet.thicknessMetres / 2;
        return [
          [x - half, z - half],
          [x + half, z + half],
        ];
      }),
    ),
  ]);
  return edge ?? [left, top, right, bottom];
}

/** The nearest edge of the roof to a place. */
export interface NearestEdge {
  readonly at: Spot;
  readonly metres: number;
  readonly of: 'the parapet' | 'the deck’s edge';
}

/** The nearest inner face of a parapet, or without parapets the nearest edge of a deck; null when there is neither. */
export function nearestEdge(plan: Plan, from: Spot): NearestEdge | null {
  const parapets = parapetsOf(plan);
  const of = parapets.length > 0 ? 'the parapet' : 'the deck’s edge';
  const segments =
    parapets.length > 0
      ? parapets.flatMap((parapet) =>
          segmentsOf(parapet.path, parapet.closed).map((leg) => ({
            ...leg,
            half: parapet.thicknessMetres / 2,
          })),
        )
      : decksOf(plan).flatMap((deck) => segmentsOf(deck.outline, true).map((leg) => ({ ...leg, half: 0 })));
  let nearest: NearestEdge | null = null;
  for (const leg of segments) {
    const middle = nearestOnSegment(from, leg.from, leg.to);
    const whole = distance(from, middle);
    const metres = Math.max(0, whole - leg.half);
    if (nearest && metres >= nearest.metres) continue;
    nearest = { metres, of, at: between(from, middle, whole > 0 ? metres / whole : 0) };
  }
  return nearest;
}
