import { footprintOf } from '../../../core/form/fromAbove/footprint';
import type { TapedSet } from '../../../core/form/tape/tape';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { polygon, polyline } from '../../overhead/geometry/paths';
import { deckPath, decksOf } from '../../overhead/geometry/roof';
import { type Bounds, between, boundsOf, distance, type Spot } from '../../overhead/geometry/spots';
import { North } from '../../overhead/layers/ScaleBar';
import { sketchNames } from './sketchNames';

const WIDTH = 358;
const HEIGHT = 220;
/** Where names may stand: within the edges, and clear of the north arrow. */
const PANE = [4, 4, WIDTH - 4, HEIGHT - 4] as const;
/** Room around what is measured, pixels. */
const MARGIN = 46;
/** A sketch shows no less than this, metres. */
const LEAST_METRES = 2;

/** Whether what takes these bounds shows on the sketch, its stroke too, pixels. */
const meetsPane = (bounds: Bounds | null, stroke = 0): boolean =>
  bounds !== null &&
  bounds[0] - stroke <= WIDTH &&
  bounds[1] - stroke <= HEIGHT &&
  bounds[2] + stroke >= 0 &&
  bounds[3] + stroke >= 0;

/** Both tapes from their corners, to scale, among the set pieces that they are measured from. */
export function TapeSketch(props: {
  readonly plan: Plan;
  readonly set: TapedSet;
  readonly label: string;
  readonly lengths: LengthSystem;
}) {
  const { plan, set, label, lengths } = props;
  const foot: Spot = [set.at.x, set.at.z];
  const corners = set.tapes.map(({ from }): Spot => [from.x, from.z]);
  const [left, top, right, bottom] = boundsOf([foot, ...corners]) ?? [0, 0, 1, 1];
  const [across, deep] = [Math.max(LEAST_METRES, right - left), Math.max(LEAST_METRES, bottom - top)];
  const perMetre = Math.min((WIDTH - 2 * MARGIN) / across, (HEIGHT - 2 * MARGIN) / deep);
  const [x, z] = [(left + right) / 2, (top + bottom) / 2];
  const at = (spot: Spot): Spot => [
    WIDTH / 2 + (spot[0] - x) * perMetre,
    HEIGHT / 2 + (spot[1] - z) * perMetre,
  ];
  const decks = decksOf(plan);
  // A large roof has hundreds of pieces, and each of a performer's marks a sketch: only what meets it is drawn.
  const seen = plan.pieces.flatMap((piece) => {
    const { kind, hidden } = piece;
    if (hidden || kind === 'deck' || kind === 'skyline block' || kind === 'line' || kind === 'model')
      return [];
    const { outline, closed } = footprintOf({ section: 'piece', record: piece }, plan);
    const stroke = kind === 'parapet' || kind === 'wall' ? piece.thicknessMetres * perMetre : undefined;
    return meetsPane(boundsOf(outline.map(at)), stroke) ? [{ piece, outline, closed, stroke }] : [];
  });
  const pieces = seen.map(({ piece }) => piece);
  const to = at(foot);
  const names = sketchNames({ plan, pieces, at, pane: PANE, corners, foot });
  const words = set.tapes.map(
    ({ metres, fromLabel }) => `${formatLength(metres, lengths)} from ${fromLabel}`,
  );
  return (
    <figure className="crew-sketch">
      <svg
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={`Where ${label} stands: ${words.join(', ')}.`}
      >
        <g transform={`translate(${WIDTH / 2} ${HEIGHT / 2}) scale(${perMetre}) translate(${-x} ${-z})`}>
          {decks.map((deck) => (
            <path key={deck.id} className="sketch-deck" fillRule="evenodd" d={deckPath(deck)} />
          ))}
          {seen.map(({ piece, outline, closed, stroke }) => (
            <path
              key={piece.id}
              className={closed ? 'sketch-piece' : stroke === undefined ? 'sketch-line' : 'sketch-wall'}
              strokeWidth={stroke}
              d={closed ? polygon(outline) : polyline(outline)}
            />
          ))}
        </g>
        {corners.map((corner, k) => {
          const from = at(corner);
          const [figureX, figureY] = between(from, to, 0.5);
          const isLong = distance(from, to) > 40;
          return (
            <g key={`${corner[0]} ${corner[1]}`}>
              <path className="sketch-tape" d={polyline([from, to])} />
              <circle className="sketch-corner" cx={from[0]} cy={from[1]} r="4" />
              <text x={figureX} y={figureY + (isLong ? 5 : k === 0 ? -10 : 18)} textAnchor="middle">
                {formatLength(set.tapes[k].metres, lengths)}
              </text>
            </g>
          );
        })}
        {names.map(({ id, text, at: [left, base] }) => (
          <text key={id} className="sketch-name" x={left} y={base} textAnchor="middle">
            {text}
          </text>
        ))}
        <path className="sketch-foot" d={`M${to[0] - 8} ${to[1]}h16M${to[0]} ${to[1] - 8}v16`} />
      </svg>
      <North degrees={plan.place.northDegrees} />
    </figure>
  );
}
