import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber } from '../../../core/units/numbers';
import { usePlanState } from '../../../desk/hooks';
import { type DimensionDrawing, levelChain, uprightChain } from '../geometry/dimensions';
import { decksOf } from '../geometry/roof';
import type { Bounds, Spot } from '../geometry/spots';

/** How far the dimension lines stand off the drawing, pixels. */
export const OFF_DRAWING = 18;
/** A figure needs this much room between its ticks, under ten metres and from there on; pixels. */
const ROOM = { short: 24, long: 30 };

/** The deck's two dimension lines, pixels: names had better not cross them. */
export function dimensionLines(
  deck: Bounds,
  drawn: Bounds,
  at: (spot: Spot) => Spot,
): (readonly [Spot, Spot])[] {
  const [left, top] = at([deck[0], deck[1]]);
  const [right, bottom] = at([deck[2], deck[3]]);
  const [outLeft, outTop] = at([drawn[0], drawn[1]]);
  const [x, y] = [outLeft - OFF_DRAWING, outTop - OFF_DRAWING];
  return [
    [
      [left, y],
      [right, y],
    ],
    [
      [x, top],
      [x, bottom],
    ],
  ];
}

/** Where the figures of the deck's two dimensions stand, pixels: nothing else may be lettered there. */
export function dimensionFigures(deck: Bounds, drawn: Bounds, at: (spot: Spot) => Spot): Bounds[] {
  const [left, top] = at([deck[0], deck[1]]);
  const [right, bottom] = at([deck[2], deck[3]]);
  const [outLeft, outTop] = at([drawn[0], drawn[1]]);
  const [x, y] = [(left + right) / 2, outTop - OFF_DRAWING - 9];
  const [acrossX, acrossY] = [outLeft - OFF_DRAWING - 9, (top + bottom) / 2];
  return [
    [x - 24, y - 7, x + 24, y + 7],
    [acrossX - 7, acrossY - 24, acrossX + 7, acrossY + 24],
  ];
}

interface Props {
  /** The deck, metres. */
  readonly deck: Bounds;
  /** The deck with what stands around it, metres. */
  readonly drawn: Bounds;
  readonly lengths: LengthSystem;
  readonly at: (spot: Spot) => Spot;
  /** What is chosen: it is dimensioned from both sides of the deck. */
  readonly chosen: Spot | null;
}

/** Dimensions of the deck's bounding sides, where there is a deck; for what is chosen, a chain below and one at the right that place it. */
export function Dimensions({ deck, drawn, lengths, at, chosen }: Props) {
  const hasDeck = usePlanState(({ plan }) => decksOf(plan).length > 0);
  if (!hasDeck) return null;
  const [left, top] = at([deck[0], deck[1]]);
  const [right, bottom] = at([deck[2], deck[3]]);
  const [outLeft, outTop] = at([drawn[0], drawn[1]]);
  const [outRight, outBottom] = at([drawn[2], drawn[3]]);
  const [width, depth] = [deck[2] - deck[0], deck[3] - deck[1]];
  const inside =
    chosen && chosen[0] > deck[0] && chosen[0] < deck[2] && chosen[1] > deck[1] && chosen[1] < deck[3];
  const spot = chosen && inside ? at(chosen) : null;
  return (
    <g className="dimensions">
      <Chain
        drawing={levelChain([left, right], [width], outTop - OFF_DRAWING, OFF_DRAWING - 5)}
        lengths={lengths}
      />
      <Chain
        drawing={uprightChain([top, bottom], [depth], outLeft - OFF_DRAWING, OFF_DRAWING - 5)}
        lengths={lengths}
        upright
      />
      {chosen && spot && (
        <>
          <Chain
            drawing={levelChain(
              [left, spot[0], right],
              [chosen[0] - deck[0], deck[2] - chosen[0]],
              outBottom + OFF_DRAWING,
              5 - OFF_DRAWING,
            )}
            lengths={lengths}
            bare
          />
          <Chain
            drawing={uprightChain(
              [top, spot[1], bottom],
              [chosen[1] - deck[1], deck[3] - chosen[1]],
              outRight + OFF_DRAWING - 2,
              7 - OFF_DRAWING,
            )}
            lengths={lengths}
            upright
            bare
          />
        </>
      )}
    </g>
  );
}

interface ChainProps {
  readonly drawing: DimensionDrawing;
  readonly lengths: LengthSystem;
  readonly upright?: boolean;
  /** In a chain the unit is understood. */
  readonly bare?: boolean;
}

function Chain({ drawing, lengths, upright = false, bare = false }: ChainProps) {
  return (
    <>
      <path className="dim-line" d={drawing.lines} />
      <path className="dim-tick" d={drawing.ticks} />
      {drawing.figures
        .filter(({ room, metres }) => room >= (metres < 10 ? ROOM.short : ROOM.long))
        .map(({ at: [x, y], metres }) => (
          <text
            key={`${x},${y}`}
            className="dim"
            textAnchor="middle"
            transform={upright ? `translate(${x} ${y}) rotate(-90)` : `translate(${x} ${y})`}
          >
            {bare && lengths === 'm' ? formatNumber(metres, 2) : formatLength(metres, lengths)}
          </text>
        ))}
    </>
  );
}
