import type { Plan } from '../../../../core/plan/schema/plan';
import { keySummary } from '../../../../core/report/light/keySummary';
import { useContinuity } from '../../../../desk/continuityStore';
import { useLight } from '../../../../desk/lightStore';

/** What becomes of the keys from setup to setup. */
export function Summary({ plan }: { readonly plan: Plan }) {
  const continuity = useContinuity((state) => state.setups);
  const lights = useLight((state) => state.setups);
  const sentences = keySummary(plan, continuity ?? [], lights);
  return sentences.length === 0 ? null : <p className="advice">{sentences.join(' ')}</p>;
}
