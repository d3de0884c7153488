import { type KeyboardEvent, type MouseEvent, type PointerEvent, useMemo } from 'react';
import { useStore } from 'zustand';
import type { Caution } from '../../../core/cautions/types';
import { headingWay } from '../../../core/plan/runs';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import { cautionsStore, notedKeys } from '../../../desk/cautions/cautionsStore';
import { openCaution } from '../../../desk/cautions/opening';
import { AS_BUTTON } from '../asButton';
import { slantDimension } from '../geometry/dimensions';
import { polyline } from '../geometry/paths';
import type { Bounds, Spot } from '../geometry/spots';
import { textWidth } from '../measureText';
import { REACH } from '../pointers/useSheetPointers';
import type { SheetView } from '../useSheetView';
import { type CautionMark, type DrawnCaution, drawnCaution, marksOf } from './marks';
import { type SignSpot, signSpots } from './signSpots';
import { WaysOutLayer } from './WaysOutLayer';
import './cautions.css';

/** Marks so near to each other are one, pixels. */
const SAME_PLACE = 20;
/** Radius of the ring around what a caution is about, pixels. */
const RING = 17;
/** The arrow of the wind: how long, how far off the ring it ends, and half of its head, pixels. */
const ARROW = { long: 46, off: 4, head: 6 } as const;
/** A sign, its corners about its middle, pixels. */
const SIGN = 'M0-7.5 7.5 5.5H-7.5Z';
/** That of several cautions holds their number, which beside it would lie over names. */
const SIGN_OF_SEVERAL = 'M0-11 11 7.5H-11Z';
/** Half of the room that they take, pixels. */
const HALF = { one: 8.5, several: 12 } as const;
/** The ground of words under a ring: how far off it, clear of the grip that raises, how high, and what it has beside them, pixels. */
const PLATE = { off: 38, high: 20, aside: 6 } as const;

interface Props {
  readonly plan: Plan;
  readonly sheet: SheetView;
  readonly svg: SVGSVGElement | null;
  readonly lengths: LengthSystem;
  readonly touch: boolean;
  /** While a tool is in the hand, presses go through to the roof. */
  readonly through: boolean;
  /** Where words lie that no sign should lie over, and the pane, pixels. */
  readonly names: readonly Bounds[];
  readonly pane: Bounds;
}

/** The cautions on the roof while somebody looks at them: a sign for each place, the opened one in full, and the ways out. */
export function CautionLayer(props: Props) {
  const { plan, sheet, svg, lengths, touch, through, names, pane } = props;
  const shown = useStore(cautionsStore, (state) => state.shown);
  const found = useStore(cautionsStore, (state) => state.found);
  const openKey = useStore(cautionsStore, (state) => state.openKey);
  const samePlace = SAME_PLACE / sheet.perMetre;
  const marks = useMemo(
    () => (shown && found ? marksOf(found, notedKeys(plan), samePlace) : []),
    [shown, found, plan, samePlace],
  );
  const spots = useMemo(
    () =>
      signSpots(
        marks.map(({ at, keys }) => ({ at: sheet.at(at), half: HALF[keys.length > 1 ? 'several' : 'one'] })),
        names,
        pane,
      ),
    [marks, sheet, names, pane],
  );
  if (!shown) return null;
  const open = found?.find(({ id }) => id === openKey) ?? null;
  return (
    <g className={through ? 'cautions through' : 'cautions'}>
      <WaysOutLayer plan={plan} sheet={sheet} svg={svg} touch={touch} />
      {open ? <OpenCaution plan={plan} caution={open} sheet={sheet} lengths={lengths} /> : null}
      {marks.map((mark, index) => (
        <Sign
          key={mark.keys[0]}
          mark={mark}
          at={sheet.at(mark.at)}
          stands={spots[index]}
          openKey={openKey}
          touch={touch}
        />
      ))}
    </g>
  );
}

/** What opens by a press, by Enter and by Space. */
const pressed = (open: () => void) => ({
  onPointerDown: (event: PointerEvent) => event.stopPropagation(),
  onClick: (event: MouseEvent) => {
    event.stopPropagation();
    open();
  },
  onKeyDown: (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    event.stopPropagation();
    open();
  },
});

/** The sign of one place. Pressed again it opens the next caution there. */
function Sign(props: {
  readonly mark: CautionMark;
  /** What it is about, and where it stands. */
  readonly at: Spot;
  readonly stands: SignSpot;
  readonly openKey: string | null;
  readonly touch: boolean;
}) {
  const { mark, at, stands, openKey, touch } = props;
  const { spot, isFar } = stands;
  const { keys, standing, noted, spoken } = mark;
  const place = openKey === null ? -1 : keys.indexOf(openKey);
  const open = (): void => openCaution(keys[(place + 1) % keys.length]);
  return (
    <g
      className={`caution-sign ${noted ? 'noted' : standing}${place >= 0 ? ' open' : ''}`}
      transform={`translate(${spot[0]} ${spot[1]})`}
      aria-label={place >= 0 ? `${spoken} Opened.` : spoken}
      {...AS_BUTTON}
      {...pressed(open)}
    >
      {isFar ? <path className="leader" d={`M0 0L${at[0] - spot[0]} ${at[1] - spot[1]}`} /> : null}
      <circle className="reach" r={touch ? REACH.touch : REACH.mouse} />
      <path className="sign" d={keys.length > 1 ? SIGN_OF_SEVERAL : SIGN} />
      {keys.length > 1 ? (
        <text y={5.5} textAnchor="middle">
          {keys.length}
        </text>
      ) : null}
    </g>
  );
}

/** The wind as an arrow that ends at a ring. */
function arrow([x, y]: Spot, headingDegrees: number): string {
  const [east, south] = headingWay(headingDegrees);
  const along = (from: number, side: number): Spot => [
    x - east * from - south * side,
    y - south * from + east * side,
  ];
  const tip = RING + ARROW.off;
  const back = tip + ARROW.head * 1.6;
  return (
    polyline([along(tip + ARROW.long, 0), along(tip, 0)]) +
    polyline([along(back, ARROW.head), along(tip, 0), along(back, -ARROW.head)])
  );
}

function OpenCaution(props: {
  readonly plan: Plan;
  readonly caution: Caution;
  readonly sheet: SheetView;
  readonly lengths: LengthSystem;
}) {
  const { plan, caution, sheet, lengths } = props;
  const drawn = useMemo((): DrawnCaution => drawnCaution(plan, caution, lengths), [plan, caution, lengths]);
  const { at } = sheet;
  const dimensions = drawn.distances.map(({ from, to }) => slantDimension(at(from), at(to)));
  const place = drawn.at && drawn.words !== '' ? at(drawn.at) : null;
  return (
    <g className={`caution-open ${drawn.standing}`}>
      <path className="edge" d={drawn.edges.map((edge) => polyline(edge.map(at))).join('')} />
      <path className="line" d={dimensions.map(({ line }) => line).join('')} />
      <path className="tick" d={dimensions.map(({ ticks }) => ticks).join('')} />
      {drawn.rings.map((spot) => {
        const [x, y] = at(spot);
        return <circle key={spot.join(' ')} className="ring" cx={x} cy={y} r={RING} />;
      })}
      {drawn.wind ? <path className="wind" d={arrow(at(drawn.wind.at), drawn.wind.headingDegrees)} /> : null}
      {drawn.distances.map(({ from, to, words: told }) => {
        const [[x0, y0], [x1, y1]] = [at(from), at(to)];
        return (
          <text key={`${from.join(' ')} ${to.join(' ')}`} x={(x0 + x1) / 2 + 6} y={(y0 + y1) / 2 - 6}>
            {told}
          </text>
        );
      })}
      {place ? <Plate at={place} words={drawn.words} room={sheet.pane.width} /> : null}
    </g>
  );
}

/** Words under a ring on a ground of their own, since names lie there too; within the pane. */
function Plate({ at, words, room }: { readonly at: Spot; readonly words: string; readonly room: number }) {
  const wide = textWidth(words, 'mark', false) + 2 * PLATE.aside;
  const left = Math.min(
    Math.max(at[0] - wide / 2, PLATE.aside),
    Math.max(PLATE.aside, room - wide - PLATE.aside),
  );
  const top = at[1] + RING + PLATE.off;
  return (
    <g className="plate" transform={`translate(${left} ${top})`}>
      <rect width={wide} height={PLATE.high} />
      <text x={PLATE.aside} y={PLATE.high - 6}>
        {words}
      </text>
    </g>
  );
}
