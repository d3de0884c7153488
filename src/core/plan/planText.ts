import type { Plan } from './schema/plan';

/** The text of a plan file, ending in a line feed, of a plan as it was parsed: its keys are in the schema's order. */
export const planText = (plan: Plan): string => `${JSON.stringify(plan, null, 2)}\n`;
