import * as v from 'valibot';
import type { Plan } from '../schema/plan';
import { type ProbeRecord, probe as probeSchema } from '../schema/sky';
import { tidyHeading, tidyMetres, tidyPoint } from './tidy';

function tidied(probe: ProbeRecord): ProbeRecord {
  const { normal } = probe;
  return {
    ...probe,
    at: tidyPoint(probe.at),
    normal: typeof normal === 'string' ? normal : [tidyHeading(normal[0]), tidyMetres(normal[1])],
  };
}

/** Changes a meter's name, place or what it faces. What the schema refuses, or an unknown id, changes nothing. */
export function changeProbe(
  plan: Plan,
  { id, patch }: { readonly id: string; readonly patch: Partial<Omit<ProbeRecord, 'id'>> },
): Plan {
  const { probes = [] } = plan;
  const index = probes.findIndex((probe) => probe.id === id);
  const before = probes[index];
  if (!before) return plan;
  const wanted = { ...before, ...patch, id };
  if (!v.is(probeSchema, wanted)) return plan;
  const after = tidied(wanted);
  return JSON.stringify(after) === JSON.stringify(before)
    ? plan
    : { ...plan, probes: probes.with(index, after) };
}
