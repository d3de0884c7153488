import * as v from 'valibot';
import type { Plan } from '../schema/plan';
import { type Sky, sky as skySchema } from '../schema/sky';

/** A sky without what is not so, so that the same sky is the same text. */
function tidied({ glow, clock, moon }: Sky): Sky {
  const offset = clock && Math.round(clock.utcOffsetHours * 100) / 100 + 0;
  return {
    glow,
    ...(clock && offset !== undefined && { clock: { time: clock.time, utcOffsetHours: offset } }),
    ...(moon && { moon }),
  };
}

/** Sets the sky over the action, or, with null, takes a plan's own away. What the schema refuses changes nothing. */
export function setSky(plan: Plan, { sky }: { readonly sky: Sky | null }): Plan {
  const { sky: before, ...rest } = plan;
  if (!sky) return before ? rest : plan;
  if (!v.is(skySchema, sky)) return plan;
  const after = tidied(sky);
  return before && JSON.stringify(tidied(before)) === JSON.stringify(after) ? plan : { ...plan, sky: after };
}
