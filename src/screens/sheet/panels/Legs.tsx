import { useState } from 'react';
import { cornersOf } from '../../../core/plan/edits/corners';
import { removeCorner } from '../../../core/plan/edits/removeCorner';
import { setLegLength } from '../../../core/plan/edits/setLegLength';
import { bearingOf, legsOf, metresBetween, runLength } from '../../../core/plan/runs';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatHeading } from '../../../core/units/angles';
import { formatLength } from '../../../core/units/lengths';
import { useSession } from '../../../desk/hooks';
import { LengthField } from '../../parts/LengthField';
import { useEdit } from '../fields/edit';

/** Longer runs show their first legs, and the others when they are asked for. */
const LEGS_AT_ONCE = 12;
/** A leg has its length from a millimetre on, as a size of a thing has. */
const LONGEST_METRES = 500;

/** The straight pieces of a run, an outline, a cable or a hole: each length typed, each corner taken out. */
export function Legs(props: {
  readonly plan: Plan;
  readonly id: string;
  readonly hole?: string;
  readonly heading: string;
}) {
  const { plan, id, hole, heading } = props;
  const edit = useEdit();
  const lengths = useSession((state) => state.lengths);
  const [all, setAll] = useState(false);
  const corners = cornersOf(plan, id, hole);
  if (!corners) return null;
  const legs = legsOf(corners.spots, corners.closed).map(([from, to], index) => ({
    name: `leg ${index + 1}`,
    index,
    from,
    to,
  }));
  const of = { id, ...(hole === undefined ? {} : { hole }) };
  const fewest = corners.closed ? 3 : 2;
  const shown = all ? legs : legs.slice(0, LEGS_AT_ONCE);
  return (
    <section className="group">
      <h4>
        {heading}, {formatLength(runLength(corners.spots, corners.closed), lengths)} in all
      </h4>
      <ul className="legs">
        {shown.map(({ name, index, from, to }) => (
          <li key={name}>
            <LengthField
              label={legs.length === 1 ? 'length' : name}
              metres={metresBetween(from, to)}
              commit={(metres) => {
                if (metres < 0.001 || metres > LONGEST_METRES) return 'This takes 0.001 to 500 metres.';
                return edit('set a leg', (before) => setLegLength(before, { ...of, index, metres }));
              }}
            />
            <span className="q">{formatHeading(bearingOf(from, to), 1)}</span>
            {corners.spots.length > fewest ? (
              <button
                type="button"
                className="bare"
                onClick={() => edit('take out a corner', (before) => removeCorner(before, { ...of, index }))}
              >
                Corner out<span className="vh"> where {name} begins</span>
              </button>
            ) : null}
          </li>
        ))}
      </ul>
      {legs.length > shown.length ? (
        <button type="button" className="link" onClick={() => setAll(true)}>
          Show all {legs.length} legs
        </button>
      ) : null}
    </section>
  );
}
