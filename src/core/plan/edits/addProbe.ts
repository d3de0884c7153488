import type { Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import type { ProbeRecord } from '../schema/sky';
import { freeId } from './freeId';
import { MOST } from './limits';
import { tidyPoint } from './tidy';

/** Puts a meter at a point, turned to the strongest light there. A plan with 60 of them stays as it is. */
export function addProbe(plan: Plan, { at }: { readonly at: Point }): Plan {
  const probes = plan.probes ?? [];
  if (probes.length >= MOST.probes) return plan;
  const id = freeId(probes, 'meter');
  const probe: ProbeRecord = { id, label: `Meter ${id.slice(6)}`, at: tidyPoint(at), normal: 'key' };
  return { ...plan, probes: [...probes, probe] };
}
