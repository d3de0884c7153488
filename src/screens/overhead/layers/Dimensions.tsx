import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { type DimensionDrawing, levelChain, uprightChain } from '../geometry/dimensions';
import type { Bounds, Spot } from '../geometry/spots';

/** How far the dimension lines stand off the drawing, pixels. */
export const OFF_DRAWING = 18;
/** A figure needs this much room between its ticks. */
const FIGURE_ROOM = 34;

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

/** Dimensions of the deck's bounding sides; for what is chosen, a chain below and one at the right that place it. */
export function Dimensions({ deck, drawn, lengths, at, chosen }: Props) {
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
}

function Chain({ drawing, lengths, upright = false }: ChainProps) {
  return (
    <>
      <path className="dim-line" d={drawing.lines} />
      <path className="dim-tick" d={drawing.ticks} />
      {drawing.figures
        .filter(({ room }) => room >= FIGURE_ROOM)
        .map(({ at: [x, y], metres }) => (
          <text
            key={`${x},${y}`}
            className="dim"
            textAnchor="middle"
            transform={upright ? `translate(${x} ${y}) rotate(-90)` : `translate(${x} ${y})`}
          >
            {formatLength(metres, lengths)}
          </text>
        ))}
    </>
  );
}
