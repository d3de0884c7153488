import { removeTape } from '../../../core/plan/edits/removeTape';
import { setGround } from '../../../core/plan/edits/setGround';
import { setPlace } from '../../../core/plan/edits/setPlace';
import { itemsOf } from '../../../core/plan/items';
import { metresBetween } from '../../../core/plan/runs';
import type { Ground, Plan } from '../../../core/plan/schema/plan';
import { formatLength } from '../../../core/units/lengths';
import { useSession } from '../../../desk/hooks';
import { Field, SelectField, ShownField } from '../../parts/Field';
import { editPlan } from '../fields/edit';
import { UnderlayPanel } from '../import/UnderlayPanel';
import { Meters } from '../sky/Meters';
import { PlaceFields } from '../sky/PlaceFields';
import { SkyPanel } from '../sky/SkyPanel';
import { WetAreas, WetnessField } from './WetAreas';

const SURFACES: readonly Ground['surface'][] = ['concrete', 'asphalt', 'felt', 'tile', 'timber'];

const ground = (name: string, patch: Partial<Ground>): string | null =>
  editPlan(name, (plan) => setGround(plan, { patch }));

function Tapes({ plan }: { readonly plan: Plan }) {
  const lengths = useSession((state) => state.lengths);
  const { tapes = [] } = plan;
  return (
    <section className="group">
      <h4>Tapes that stay</h4>
      {tapes.length === 0 ? (
        <p className="advice">
          None yet. <kbd>T</kbd> lays one between any two corners.
        </p>
      ) : (
        <ul className="lines">
          {tapes.map((tape, index) => (
            <li key={tape.id}>
              <span className="q">tape {index + 1}</span>
              <span>{formatLength(metresBetween(tape.from, tape.to), lengths)}</span>
              <button
                type="button"
                className="bare"
                onClick={() => editPlan('take up a tape', (before) => removeTape(before, { id: tape.id }))}
              >
                Take it up<span className="vh"> tape {index + 1}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** The roof as a whole: what the night is called, when and where it is, what one stands on, tapes, and how much is on it. */
export function RoofPanel({ plan }: { readonly plan: Plan }) {
  const { surface, wetness } = plan.ground;
  return (
    <>
      <section className="group">
        <h4>The night</h4>
        <div className="fields">
          <Field
            wide
            label="title"
            text={plan.title}
            commit={(text) =>
              editPlan('name the plan', (before) => setPlace(before, { patch: { title: text.trim() } }))
            }
          />
          <PlaceFields plan={plan} />
        </div>
      </section>
      <section className="group">
        <h4>The ground</h4>
        <div className="fields">
          <SelectField
            label="surface"
            value={surface}
            onChange={(value) => {
              const found = SURFACES.find((each) => each === value);
              if (found) ground('set the ground', { surface: found });
            }}
          >
            {SURFACES.map((each) => (
              <option key={each}>{each}</option>
            ))}
          </SelectField>
          <WetnessField value={wetness} onChange={(value) => ground('wet the ground', { wetness: value })} />
        </div>
      </section>
      <WetAreas plan={plan} />
      <SkyPanel plan={plan} />
      <Meters plan={plan} />
      <UnderlayPanel />
      <Tapes plan={plan} />
      <section className="group">
        <h4>On the roof</h4>
        <div className="fields">
          <ShownField label="set pieces" text={String(plan.pieces.length)} />
          <ShownField label="gear" text={String(plan.gear.length)} />
          <ShownField label="cast" text={String(plan.cast.length)} />
          <ShownField
            label="hidden"
            text={String(itemsOf(plan).filter(({ record }) => record.hidden).length)}
          />
        </div>
      </section>
    </>
  );
}
