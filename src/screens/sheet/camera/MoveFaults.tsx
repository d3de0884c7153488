import { useMemo } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import {
  type DepartmentFault,
  departmentFaults,
  type FaultSubject,
} from '../../../core/report/cameraNotices';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { useSession } from '../../../desk/hooks';
import { Glyph } from '../../parts/Glyph';

/** What the camera department objects to in a setup, worked out once for all that say it. */
export function useDepartmentFaults(plan: Plan, setup: Setup): readonly DepartmentFault[] {
  return useMemo(() => departmentFaults(plan, setup), [plan, setup]);
}

const METRES = /(\d+\.\d\d)\u00a0m(?![\w/])/g;

/** A sentence of the report with its metres as lengths are shown here. */
export const inOwnLengths = (sentence: string, lengths: LengthSystem): string =>
  lengths === 'm' ? sentence : sentence.replace(METRES, (_, metres) => formatLength(Number(metres), lengths));

/** The objections about one thing, beside the fields that would mend them, with a button for the nearest that would do. */
export function MoveFaults(props: {
  readonly faults: readonly DepartmentFault[];
  readonly about: FaultSubject;
  readonly keyIndex?: number;
  /** What the button is called for a value; left out where nothing can be offered. */
  readonly word?: (nearest: number) => string;
  readonly take?: (nearest: number, fault: DepartmentFault) => void;
}) {
  const { about, keyIndex, word, take } = props;
  const lengths = useSession((state) => state.lengths);
  const said = props.faults.filter(
    (fault) => fault.about === about && (keyIndex === undefined || fault.keyIndex === keyIndex),
  );
  return said.map((fault) => (
    <div key={fault.sentence} className="move-fault">
      <p className="err" role="alert">
        <Glyph verdict="showing" />
        {inOwnLengths(fault.sentence, lengths)}
      </p>
      {fault.nearest !== null && word && take ? (
        <button type="button" className="offer" onClick={() => take(fault.nearest ?? 0, fault)}>
          {word(fault.nearest)}
        </button>
      ) : null}
    </div>
  ));
}
