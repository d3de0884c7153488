import type { Plan } from '../schema/plan';
import type { Stand } from '../standEnd';
import { editRecord } from './editRecord';
import { orSame } from './motion';
import { kept, tidyHeading, tidyMetres } from './tidy';

export type Arm = NonNullable<Stand['arm']>;

/** An arm that a plan may hold: from 1 mm to 500 m long, its tilt from straight down to straight up. */
function fitting({ lengthMetres, tiltDegrees, headingDegrees }: Arm): Arm {
  return {
    lengthMetres: kept(tidyMetres(lengthMetres), 0.001, 500),
    tiltDegrees: kept(tidyMetres(tiltDegrees), -90, 90),
    headingDegrees: tidyHeading(headingDegrees),
  };
}

/** Puts an arm on a stand, changes it, or takes it off with null. What the stand carries goes to its end. */
export function setArm(plan: Plan, { id, arm }: { readonly id: string; readonly arm: Arm | null }): Plan {
  return editRecord(plan, id, {
    gear: (gear) => {
      if (gear.kind !== 'stand') return gear;
      if (arm) return orSame(gear, { ...gear, arm: fitting(arm) });
      const { arm: before, ...rest } = gear;
      return before ? rest : gear;
    },
  });
}
