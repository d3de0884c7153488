import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { postsAlong, type StrokeFigures } from '../../../desk/tools/figures';
import { openedRun, openingAt } from '../../../desk/tools/openings';
import type { Stroke, Tool } from '../../../desk/tools/toolStore';
import { useTool } from '../../../desk/tools/useTool';
import { grown } from '../geometry/notes';
import { polyline } from '../geometry/paths';
import { type Bounds, distance, type Spot } from '../geometry/spots';
import { textWidth } from '../measureText';
import type { SheetView } from '../useSheetView';
import { besideHand, buttonsBy, CROSSHAIR, legDrawing } from './layout';
import { baysWords, handLines } from './words';

/** Half of a corner's square. */
const CORNER = 3;
/** How far a guide runs on past the hand. */
const GUIDE_ON = 190;

export interface HandProps {
  readonly plan: Plan;
  readonly tool: Tool;
  readonly stroke: Stroke;
  readonly figures: StrokeFigures;
  readonly sheet: SheetView;
  readonly lengths: LengthSystem;
  readonly pane: Bounds;
  /** How far apart the posts of a fence stand at most, metres; null for anything else. */
  readonly postEveryMetres: number | null;
  /** Whether its legs are drawn as a line: nothing else shows where they run. */
  readonly bare: boolean;
}

/** The corners that are pressed, the leg that the hand draws with its length, the crosshair and what it says. */
export function Hand(props: HandProps) {
  const { plan, stroke, figures, sheet, lengths, pane, postEveryMetres, bare } = props;
  const typing = useTool((state) => state.entry !== null);
  const { at } = sheet;
  const { next } = stroke;
  const corners = stroke.corners.map(at);
  const hand = next ? at(next) : null;
  const leg = legOf(props);
  const lines = handLines(plan, stroke, figures, lengths);
  // What is typed takes more room than what is read.
  const chip = leg && grown(leg.drawing.chip, typing ? 24 : 0);
  const last = corners.at(-1);
  const taken = [
    ...(chip ? [chip] : []),
    ...(leg?.asideBounds ? [leg.asideBounds] : []),
    ...(last && matchMedia('(pointer: coarse)').matches ? [buttonsBy(last, pane)] : []),
  ];
  const width = Math.max(0, ...lines.map((line) => textWidth(line, 'mark', false)));
  const words =
    hand && lines.length > 0 ? besideHand(hand, { width, lines: lines.length }, taken, pane) : null;
  const path = hand ? [...corners, hand] : corners;
  const posts =
    postEveryMetres === null
      ? corners
      : postsAlong(next ? [...stroke.corners, next] : stroke.corners, postEveryMetres).map(at);
  return (
    <g className="drafting">
      {hand && <Guides stroke={stroke} at={at} hand={hand} />}
      {bare && path.length > 1 && <path className="draft-line" d={polyline(path)} />}
      {posts.map(([x, y]) => (
        <rect
          key={`${x},${y}`}
          className="draft-post"
          x={x - CORNER}
          y={y - CORNER}
          width={2 * CORNER}
          height={2 * CORNER}
        />
      ))}
      {leg && (
        <g className="draft-dimension">
          <path className="dim-line" d={leg.drawing.lines} />
          <path className="dim-tick" d={leg.drawing.ticks} />
          <Chip bounds={leg.drawing.chip} words={leg.length} />
          {leg.aside !== '' && (
            <text textAnchor="middle" x={leg.drawing.aside[0]} y={leg.drawing.aside[1] + 4}>
              {leg.aside}
            </text>
          )}
        </g>
      )}
      {hand && <Crosshair at={hand} />}
      {words && (
        <text className="draft-words">
          {lines.map((line, index) => (
            <tspan key={line} x={words[0]} y={words[1] + 12 + 15 * index}>
              {line}
            </tspan>
          ))}
        </text>
      )}
    </g>
  );
}

function Chip({
  bounds: [left, top, right, bottom],
  words,
}: {
  readonly bounds: Bounds;
  readonly words: string;
}) {
  return (
    <>
      <rect className="chip-box" x={left} y={top} width={right - left} height={bottom - top} />
      <text className="chip-text" x={(left + right) / 2} y={top + 15} textAnchor="middle">
        {words}
      </text>
    </>
  );
}

function Crosshair({ at: [x, y] }: { readonly at: Spot }) {
  const arms = polyline([
    [x, y - CROSSHAIR],
    [x, y + CROSSHAIR],
  ]);
  const across = polyline([
    [x - CROSSHAIR, y],
    [x + CROSSHAIR, y],
  ]);
  return (
    <g className="crosshair">
      <circle cx={x} cy={y} r="10" />
      <path d={arms + across} />
    </g>
  );
}

/** Dashed lines from what the hand is in line with, through the hand and some way on. */
function Guides({
  stroke,
  at,
  hand,
}: {
  readonly stroke: Stroke;
  readonly at: (spot: Spot) => Spot;
  readonly hand: Spot;
}) {
  const last = stroke.corners.at(-1);
  return (
    <>
      {stroke.why.map(({ key, guide, kind }) => {
        if (!guide || kind === 'edge') return null;
        const from = at(guide[0]);
        const length = distance(from, hand);
        if (length < 1) return null;
        const on: Spot = [
          hand[0] + ((hand[0] - from[0]) / length) * GUIDE_ON,
          hand[1] + ((hand[1] - from[1]) / length) * GUIDE_ON,
        ];
        // Along the leg itself only what lies beyond the hand is news.
        const isLeg = last !== undefined && distance(at(last), from) < 1;
        const begins = isLeg ? hand : from;
        return (
          <path
            key={key}
            className="draft-guide"
            d={polyline([begins, kind === 'same distance' ? hand : on])}
          />
        );
      })}
    </>
  );
}

/** The leg that is dimensioned: that of a stroke, or the width of an opening. */
export function legOf(props: HandProps) {
  const { plan, tool, stroke, figures, sheet, lengths, pane } = props;
  const ends = endsOf(plan, tool, stroke);
  if (!ends) return null;
  const metres = tool.type === 'opening' ? ends.metres : figures.legMetres;
  if (metres === null || metres <= 0) return null;
  const length = formatLength(metres, lengths);
  const aside = baysWords(figures, lengths);
  const widths = { chip: textWidth(length, 'strong', false) + 2, aside: textWidth(aside, 'mark', false) };
  const drawing = legDrawing(sheet.at(ends.from), sheet.at(ends.to), widths, pane);
  const half = widths.aside / 2;
  const [x, y] = drawing.aside;
  const asideBounds: Bounds | null = aside === '' ? null : [x - half, y - 8, x + half, y + 8];
  return { drawing, length, aside, asideBounds };
}

function endsOf(
  plan: Plan,
  tool: Tool,
  stroke: Stroke,
): { from: Spot; to: Spot; metres: number | null } | null {
  const { next, corners, held, typedLengthMetres } = stroke;
  if (tool.type === 'opening') {
    const run = openedRun(plan, tool.itemId);
    const opening = run && next && openingAt(run, next, { from: held, widthMetres: typedLengthMetres });
    return opening ? { from: opening.jambs[0], to: opening.jambs[1], metres: opening.widthMetres } : null;
  }
  const last = corners.at(-1);
  return last && next ? { from: last, to: next, metres: null } : null;
}
