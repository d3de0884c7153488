import { addMark, removeMark } from '../../../core/plan/edits/changeMark';
import type { Mark, Performer } from '../../../core/plan/schema/cast';
import type { Plan } from '../../../core/plan/schema/plan';
import { markName } from '../../../desk/blocking/things';
import { useEdit } from '../fields/edit';
import { MarkFields } from './MarkFields';

interface OneMarkProps {
  readonly plan: Plan;
  readonly performer: Performer;
  readonly mark: Mark;
  readonly name: string;
}

function OneMark({ plan, performer, mark, name }: OneMarkProps) {
  const edit = useEdit();
  const of = { performerId: performer.id, markId: mark.id };
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
      <MarkFields plan={plan} performer={performer} mark={mark} />
    </li>
  );
}

/** Where somebody stands at which beat, and how. */
export function MarksList({ plan, performer }: { readonly plan: Plan; readonly performer: Performer }) {
  const edit = useEdit();
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
            name={markName(performer, index)}
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
