import { TAKES_A_PLUG } from '../../../core/kit/plugged';
import { type Cable, plugCable } from '../../../core/plan/edits/plugCable';
import type { Plan } from '../../../core/plan/schema/plan';
import { choice } from './build';
import type { FieldSpec } from './types';

/** What either end of a cable is plugged into. */
export function plugFields(plan: Plan, cable: Cable): FieldSpec[] {
  const { id, plugs } = cable;
  const places = plan.gear
    .filter((gear) => TAKES_A_PLUG.has(gear.kind) || gear.id === plugs?.from || gear.id === plugs?.to)
    .map((gear) => [gear.id, gear.label] as const);
  return (['from', 'to'] as const).map(
    (end): FieldSpec => ({
      ...choice(end, plugs?.[end] ?? '', [['', 'lies free'], ...places], (before, to) =>
        plugCable(before, { id, end, to: to === '' ? null : to }),
      ),
      wide: true,
    }),
  );
}
