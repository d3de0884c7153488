import type { Plan } from '../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../core/units/lengths';
import type { Bounds, Spot } from './geometry/spots';
import type { LetteredWish } from './letteredWish';
import { letteringPixels, textWidth } from './measureText';

/** The id under which the skyline's words are placed. */
export const SKYLINE = 'skyline';

interface Options {
  readonly plan: Plan;
  /** The deck with what stands around it, metres. */
  readonly drawn: Bounds;
  /** The same with its dimensions, in pixels of the pane. */
  readonly drawing: Bounds;
  readonly lengths: LengthSystem;
  readonly touch: boolean;
}

/** Where the skyline lies, to be said outside the drawing towards most of its blocks; null when there is none. */
export function skylineWish({ plan, drawn, drawing, lengths, touch }: Options): LetteredWish | null {
  const blocks = plan.pieces.flatMap((piece) =>
    piece.kind === 'skyline block' ? [[piece.at[0], piece.at[2]] as Spot] : [],
  );
  if (blocks.length === 0) return null;
  const nearest = Math.min(
    ...blocks.map(([x, z]) => Math.hypot(outside(x, drawn[0], drawn[2]), outside(z, drawn[1], drawn[3]))),
  );
  const round = nearest >= 10 ? Math.floor(nearest / 10) * 10 : Math.floor(nearest);
  const text = `skyline, ${formatLength(round, lengths, { decimals: 0 })} and beyond`;
  const [width, height] = [textWidth(text, 'mark', touch) + 4, letteringPixels('mark', touch) + 2];
  const isAbove = blocks.filter(([, z]) => z < drawn[1]).length * 2 >= blocks.length;
  const [left, top, right, bottom] = drawing;
  const rows = [6, 24, 42, 60].map((off) => (isAbove ? top - off - height : bottom + off));
  const columns = [0.5, 0.35, 0.65, 0.2, 0.8].map((share) => left + (right - left) * share - width / 2);
  return {
    id: SKYLINE,
    text,
    width,
    height,
    around: drawing,
    places: rows.flatMap((y) => columns.map((x): Bounds => [x, y, x + width, y + height])),
    priority: 10,
    inside: false,
    worth: 1,
    style: 'mark',
    quiet: true,
    fault: false,
  };
}

/** How far a coordinate lies outside a range. */
const outside = (value: number, low: number, high: number): number => Math.max(0, low - value, value - high);
