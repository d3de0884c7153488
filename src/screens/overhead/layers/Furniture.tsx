import { useMemo } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { useSession } from '../../../desk/hooks';
import { powerStore } from '../../../desk/power/powerStore';
import { metreTicks } from '../geometry/dimensions';
import { decksOf, parapetsOf, roofBounds } from '../geometry/roof';
import { useShowsLevels } from '../levels/useLevels';
import type { SheetView } from '../useSheetView';
import { BlockingKeys } from './BlockingKeys';
import { North, ScaleBar } from './ScaleBar';
import { DRAWN_TO_LUX, throwingLamps } from './Throws';

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

/** Scale bar, north, legend of what is drawn, and title block: they stay while the sheet moves under them. */
export function Furniture({ plan, sheet, lengths, looksThrough }: FurnitureProps) {
  const showsLevels = useShowsLevels();
  const showsCords = useStore(
    powerStore,
    ({ shown, answer }) => shown && (answer?.report.cables.some(({ amps }) => amps > 0) ?? false),
  );
  const showsThrows = useMemo(() => throwingLamps(plan).length > 0, [plan]) && !showsLevels;
  const wide = sheet.pane.width >= WIDE_PANE;
  // What the blocking does not concern steps back on the drawing, and leaves its room to what does.
  const blocking = useSession((state) => state.sheet === 'blocking') && plan.cast.length > 0;
  return (
    <div className="furniture">
      <div className="legend">
        <ScaleBar scale={sheet.scale} lengths={lengths} />
        <North degrees={plan.place.northDegrees} />
        {wide && (
          <ul className="keys">
            {looksThrough && !blocking && (
              <li>
                <svg width="30" height="10" aria-hidden="true">
                  <path className="key-look-around" d="M0 5h30" />
                </svg>
                look-around
              </li>
            )}
            {!blocking && showsThrows && (
              <li>
                <svg width="30" height="10" aria-hidden="true">
                  <rect className="key-throw" x="0" y="1" width="30" height="8" />
                </svg>
                throws to {DRAWN_TO_LUX}
                {NBSP}lx, beam and field
              </li>
            )}
            {showsCords && (
              <li>
                <svg width="30" height="10" aria-hidden="true">
                  <path className="key-flow" d="M0 5h14" />
                  <path className="key-flow full" d="M16 5h14" />
                </svg>
                cables, thicker as they are loaded
              </li>
            )}
            <BlockingKeys plan={plan} />
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
