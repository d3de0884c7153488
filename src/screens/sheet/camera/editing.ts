import type { Plan } from '../../../core/plan/schema/plan';
import { planStore } from '../../../desk/planStore';
import { expectedSentence } from '../../parts/faultSentence';

/** One named edit; what would work, in a sentence, where it was not done. */
export const edit = (name: string, change: (plan: Plan) => Plan): string | null =>
  expectedSentence(planStore.getState().edit(name, change));
