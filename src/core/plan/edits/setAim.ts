import type { Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { orSame } from './motion';
import { tidyPoint } from './tidy';

/** Aims a head at a point, metres; the head stays where it is. */
export function setAim(plan: Plan, { id, aim }: { readonly id: string; readonly aim: Point }): Plan {
  return editRecord(plan, id, {
    gear: (gear) => (gear.kind === 'head' ? orSame(gear, { ...gear, aim: tidyPoint(aim) }) : gear),
  });
}
