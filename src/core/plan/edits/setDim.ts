import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { kept, tidyMetres } from './tidy';

/** Dims a head, a practical or a bulb string to a share of full output, 0 to 1. */
export function setDim(plan: Plan, args: { readonly id: string; readonly dim: number }): Plan {
  const dim = kept(tidyMetres(args.dim), 0, 1);
  return editRecord(plan, args.id, {
    gear: (gear) => ('dim' in gear && gear.dim !== dim ? { ...gear, dim } : gear),
  });
}
