import { areaOf } from '../../../core/plan/areas';
import { changeArea } from '../../../core/plan/edits/changeArea';
import { removeArea } from '../../../core/plan/edits/removeArea';
import type { WetArea, Wetness } from '../../../core/plan/schema/ground';
import type { Plan } from '../../../core/plan/schema/plan';
import { nameOfArea, WETNESSES } from '../../../core/plan/wetness';
import { chooseArea } from '../../../desk/chosenArea';
import { useSession } from '../../../desk/hooks';
import { pickTool } from '../../../desk/tools/drawing';
import { nameInText } from '../../overhead/words';
import { Field, SelectField } from '../../parts/Field';
import { Icon } from '../../parts/Icon';
import { areaText } from '../fields/areaText';
import { editPlan } from '../fields/edit';
import { Legs } from './Legs';

/** A choice of how wet something is. */
export function WetnessField({
  value,
  onChange,
}: {
  readonly value: Wetness;
  readonly onChange: (wetness: Wetness) => void;
}) {
  return (
    <SelectField
      label="wetness"
      value={value}
      onChange={(word) => {
        const found = WETNESSES.find((each) => each === word);
        if (found) onChange(found);
      }}
    >
      {WETNESSES.map((each) => (
        <option key={each}>{each}</option>
      ))}
    </SelectField>
  );
}

/** The areas that are wetter or drier than the ground, and new ones to draw. */
export function WetAreas({ plan }: { readonly plan: Plan }) {
  const lengths = useSession((state) => state.lengths);
  const { areas = [] } = plan.ground;
  return (
    <section className="group">
      <h4>{areas.length === 0 ? 'No wet or dry area yet' : 'Wet and dry areas'}</h4>
      {areas.length === 0 ? (
        <p className="advice">
          Draw an area to wet down only what the camera looks across, or to keep a way dry.
        </p>
      ) : (
        <ul className="lines">
          {areas.map((area) => (
            <li key={area.id}>
              <button type="button" className="link" onClick={() => chooseArea(area.id)}>
                {nameOfArea(plan.ground, area.id)}
              </button>
              <span className="q">
                {area.label === undefined ? '' : `${area.wetness}, `}
                {areaText(areaOf(area.outline), lengths)}
              </span>
              <button type="button" className="bare" onClick={() => takeOut(plan, area)}>
                Take it out<span className="vh"> {nameOfArea(plan.ground, area.id)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      <p className="acts">
        <button type="button" onClick={() => pickTool({ type: 'draw', entryId: 'wet-area' })}>
          Draw a wet area
        </button>
        <button type="button" onClick={() => pickTool({ type: 'draw', entryId: 'dry-area' })}>
          Draw a dry area
        </button>
      </p>
    </section>
  );
}

const takeOut = (plan: Plan, { id }: WetArea): void => {
  editPlan(`take out ${nameInText(nameOfArea(plan.ground, id))}`, (before) => removeArea(before, { id }));
};

/** One area: what it is called, how wet it is, its edges by numbers. */
export function AreaPanel({ plan, area }: { readonly plan: Plan; readonly area: WetArea }) {
  const lengths = useSession((state) => state.lengths);
  const { id } = area;
  const name = nameOfArea(plan.ground, id);
  return (
    <div className="item-panel">
      <h3 className="of-item stays">
        <Icon name={area.wetness === 'dry' ? 'dry-area' : 'wet-area'} />
        <span className="name">
          {name}, {areaText(areaOf(area.outline), lengths)}
        </span>
      </h3>
      <div className="fields">
        <WetnessField
          value={area.wetness}
          onChange={(wetness) =>
            editPlan('wet an area', (before) => changeArea(before, { id, patch: { wetness } }))
          }
        />
        <Field
          label="name"
          text={area.label ?? ''}
          commit={(text) =>
            editPlan('name an area', (before) =>
              changeArea(before, { id, patch: { label: text.trim() === '' ? undefined : text.trim() } }),
            )
          }
        />
      </div>
      <Legs plan={plan} id={id} heading="Its edges" />
      <p className="acts">
        <button
          type="button"
          onClick={() => {
            takeOut(plan, area);
            chooseArea(null);
          }}
        >
          Take it out
        </button>
        <button type="button" className="bare" onClick={() => chooseArea(null)}>
          The whole roof
        </button>
      </p>
    </div>
  );
}
