import type { Plan } from '../../../core/plan/schema/plan';
import { withNames } from '../../../core/plan/withNames';
import { lensTestStore } from '../../../desk/lensTestStore';

/** Whom the lens is to hold: one press for each of the cast. */
export function HoldChips(props: {
  readonly plan: Plan;
  readonly setupId: string;
  readonly wanted: readonly string[];
}) {
  const { plan, setupId, wanted } = props;
  const { want } = lensTestStore.getState();
  return (
    <fieldset className="hold">
      <legend>to hold</legend>
      {withNames(plan).cast.map(({ id, label }) => {
        const isWanted = wanted.includes(id);
        const others = wanted.filter((each) => each !== id);
        return (
          <button
            key={id}
            type="button"
            aria-pressed={isWanted}
            onClick={() => want(setupId, isWanted ? others : [...wanted, id])}
          >
            {label}
          </button>
        );
      })}
    </fieldset>
  );
}
