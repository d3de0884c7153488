import * as v from 'valibot';
import { cautions } from '../schema/cautions';
import type { Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { withCautions } from './cautionsEntered';
import { tidyPoint } from './tidy';

/** Moves or renames a way out. What the schema refuses changes nothing. */
export function changeWayOut(
  plan: Plan,
  { id, at, label }: { readonly id: string; readonly at?: Point; readonly label?: string },
): Plan {
  const before = plan.cautions?.waysOut ?? [];
  const waysOut = before.map((each) =>
    each.id === id
      ? { ...each, ...(at && { at: tidyPoint(at) }), ...(label !== undefined && { label: label.trim() }) }
      : each,
  );
  return v.is(cautions, { waysOut }) ? withCautions(plan, { ...plan.cautions, waysOut }) : plan;
}
