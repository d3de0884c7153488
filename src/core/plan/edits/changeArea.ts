import type { WetArea } from '../schema/ground';
import type { Plan } from '../schema/plan';
import { withArea } from './areas';
import { orSame } from './motion';

/** What of a wet area can be said anew; `label: undefined` takes its name away. */
export interface AreaPatch {
  readonly wetness?: WetArea['wetness'];
  readonly label?: string | undefined;
}

/** Says how wet an area is, or what it is called. A name that is empty or longer than 80 characters changes nothing. */
export function changeArea(
  plan: Plan,
  { id, patch }: { readonly id: string; readonly patch: AreaPatch },
): Plan {
  const label = patch.label?.trim();
  if (label !== undefined && (label.length < 1 || label.length > 80)) return plan;
  return withArea(plan, id, (area) => {
    const { label: before, ...bare } = area;
    const named = 'label' in patch ? label : before;
    return orSame(area, {
      ...bare,
      ...(named !== undefined && { label: named }),
      wetness: patch.wetness ?? area.wetness,
    });
  });
}
