import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { metreTicks } from '../geometry/dimensions';
import { decksOf, parapetsOf, roofBounds } from '../geometry/roof';
import { barMetres, pixelsPerMetre } from '../geometry/sheet';
import type { SheetView } from '../useSheetView';
import { DRAWN_TO_LUX } from './Throws';

/** Width of a pane from which on the title block has room. */
export const WIDE_PANE = 520;

/** Ticks of metres along two edges of the pane. */
export function EdgeTicks({
  sheet,
  origin,
}: {
  readonly sheet: SheetView;
  readonly origin: readonly [number, number];
}) {
  const [left, top] = sheet.at(origin);
  const across = metreTicks(left, sheet.perMetre, sheet.pane.width);
  const down = metreTicks(top, sheet.perMetre, sheet.pane.height);
  return (
    <path
      className="edge-ticks"
      d={
        across.map(({ at, long }) => `M${at} 0v${long ? 7 : 4}`).join('') +
        down.map(({ at, long }) => `M0 ${at}h${long ? 7 : 4}`).join('')
      }
    />
  );
}

interface FurnitureProps {
  readonly plan: Plan;
  readonly sheet: SheetView;
  readonly lengths: LengthSystem;
  readonly looksThrough: boolean;
}

/** Scale bar, north, legend and title block: they stay while the sheet moves under them. */
export function Furniture({ plan, sheet, lengths, looksThrough }: FurnitureProps) {
  const wide = sheet.pane.width >= WIDE_PANE;
  return (
    <div className="furniture">
      <div className="legend">
        <ScaleBar scale={sheet.scale} lengths={lengths} />
        <North degrees={plan.place.northDegrees} />
        {wide && (
          <ul className="keys">
            {looksThrough && (
              <li>
                <svg width="30" height="10" aria-hidden="true">
                  <path className="key-look-around" d="M0 5h30" />
                </svg>
                look-around
              </li>
            )}
            <li>
              <svg width="30" height="10" aria-hidden="true">
                <rect className="key-throw" x="0" y="1" width="30" height="8" />
              </svg>
              throws to {DRAWN_TO_LUX}
              {NBSP}lx, beam and field
            </li>
          </ul>
        )}
        {!wide && <span className="scale-alone">{`1${NBSP}:${NBSP}${sheet.scale}`}</span>}
      </div>
      {wide && <TitleBlock plan={plan} scale={sheet.scale} lengths={lengths} />}
    </div>
  );
}

function TitleBlock({
  plan,
  scale,
  lengths,
}: {
  readonly plan: Plan;
  readonly scale: number;
  readonly lengths: LengthSystem;
}) {
  const [left, top, right, bottom] = roofBounds(plan);
  const hasDeck = decksOf(plan).length > 0;
  return (
    <dl className="titleblock">
      <div>
        <dt className="vh">title</dt> <dd>{plan.title}, the roof</dd>
      </div>
      <div>
        <dt>deck</dt> <dd>{hasDeck ? sizes(right - left, bottom - top, lengths) : 'none yet'}</dd>
      </div>
      <div>
        <dt>parapet</dt> <dd>{parapetHeight(plan, lengths)}</dd>
      </div>
      <div>
        <dt>scale</dt> <dd>{`1${NBSP}:${NBSP}${scale}`}</dd>
      </div>
    </dl>
  );
}

/** Width × depth, the unit said once where it is one. */
function sizes(width: number, depth: number, lengths: LengthSystem): string {
  return lengths === 'm'
    ? `${formatNumber(width, 2)}${NBSP}×${NBSP}${formatLength(depth, lengths)}`
    : `${formatLength(width, lengths)}${NBSP}×${NBSP}${formatLength(depth, lengths)}`;
}

function parapetHeight(plan: Plan, lengths: LengthSystem): string {
  const heights = parapetsOf(plan).map(({ heightMetres }) => heightMetres);
  if (heights.length === 0) return 'none';
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  return low === high
    ? formatLength(low, lengths)
    : `${formatLength(low, lengths)} to ${formatLength(high, lengths)}`;
}

/** Width that the bar may take, pixels. */
const BAR_ROOM = 150;
const PARTS = 5;
const METRES_PER_FOOT = 0.3048;

function ScaleBar({ scale, lengths }: { readonly scale: number; readonly lengths: LengthSystem }) {
  // In feet a round number of feet: the bar of a scale in feet, read as metres.
  const metres =
    lengths === 'm'
      ? barMetres(scale, BAR_ROOM)
      : barMetres(scale / METRES_PER_FOOT, BAR_ROOM) * METRES_PER_FOOT;
  const length = metres * pixelsPerMetre(scale);
  const part = length / PARTS;
  const words =
    lengths === 'm' ? `${metres}${NBSP}m` : `${Math.round((metres / METRES_PER_FOOT) * 10) / 10}${NBSP}ft`;
  return (
    <svg className="scale-bar" width={length + 28} height="24" role="img" aria-label={`scale bar, ${words}`}>
      {Array.from({ length: PARTS }, (_, index) => index).map((index) => (
        <rect
          key={index}
          className={index % 2 === 0 ? 'filled' : 'empty'}
          x={0.5 + index * part}
          y="16.5"
          width={part}
          height="5"
        />
      ))}
      <text x="0" y="11">
        0
      </text>
      <text x={length + 0.5} y="11" textAnchor="middle">
        {words}
      </text>
    </svg>
  );
}

function North({ degrees }: { readonly degrees: number }) {
  return (
    <svg className="north" width="30" height="34" role="img" aria-label="north">
      <g transform={`rotate(${degrees} 15 17)`}>
        <circle cx="15" cy="17" r="8" />
        <path d="M15 3v28" />
        <path className="point" d="M15 2l4 15h-4z" />
      </g>
    </svg>
  );
}
