import { onlyInStore, useOnlyIn } from '../../desk/blocking/onlyIn';
import { letterOf, setupOf } from '../../desk/choose';
import { usePlanState, useSession } from '../../desk/hooks';

/** Whether a hand on the roof moves marks for all setups, or only for the one that is looked through. */
export function OnlyIn() {
  const plan = usePlanState((state) => state.plan);
  const chosen = useSession((state) => state.setupId);
  const open = useSession((state) => state.sheet === 'blocking');
  const on = useOnlyIn(plan) !== null;
  const setup = setupOf(plan, chosen);
  if (!open || !setup || plan.cast.length === 0) return null;
  return (
    <button
      type="button"
      className="only-in"
      aria-pressed={on}
      title={on ? 'Marks are moved for this setup alone' : 'Marks are moved for all setups'}
      onClick={() => onlyInStore.setState({ setupId: on ? null : setup.id })}
    >
      Only in {letterOf(plan, setup.id)}
    </button>
  );
}
