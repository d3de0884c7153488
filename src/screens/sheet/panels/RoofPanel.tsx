import { removeTape } from '../../../core/plan/edits/removeTape';
import { setGround } from '../../../core/plan/edits/setGround';
import { setPlace } from '../../../core/plan/edits/setPlace';
import { itemsOf } from '../../../core/plan/items';
import { metresBetween } from '../../../core/plan/runs';
import type { Ground, Plan } from '../../../core/plan/schema/plan';
import { formatLength } from '../../../core/units/lengths';
import { useSession } from '../../../desk/hooks';
import { Field, SelectField, ShownField } from '../../parts/Field';
import { NumberField } from '../../parts/NumberField';
import { editPlan } from '../fields/edit';
import { UnderlayPanel } from '../import/UnderlayPanel';

const SURFACES: readonly Ground['surface'][] = ['concrete', 'asphalt', 'felt', 'tile', 'timber'];
const WETNESS: readonly Ground['wetness'][] = ['dry', 'damp', 'wet down', 'puddled'];

type Place = Plan['place'];

const place = (name: string, patch: Partial<Place>): string | null =>
  editPlan(name, (plan) => setPlace(plan, { patch: { place: patch } }));

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
          <Field
            label="date"
            text={plan.place.date}
            commit={(text) => place('set the date', { date: text.trim() })}
          />
          <Field
            wide
            label="time zone"
            text={plan.place.timeZone}
            commit={(text) => place('set the time zone', { timeZone: text.trim() })}
          />
          <Field
            wide
            label="place"
            text={plan.place.label}
            commit={(text) => place('name the place', { label: text.trim() })}
          />
          <NumberField
            label="latitude"
            unit="°"
            decimals={4}
            value={plan.place.latitudeDegrees}
            commit={(latitudeDegrees) => place('set the latitude', { latitudeDegrees })}
          />
          <NumberField
            label="longitude"
            unit="°"
            decimals={4}
            value={plan.place.longitudeDegrees}
            commit={(longitudeDegrees) => place('set the longitude', { longitudeDegrees })}
          />
          <NumberField
            label="north at"
            unit="°"
            decimals={1}
            value={plan.place.northDegrees}
            commit={(northDegrees) => place('turn north', { northDegrees })}
          />
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
          <SelectField
            label="wetness"
            value={wetness}
            onChange={(value) => {
              const found = WETNESS.find((each) => each === value);
              if (found) ground('wet the ground', { wetness: found });
            }}
          >
            {WETNESS.map((each) => (
              <option key={each}>{each}</option>
            ))}
          </SelectField>
        </div>
      </section>
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
