import { footprintOf } from '../../../core/form/fromAbove/footprint';
import type { Piece } from '../../../core/plan/schema/pieces';
import type { Plan } from '../../../core/plan/schema/plan';
import { placeLabels } from '../../overhead/geometry/labels';
import { type Bounds, between, boundsOf, distance, type Spot } from '../../overhead/geometry/spots';
import { letteringPixels, textWidth } from '../../overhead/measureText';
import { nameInText } from '../../overhead/words';

/** A name on a sketch, by the middle of its baseline, pixels. */
export interface SketchName {
  readonly id: string;
  readonly text: string;
  readonly at: Spot;
}

/** What is large enough to find one's way by, whether a tape begins there or not. */
const LANDMARKS: ReadonlySet<Piece['kind']> = new Set(['stair house', 'shed', 'tank', 'chimney', 'riser']);
/** So near to its outline a tape begins at a set piece, metres. */
const TOUCHES = 0.15;
/** Half the sides of what the figure of a tape takes, pixels. */
const FIGURE: Spot = [28, 11];

/** Names of the set pieces on a sketch: those that a tape begins at first, then what room there is for. */
export function sketchNames(sketch: {
  readonly plan: Plan;
  readonly pieces: readonly Piece[];
  /** From metres on the roof to pixels. */
  readonly at: (spot: Spot) => Spot;
  readonly pane: Bounds;
  /** Where the tapes begin, metres. */
  readonly corners: readonly Spot[];
  /** What is measured, metres. */
  readonly foot: Spot;
}): readonly SketchName[] {
  const { plan, pieces, at, pane, corners, foot } = sketch;
  const to = at(foot);
  const wishes = pieces.flatMap((piece) => {
    const outline = footprintOf({ section: 'piece', record: piece }, plan).outline;
    const begins = corners.find((corner) => outline.some((spot) => distance(spot, corner) < TOUCHES));
    const isLong = piece.kind === 'parapet' || piece.kind === 'wall' || piece.kind === 'fence';
    if (!begins && !LANDMARKS.has(piece.kind)) return [];
    // Of a wall only the end that is measured from is named.
    const around = within(boundsOf((isLong && begins ? [begins] : outline).map(at)), pane);
    if (!around) return [];
    const text = nameInText(piece.label);
    return [
      {
        id: piece.id,
        text,
        width: textWidth(text, 'mark', true) + 6,
        height: letteringPixels('mark', true) + 4,
        around,
        priority: begins ? 2 : 1,
        inside: !isLong,
        worth: begins ? 3 : 0.5,
      },
    ];
  });
  const tapes = corners.map(at);
  return placeLabels(
    wishes,
    {
      boxes: tapes.map(([x, y]) => ({ owner: '', bounds: [x - 6, y - 6, x + 6, y + 6], cost: 3 })),
      lines: tapes.map((from) => ({ from, to, cost: 2 })),
      blocked: [
        ...tapes.map((from): Bounds => {
          const [x, y] = between(from, to, 0.5);
          return [x - FIGURE[0], y - FIGURE[1], x + FIGURE[0], y + FIGURE[1]];
        }),
        [to[0] - 10, to[1] - 10, to[0] + 10, to[1] + 10],
      ],
    },
    pane,
  ).map(({ id, text, bounds: [left, , right, bottom] }) => ({
    id,
    text,
    at: [(left + right) / 2, bottom - 4],
  }));
}

/** The part of a rectangle that lies in another, or null where none does. */
function within(bounds: Bounds | null, [left, top, right, bottom]: Bounds): Bounds | null {
  if (!bounds) return null;
  const part: Bounds = [
    Math.max(left, bounds[0]),
    Math.max(top, bounds[1]),
    Math.min(right, bounds[2]),
    Math.min(bottom, bounds[3]),
  ];
  return part[0] <= part[2] && part[1] <= part[3] ? part : null;
}
