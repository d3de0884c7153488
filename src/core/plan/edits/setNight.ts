import type { NightPlan } from '../schema/night';
import type { Plan } from '../schema/plan';
import { type Patch, patched, withNight } from './nightRecord';

/** What of a night is about all of it. */
export type WholeNight = Pick<
  NightPlan,
  | 'call'
  | 'wrapBy'
  | 'utcOffsetHours'
  | 'clockChange'
  | 'meal'
  | 'strike'
  | 'dark'
  | 'times'
  | 'costs'
  | 'dries'
  | 'wetOnce'
>;

/**
 * Sets what is about the whole night: call, wrap, clock, meal, dusk, what every setup takes and what changes cost. Undefined
 * takes a field away; what the schema refuses changes nothing.
 */
export function setNight(plan: Plan, { patch }: { readonly patch: Patch<WholeNight> }): Plan {
  return withNight(plan, patched<NightPlan>(plan.night ?? {}, patch));
}
