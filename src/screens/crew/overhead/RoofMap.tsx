import { type KeyboardEvent, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { TapedSet } from '../../../core/form/tape/tape';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import type { Department } from '../../../desk/crew/crewStore';
import { overheadStore } from '../../../desk/crew/overhead/overheadStore';
import { polygonWithin, segmentWithin } from '../../overhead/geometry/clipping';
import { hitAt } from '../../overhead/geometry/hits';
import { polygon, polyline } from '../../overhead/geometry/paths';
import type { Pane } from '../../overhead/geometry/sheet';
import { type Bounds, between, distance, type Spot } from '../../overhead/geometry/spots';
import { frameOnPlan } from '../../overhead/layers/frameOnPlan';
import { Inks } from '../../overhead/symbols/Inks';
import { RoofPlan } from './RoofPlan';
import { roofHits } from './roofHits';
import { roofNames } from './roofNames';
import { type Lying, moved, toPane, toScale } from './roofView';
import { useRoofHand } from './useRoofHand';
import { useWheel } from './useWheel';

/** Half the side of the area by which a thing can be tapped, pixels. */
const REACH = 24;
const RING = 20;
const ZOOM_STEP = 1.25;
const PAN_PIXELS = 48;

interface Props {
  readonly plan: Plan;
  readonly title: string;
  readonly pane: Pane;
  readonly lying: Lying;
  readonly move: (to: Lying) => void;
  readonly fitAll: () => void;
  readonly seconds: number;
  readonly setupId: string | null;
  readonly department: Department;
  readonly lengths: LengthSystem;
  /** The two tapes of what is chosen. */
  readonly sets: readonly TapedSet[];
  /** Where what is chosen is, metres; null for nothing. */
  readonly middle: Spot | null;
  readonly tap: (id: string | null) => void;
}

/** The roof to scale under a finger. */
export function RoofMap(props: Props) {
  const { plan, title, pane, lying, move, fitAll, seconds, setupId, department, lengths, sets } = props;
  const { middle, tap } = props;
  const hidden = useStore(overheadStore, (state) => state.hidden);
  const chosenId = useStore(overheadStore, (state) => state.chosenId);
  const at = useMemo(
    () =>
      (spot: Spot): Spot =>
        toPane(lying, pane, spot),
    [lying, pane],
  );
  const bounds = useMemo((): Bounds => [0, 0, pane.width, pane.height], [pane]);
  const hand = useRoofHand({
    lying,
    pane,
    move,
    tap: (spot) => {
      const hit = hitAt(roofHits(plan, seconds, hidden, at), spot, REACH);
      tap(hit?.target ?? null);
      return hit !== null;
    },
  });
  const frame = useMemo(() => {
    const setup = plan.setups.find(({ id }) => id === setupId);
    return setup ? frameOnPlan(plan, setup, seconds) : null;
  }, [plan, setupId, seconds]);
  const [svg, setSvg] = useState<SVGSVGElement | null>(null);
  const isTurning = useWheel(svg, (spot, factor) => move(moved(lying, pane, spot, spot, factor)));
  // While a finger or a wheel moves the roof its names go along where they were; they are placed anew once it rests.
  const rested = useRef(lying);
  if (!hand.isMoving && !isTurning) rested.current = lying;
  const still = rested.current;
  const names = useMemo(() => {
    const place = (spot: Spot): Spot => toPane(still, pane, spot);
    const lines = frame
      ? frame.edges.flatMap((edge) => segmentWithin(place(frame.apex), place(edge), bounds) ?? [])
      : [];
    const pairs = lines.length === 4 ? [[lines[0], lines[1]] as const, [lines[2], lines[3]] as const] : [];
    const tapes = sets.flatMap(({ at: foot, tapes: both }) =>
      both.map(({ from }) => [place([from.x, from.z]), place([foot.x, foot.z])] as const),
    );
    return roofNames({
      plan,
      seconds,
      setupId,
      chosenId,
      hidden,
      at: place,
      pane: bounds,
      lines: [...pairs, ...tapes],
      blocked: tapes.map(([from, to]) => figureBounds(from, to)),
    });
  }, [still, pane, bounds, frame, sets, plan, seconds, setupId, chosenId, hidden]);

  const onKeyDown = (event: KeyboardEvent<SVGSVGElement>): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const centre: Spot = [pane.width / 2, pane.height / 2];
    const pan = (x: number, y: number): void =>
      move(moved(lying, pane, centre, [centre[0] + x, centre[1] + y], 1));
    if (event.key === '+' || event.key === '=') move(moved(lying, pane, centre, centre, ZOOM_STEP));
    else if (event.key === '-' || event.key === '\u2212')
      move(moved(lying, pane, centre, centre, 1 / ZOOM_STEP));
    else if (event.key === '0') fitAll();
    else if (event.key === 'ArrowLeft') pan(PAN_PIXELS, 0);
    else if (event.key === 'ArrowRight') pan(-PAN_PIXELS, 0);
    else if (event.key === 'ArrowUp') pan(0, PAN_PIXELS);
    else if (event.key === 'ArrowDown') pan(0, -PAN_PIXELS);
    else return;
    event.preventDefault();
  };

  return (
    <svg
      ref={setSvg}
      className={`sheet-drawing crew-drawing${hand.isMoving ? ' dragging' : ''}`}
      width={pane.width}
      height={pane.height}
      aria-label={`The roof of ${title} from above, to scale. Plus and minus zoom, the arrows move it.`}
      {...AS_GROUP}
      onKeyDown={onKeyDown}
      {...hand.on}
    >
      <Inks perMetre={lying.perMetre} />
      <g className="to-scale" transform={toScale(lying, pane)}>
        <RoofPlan plan={plan} seconds={seconds} setupId={setupId} hidden={hidden} department={department} />
      </g>
      {frame && <Pyramid frame={frame} at={at} bounds={bounds} />}
      {sets.map((set) => (
        <Tapes key={set.key} set={set} at={at} lengths={lengths} />
      ))}
      {middle && <circle className="chosen-ring" cx={at(middle)[0]} cy={at(middle)[1]} r={RING} />}
      <g className="lettering">
        {names.map(({ id, text, style, anchor, off }) => {
          const [x, y] = at(anchor);
          return (
            <g key={id} className={`name ${style}`}>
              <text x={x + off[0]} y={y + off[1]} textAnchor="middle">
                {text}
              </text>
            </g>
          );
        })}
      </g>
    </svg>
  );
}

/** A drawing cannot hold a fieldset: it is a group by its role, and takes the focus for the keys that move it. */
const AS_GROUP = { role: 'group', tabIndex: 0 } as const;

/** What the chosen setup's frame holds, to the edge of the pane; its axis to the focus. */
function Pyramid(props: {
  readonly frame: ReturnType<typeof frameOnPlan>;
  readonly at: (spot: Spot) => Spot;
  readonly bounds: Bounds;
}) {
  const { frame, at, bounds } = props;
  const line = (to: Spot): string => {
    const part = segmentWithin(at(frame.apex), at(to), bounds);
    return part ? polyline(part) : '';
  };
  const [left, right] = frame.edges;
  return (
    <g className="pyramid">
      <path
        className="pyramid-fill"
        d={polygon(polygonWithin([at(frame.apex), at(left), at(right)], bounds))}
      />
      <path className="pyramid-edge" d={line(left) + line(right)} />
      <path className="look-around" d={frame.lookAround.map(line).join('')} />
      <path className="axis" d={line(frame.focus)} />
    </g>
  );
}

/** Where the figure of a tape stands: a little nearer to the thing than to the corner. */
const figureAt = (from: Spot, to: Spot): Spot => between(from, to, 0.5);

function figureBounds(from: Spot, to: Spot): Bounds {
  const [x, y] = figureAt(from, to);
  return [x - 24, y - 9, x + 24, y + 9];
}

/** Two tapes from their corners, each with its length. */
function Tapes(props: {
  readonly set: TapedSet;
  readonly at: (spot: Spot) => Spot;
  readonly lengths: LengthSystem;
}) {
  const { set, at, lengths } = props;
  const to = at([set.at.x, set.at.z]);
  return (
    <g className="crew-tapes">
      {set.tapes.map(({ from, metres }) => {
        const corner = at([from.x, from.z]);
        const [x, y] = figureAt(corner, to);
        return (
          <g key={`${from.x} ${from.z}`}>
            <path className="dim-line" d={polyline([corner, to])} />
            <circle className="tape-corner" cx={corner[0]} cy={corner[1]} r="4" />
            {distance(corner, to) > 50 && (
              <text className="tape-figure" x={x} y={y + 4} textAnchor="middle">
                {formatLength(metres, lengths)}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
