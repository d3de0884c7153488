import type { Setup } from '../../core/plan/schema/setup';
import { setupOf } from '../../desk/choose';
import { useLivePlan, useSession } from '../../desk/hooks';

/** The setup that is looked through, in the plan as it is seen now; null in a plan without setups. */
export function useChosenSetup(): Setup | null {
  const plan = useLivePlan();
  return setupOf(
    plan,
    useSession((state) => state.setupId),
  );
}
