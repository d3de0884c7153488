import { putOnStand } from '../../../core/plan/edits/putOnStand';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { withNames } from '../../../core/plan/withNames';
import { sessionStore } from '../../../desk/sessionStore';
import { SelectField } from '../../parts/Field';
import { useEdit } from '../fields/edit';

type Carried = Extract<Gear, { place: unknown }>;

export const canBeCarried = (gear: Gear): gear is Carried => 'place' in gear;
const carrierIdOf = (gear: Carried): string | null => ('on' in gear.place ? gear.place.on : null);

/** What a stand carries, each to be taken off, and what may be put on it. */
export function Carries({ plan, standId }: { readonly plan: Plan; readonly standId: string }) {
  const edit = useEdit();
  const all = withNames(plan).gear.filter(canBeCarried);
  const carried = all.filter((gear) => carrierIdOf(gear) === standId);
  const others = all.filter((gear) => carrierIdOf(gear) !== standId);
  return (
    <section className="group">
      <h4>{carried.length === 0 ? 'Carries nothing yet' : 'Carries'}</h4>
      <ul className="lines">
        {carried.map(({ id, label, kind }) => (
          <li key={id}>
            <button type="button" className="link" onClick={() => sessionStore.getState().setSelectedId(id)}>
              {label}
            </button>
            <span className="q">{kind}</span>
            <button
              type="button"
              className="bare"
              onClick={() => edit(`take ${label} off`, (before) => putOnStand(before, { id, standId: null }))}
            >
              Take it off<span className="vh"> {label}</span>
            </button>
          </li>
        ))}
      </ul>
      {others.length > 0 ? (
        <SelectField
          label="put on it"
          value=""
          onChange={(id) => {
            if (id !== '') edit('put on a stand', (before) => putOnStand(before, { id, standId }));
          }}
        >
          <option value="">a lamp, a cloth, a monitor</option>
          {others.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </SelectField>
      ) : null}
    </section>
  );
}

/** Which stand carries a lamp, a cloth or a monitor. */
export function OnStand({ plan, gear }: { readonly plan: Plan; readonly gear: Carried }) {
  const edit = useEdit();
  const stands = withNames(plan).gear.filter(({ kind }) => kind === 'stand');
  return (
    <SelectField
      wide
      label="on stand"
      value={carrierIdOf(gear) ?? ''}
      onChange={(to) =>
        edit(to === '' ? 'take off the stand' : 'put on a stand', (before) =>
          putOnStand(before, { id: gear.id, standId: to === '' ? null : to }),
        )
      }
    >
      <option value="">none, it has a place of its own</option>
      {stands.map(({ id, label }) => (
        <option key={id} value={id}>
          {label}
        </option>
      ))}
    </SelectField>
  );
}
