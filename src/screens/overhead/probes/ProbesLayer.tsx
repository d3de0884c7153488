import './probes.css';
import { useStore } from 'zustand';
import { changeProbe } from '../../../core/plan/edits/changeProbe';
import { removeProbe } from '../../../core/plan/edits/removeProbe';
import type { Plan } from '../../../core/plan/schema/plan';
import type { ProbeRecord } from '../../../core/plan/schema/sky';
import { lightUnitOf } from '../../../core/units/illuminance';
import { chooseProbe, chosenProbeStore } from '../../../desk/chosenProbe';
import { useSession } from '../../../desk/hooks';
import { AS_BUTTON } from '../asButton';
import type { Spot } from '../geometry/spots';
import { useMarkHand } from '../pointers/useMarkHand';
import { REACH } from '../pointers/useSheetPointers';
import type { SheetView } from '../useSheetView';
import { METER } from './meterBounds';
import { readingText } from './meterWords';
import { useMeterReadings } from './useMeterReadings';

const CELL = 7;

interface Props {
  readonly plan: Plan;
  readonly sheet: SheetView;
  readonly svg: SVGSVGElement | null;
  readonly touch: boolean;
  /** While a tool is in the hand, presses go through to the roof. */
  readonly through: boolean;
}

const movedTo = (plan: Plan, { id, at }: ProbeRecord, [x, z]: Spot): Plan =>
  changeProbe(plan, { id, patch: { at: [x, at[1], z] } });

const DOINGS = {
  gesture: 'meter',
  movedTo,
  removed: (plan: Plan, { id }: ProbeRecord): Plan => removeProbe(plan, { id }),
  choose: (probe: ProbeRecord | null): void => chooseProbe(probe?.id ?? null),
} as const;

/** The meters on the roof, each with what it reads now: chosen by a press, moved by a drag or the arrows. */
export function ProbesLayer({ plan, sheet, svg, touch, through }: Props) {
  const chosen = useStore(chosenProbeStore, (state) => state.probeId);
  const lengths = useSession((state) => state.lengths);
  const readings = useMeterReadings(plan);
  const holdOf = useMarkHand<ProbeRecord>(sheet, svg, DOINGS);
  if (!plan.probes) return null;

  return (
    <g className={through ? 'meters through' : 'meters'}>
      {plan.probes.map((probe) => {
        const [x, y] = sheet.at([probe.at[0], probe.at[2]]);
        const reading = readings.get(probe.id);
        const words = reading ? readingText(reading, lightUnitOf(lengths)) : '';
        return (
          <g
            key={probe.id}
            className={probe.id === chosen ? 'meter chosen' : 'meter'}
            transform={`translate(${x} ${y})`}
            data-meter={probe.id}
            aria-label={words === '' ? probe.label : `${probe.label}, ${words}`}
            {...AS_BUTTON}
            {...holdOf(probe)}
          >
            <circle className="reach" r={touch ? REACH.touch : REACH.mouse} />
            <circle className="ring" r={METER.ring} />
            <circle className="cell" r={CELL} />
            <path className="dome" d={`M${-CELL + 2} 0a${CELL - 2} ${CELL - 2} 0 0 1 ${2 * CELL - 4} 0z`} />
            <text x={METER.ring + 3} y={-1}>
              {probe.label}
            </text>
            <text x={METER.ring + 3} y={12}>
              {words}
            </text>
          </g>
        );
      })}
    </g>
  );
}
