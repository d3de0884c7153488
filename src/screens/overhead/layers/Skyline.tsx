import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import type { Bounds, Spot } from '../geometry/spots';
import { textWidth } from '../measureText';

export interface SkylineLabel {
  readonly text: string;
  readonly bounds: Bounds;
}

/** Where the skyline lies, said at the edge of the sheet towards most of its blocks; null when there is none. */
export function skylineLabel(
  plan: Plan,
  drawn: Bounds,
  drawing: Bounds,
  pane: Bounds,
  touch: boolean,
  lengths: LengthSystem,
): SkylineLabel | null {
  const blocks = plan.pieces.flatMap((piece) =>
    piece.kind === 'skyline block' ? [[piece.at[0], piece.at[2]] as Spot] : [],
  );
  if (blocks.length === 0) return null;
  const away = blocks.map(([x, z]) =>
    Math.hypot(outside(x, drawn[0], drawn[2]), outside(z, drawn[1], drawn[3])),
  );
  const nearest = Math.min(...away);
  const round = nearest >= 10 ? Math.floor(nearest / 10) * 10 : Math.floor(nearest);
  const text = `skyline, ${formatLength(round, lengths, { decimals: 0 })} and beyond`;
  const above = blocks.filter(([, z]) => z < drawn[1]).length;
  const below = blocks.filter(([, z]) => z > drawn[3]).length;
  const width = textWidth(text, 'mark', touch) + 4;
  const middle = (drawing[0] + drawing[2]) / 2;
  const left = Math.min(pane[2] - width - 8, Math.max(pane[0] + 8, middle - width / 2));
  const top = above >= below ? drawing[1] - 18 : drawing[3] + 4;
  if (top < pane[1] || top + 14 > pane[3]) return null;
  return { text, bounds: [left, top, left + width, top + 14] };
}

/** How far a coordinate lies outside a range. */
const outside = (value: number, low: number, high: number): number => Math.max(0, low - value, value - high);

export function Skyline({ label }: { readonly label: SkylineLabel }) {
  const [left, , right, bottom] = label.bounds;
  return (
    <text className="beyond" x={(left + right) / 2} y={bottom - 3} textAnchor="middle">
      {label.text}
    </text>
  );
}
