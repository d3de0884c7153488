import { changeWayOut } from '../../../core/plan/edits/changeWayOut';
import { removeWayOut } from '../../../core/plan/edits/removeWayOut';
import type { Point } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { AS_BUTTON } from '../asButton';
import { useMarkHand } from '../pointers/useMarkHand';
import { REACH } from '../pointers/useSheetPointers';
import type { SheetView } from '../useSheetView';

/** A door ajar with an arrow through it, about its middle, pixels. */
const DOOR = 'M-7-8H3V8H-7ZM-3 0H9M6-3 9 0 6 3';
const RING = 13;

interface WayOut {
  readonly id: string;
  readonly label: string;
  readonly at: Point;
}

/** Chosen is what has the focus: nothing else asks. */
const choose = (): void => undefined;
const DOINGS = {
  gesture: 'way out',
  movedTo: (plan: Plan, { id, at }: WayOut, [x, z]: readonly [number, number]): Plan =>
    changeWayOut(plan, { id, at: [x, at[1], z] }),
  removed: (plan: Plan, { id }: WayOut): Plan => removeWayOut(plan, { id }),
  choose,
} as const;

/** The ways off the roof that the plan names: moved by a drag or the arrows, taken away by Delete. */
export function WaysOutLayer(props: {
  readonly plan: Plan;
  readonly sheet: SheetView;
  readonly svg: SVGSVGElement | null;
  readonly touch: boolean;
}) {
  const { plan, sheet, svg, touch } = props;
  const holdOf = useMarkHand<WayOut>(sheet, svg, DOINGS);
  return (plan.cautions?.waysOut ?? []).map((wayOut) => {
    const [x, y] = sheet.at([wayOut.at[0], wayOut.at[2]]);
    return (
      <g
        key={wayOut.id}
        className="way-out"
        data-way-out={wayOut.id}
        transform={`translate(${x} ${y})`}
        aria-label={`${wayOut.label}, a way off the roof`}
        {...AS_BUTTON}
        {...holdOf(wayOut)}
      >
        <circle className="reach" r={touch ? REACH.touch : REACH.mouse} />
        <circle className="ring" r={RING} />
        <path d={DOOR} />
        <text x={RING + 2} y={4}>
          {wayOut.label}
        </text>
      </g>
    );
  });
}
