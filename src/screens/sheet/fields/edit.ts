import { createContext, useContext } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import { planStore } from '../../../desk/planStore';
import { expectedSentence } from '../../parts/faultSentence';

/** Makes a named edit; a sentence that says what would work where it is refused, else null. */
export type Edit = (name: string, change: (plan: Plan) => Plan) => string | null;

/** One step of the history. */
export const editPlan: Edit = (name, change) => expectedSentence(planStore.getState().edit(name, change));

/** Where the fields of a panel put their values: into the plan, or into what is being drawn. */
export const EditContext = createContext<Edit>(editPlan);

export const useEdit = (): Edit => useContext(EditContext);
