import { addMark, changeMark, removeMark } from '../../../core/plan/edits/changeMark';
import type { Mark, Performer, Stance } from '../../../core/plan/schema/cast';
import type { Plan } from '../../../core/plan/schema/plan';
import { SelectField } from '../../parts/Field';
import { HeadingField } from '../../parts/HeadingField';
import { LengthField } from '../../parts/LengthField';
import { NumberField } from '../../parts/NumberField';
import { useEdit } from '../fields/edit';

const STANCES: readonly Stance[] = [
  'stand',
  'walk',
  'run',
  'crouch',
  'sit',
  'lean',
  'arms out',
  'reach',
  'holding',
];

interface OneMarkProps {
  readonly plan: Plan;
  readonly performer: Performer;
  readonly mark: Mark;
  readonly name: string;
}

function OneMark({ plan, performer, mark, name }: OneMarkProps) {
  const edit = useEdit();
  const [x, z] = mark.at;
  const of = { performerId: performer.id, markId: mark.id };
  const set = (step: string, patch: Partial<Mark>): string | null =>
    edit(step, (before) => changeMark(before, { ...of, patch }));
  return (
    <li>
      <div className="of-part">
        <span>mark {name}</span>
        <button
          type="button"
          className="bare"
          onClick={() => edit('take out a mark', (before) => removeMark(before, of))}
        >
          Take it out<span className="vh"> mark {name}</span>
        </button>
      </div>
      <div className="fields">
        <SelectField label="beat" value={mark.beat} onChange={(beat) => void set('move to a beat', { beat })}>
          {plan.beats.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </SelectField>
        <SelectField
          label="stance"
          value={mark.stance}
          onChange={(value) => {
            const stance = STANCES.find((each) => each === value);
            if (stance) set('set the stance', { stance });
          }}
        >
          {STANCES.map((stance) => (
            <option key={stance}>{stance}</option>
          ))}
        </SelectField>
        <LengthField label="x, right" metres={x} commit={(to) => set('move a mark', { at: [to, z] })} />
        <LengthField label="z, down" metres={z} commit={(to) => set('move a mark', { at: [x, to] })} />
        <HeadingField
          label="faces"
          degrees={mark.headingDegrees}
          commit={(headingDegrees) => set('turn a mark', { headingDegrees })}
        />
        <NumberField
          label="holds for"
          unit="s"
          decimals={1}
          value={mark.holdSeconds}
          commit={(holdSeconds) => set('hold a mark', { holdSeconds })}
        />
        <LengthField
          label="floor at"
          metres={mark.floorMetres ?? 0}
          commit={(floorMetres) => set('raise a mark', { floorMetres })}
        />
      </div>
    </li>
  );
}

/** Where somebody stands at which beat, and how. */
export function MarksList({ plan, performer }: { readonly plan: Plan; readonly performer: Performer }) {
  const edit = useEdit();
  const letter = performer.label.charAt(0).toUpperCase();
  return (
    <section className="group">
      <h4>{performer.marks.length === 0 ? 'No mark yet' : 'Marks'}</h4>
      <ul className="parts-of">
        {performer.marks.map((mark, index) => (
          <OneMark
            key={mark.id}
            plan={plan}
            performer={performer}
            mark={mark}
            name={`${letter}${index + 1}`}
          />
        ))}
      </ul>
      <p className="acts">
        <button
          type="button"
          onClick={() => edit('add a mark', (before) => addMark(before, { performerId: performer.id }))}
        >
          Another mark
        </button>
      </p>
    </section>
  );
}
