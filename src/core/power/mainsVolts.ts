import type { MainsVolts } from '../kit/powerClasses';
import { mainsOf } from '../light/mains';
import type { Plan } from '../plan/schema/plan';

/**
 * What the mains of a plan give from a line to the neutral: as it says, else 120 V where they swing with 60 Hz and 230 V
 * where with 50. Some places have other pairs, Japan 100 V: there the plan has to say. Source: common practice, no source
 */
export const mainsVoltsOf = (plan: Pick<Plan, 'place' | 'power'>): MainsVolts =>
  plan.power?.volts ?? (mainsOf(plan) === 60 ? 120 : 230);
