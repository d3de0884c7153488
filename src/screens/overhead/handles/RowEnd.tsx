import { useRef } from 'react';
import { useStore } from 'zustand';
import { bearingOf, metresBetween } from '../../../core/plan/runs';
import type { Plan } from '../../../core/plan/schema/plan';
import { askStore } from '../../actions/askStore';
import { isRow, showRow, wayOf } from '../../actions/rows';
import type { Spot } from '../geometry/spots';
import { spotIn } from '../pointers/types';
import { REACH } from '../pointers/useSheetPointers';
import type { SheetView } from '../useSheetView';
import { Grip } from './Grip';
import { stepped } from './reading';

interface Props {
  readonly plan: Plan;
  readonly sheet: SheetView;
  readonly svg: SVGSVGElement | null;
  readonly touch: boolean;
}

/** The far end of the straight row that is asked for: pulled, it says which way the row goes and how far apart. */
export function RowEnd({ plan, sheet, svg, touch }: Props) {
  const asked = useStore(askStore, (state) => state.asked);
  const holding = useRef(false);
  if (!isRow(asked) || asked.runId !== null) return null;
  const way = wayOf(plan, asked);
  const [from, to] = way;
  if (!from || !to) return null;
  const pullTo = (spot: Spot): void => {
    const end: [number, number] = [spot[0], spot[1]];
    const metres = metresBetween(from, end) / (asked.count - 1);
    showRow({
      ...asked,
      spacingMetres: Math.max(0.05, stepped(metres, 0.05)),
      bearingDegrees: stepped(bearingOf(from, end), 1),
    });
  };
  return (
    <g
      className="handle row"
      data-handle="row"
      {...OF_THE_FORM}
      onPointerDown={(event) => {
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        holding.current = true;
      }}
      onPointerMove={(event) => {
        if (!holding.current || !svg) return;
        event.stopPropagation();
        pullTo(sheet.roofAt(spotIn(svg, event)));
      }}
      onPointerUp={(event) => {
        event.stopPropagation();
        holding.current = false;
      }}
      onPointerCancel={() => {
        holding.current = false;
      }}
    >
      <Grip kind="row" at={sheet.at(to)} lead={sheet.at(from)} reach={touch ? REACH.touch : REACH.mouse} />
    </g>
  );
}

/** The form's fields say the same by keyboard: this is for the pointer alone. */
const OF_THE_FORM = { role: 'presentation' } as const;
