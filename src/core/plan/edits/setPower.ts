import type { Plan } from '../schema/plan';
import { ON_HOURS, type PlanPower } from '../schema/power';
import { kept } from './tidy';

/** What the plan says of its mains' volts and of how long everything is on; null for what its place and night make likely. */
export function setPower(
  plan: Plan,
  { volts, hours }: { readonly volts?: 120 | 230 | null; readonly hours?: number | null },
): Plan {
  const before = plan.power ?? {};
  const next: PlanPower = { ...before };
  if (volts === null) delete next.volts;
  else if (volts !== undefined) next.volts = volts;
  if (hours === null) delete next.hours;
  else if (hours !== undefined && Number.isFinite(hours)) next.hours = kept(hours, ...ON_HOURS);
  if (next.volts === before.volts && next.hours === before.hours) return plan;
  if (next.volts !== undefined || next.hours !== undefined) return { ...plan, power: next };
  const { power: _, ...rest } = plan;
  return rest;
}
