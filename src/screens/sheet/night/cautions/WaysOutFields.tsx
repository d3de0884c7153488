import { WAY_OUT_METRES } from '../../../../core/cautions/ways/wayOut';
import { addWayOut } from '../../../../core/plan/edits/addWayOut';
import { changeWayOut } from '../../../../core/plan/edits/changeWayOut';
import { MOST } from '../../../../core/plan/edits/limits';
import { removeWayOut } from '../../../../core/plan/edits/removeWayOut';
import { setWayOutWidth } from '../../../../core/plan/edits/setWayOutWidth';
import { CAUTION_LIMITS } from '../../../../core/plan/schema/cautions';
import type { Spot } from '../../../../core/plan/schema/numbers';
import type { Plan } from '../../../../core/plan/schema/plan';
import { surfaceUnder } from '../../../../core/plan/surfaces';
import { formatLength, parseLength } from '../../../../core/units/lengths';
import { useSession } from '../../../../desk/hooks';
import { livePlan } from '../../../../desk/liveStore';
import { Field } from '../../../parts/Field';
import { firstSentence, inLengths } from '../../../parts/faultSentence';
import { LengthField } from '../../../parts/LengthField';
import { editPlan } from '../../fields/edit';
import { PickPlace } from '../../PickPlace';

const WANTED = {
  key: 'way out',
  word: 'way off the roof',
  take: (at: Spot): string | null => {
    if ((livePlan().cautions?.waysOut ?? []).length >= MOST.waysOut)
      return `A plan names ${MOST.waysOut} ways out at most.`;
    return editPlan('name a way out', (plan) =>
      addWayOut(plan, { at: [at[0], surfaceUnder(plan, at).metres, at[1]] }),
    );
  },
} as const;

/** What a plan takes for the width of the way out, metres. */
const [LEAST_WIDTH, MOST_WIDTH] = CAUTION_LIMITS.wayOutMetres;

/** How wide the way out is kept; typed empty it is as wide as it commonly is. */
function WidthField({ plan }: { readonly plan: Plan }) {
  const lengths = useSession((state) => state.lengths);
  const own = plan.cautions?.wayOutMetres;
  return (
    <Field
      label="kept wide"
      text={own === undefined ? '' : formatLength(own, lengths)}
      empty={formatLength(WAY_OUT_METRES, lengths)}
      commit={(text) => {
        const keep = (metres: number | null): string | null =>
          editPlan('say how wide the way out is kept', (before) => setWayOutWidth(before, { metres }));
        if (text.trim() === '') return keep(null);
        const read = parseLength(text, lengths);
        if (!read.ok) return firstSentence(read.faults);
        const fits = read.value >= LEAST_WIDTH && read.value <= MOST_WIDTH;
        return fits
          ? keep(read.value)
          : inLengths(`This takes ${LEAST_WIDTH} to ${MOST_WIDTH} metres, or nothing.`, lengths);
      }}
    />
  );
}

/** The ways off the roof that are no stair house: named here, put and moved on the roof. */
export function WaysOutFields({ plan }: { readonly plan: Plan }) {
  const waysOut = plan.cautions?.waysOut ?? [];
  const houses = plan.pieces.filter(({ kind }) => kind === 'stair house');
  return (
    <section className="group ways-out">
      <h4>Ways out</h4>
      <div className="fields">
        <WidthField plan={plan} />
      </div>
      <p className="advice">
        {houses.length === 0
          ? 'The plan has no stair house. Name the hatch, the fire stair or the gate by which people leave.'
          : `People leave by ${houses.map(({ label }) => label).join(', ')}. Name any other hatch, fire stair or gate.`}
      </p>
      {waysOut.map(({ id, label, at: [x, y, z] }) => (
        <div key={id} className="fields">
          <Field
            wide
            label="name"
            text={label}
            commit={(text) =>
              text.trim() === ''
                ? 'Type a name, such as hatch.'
                : editPlan('rename a way out', (before) => changeWayOut(before, { id, label: text }))
            }
          />
          <LengthField
            label="x, right"
            metres={x}
            commit={(to) =>
              editPlan('move a way out', (before) => changeWayOut(before, { id, at: [to, y, z] }))
            }
          />
          <LengthField
            label="z, down"
            metres={z}
            commit={(to) =>
              editPlan('move a way out', (before) => changeWayOut(before, { id, at: [x, y, to] }))
            }
          />
          <p className="acts wide">
            <button
              type="button"
              className="bare"
              onClick={() => editPlan(`take ${label} away`, (before) => removeWayOut(before, { id }))}
            >
              Take it away<span className="vh">, {label}</span>
            </button>
          </p>
        </div>
      ))}
      <div className="fields">
        <PickPlace wanted={WANTED} word="Put a way out on the roof" />
      </div>
    </section>
  );
}
