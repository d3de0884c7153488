import { carriedAt } from '../../../../core/form/figure/carrying';
import { addPass } from '../../../../core/plan/edits/addPass';
import { removePass } from '../../../../core/plan/edits/removePass';
import type { Performer } from '../../../../core/plan/schema/cast';
import type { Plan } from '../../../../core/plan/schema/plan';
import { editBlocking } from '../../../../desk/blocking/choosing';
import { secondsOfBeat } from '../../../../desk/blocking/things';
import { PersonChoice } from './choices';

/** Just before a beat, seconds: what somebody has in hand when it comes. */
const BEFORE_SECONDS = 1e-3;

/** What somebody carries at a beat, to whom it goes there, and what is handed to them. */
export function Handing(props: {
  readonly plan: Plan;
  readonly performer: Performer;
  readonly beatId: string;
}) {
  const { plan, performer, beatId } = props;
  const seconds = secondsOfBeat(plan, beatId);
  const before = carriedAt(plan, performer.id, Math.max(0, seconds - BEFORE_SECONDS));
  const here = (plan.passes ?? []).filter(
    ({ beat, from, to }) => beat === beatId && (from === performer.id || to === performer.id),
  );
  const labelOf = (id: string): string => plan.cast.find((each) => each.id === id)?.label ?? 'somebody';
  const gives = here.some(({ from }) => from === performer.id);
  return (
    <section className="group">
      <h4>{before ? `Carries the ${before}` : 'Carries nothing when they come here'}</h4>
      <ul className="lines">
        {here.map(({ id, from, to }) => (
          <li key={id}>
            <span>
              {from === performer.id ? `hands it to ${labelOf(to)}` : `is handed it by ${labelOf(from)}`}
            </span>
            <button
              type="button"
              className="bare"
              onClick={() => editBlocking('take out a pass', (was) => removePass(was, { passId: id }))}
            >
              Take it back<span className="vh"> from {labelOf(to)}</span>
            </button>
          </li>
        ))}
      </ul>
      {before && !gives ? (
        <PersonChoice
          label="hands it to"
          value=""
          none="nobody"
          people={plan.cast.filter(({ id }) => id !== performer.id)}
          onChange={(to) => {
            if (to !== '')
              editBlocking('hand over', (was) => addPass(was, { beatId, from: performer.id, to }));
          }}
        />
      ) : null}
    </section>
  );
}
