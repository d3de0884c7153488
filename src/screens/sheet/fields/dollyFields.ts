import { setRides } from '../../../core/plan/edits/setRides';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { setupLetter } from '../../../core/plan/setupLetter';
import { choice } from './build';
import type { FieldSpec } from './types';

/** Whose camera rides on a dolly. */
export function ridesField(plan: Plan, dolly: Extract<Gear, { kind: 'dolly' }>): FieldSpec {
  const { id, rides } = dolly;
  const setups = plan.setups.map(
    (setup, index) => [setup.id, `${setupLetter(index)} ${setup.label}`] as const,
  );
  return {
    ...choice('carries', rides ?? '', [['', 'no camera'], ...setups], (before, to) =>
      setRides(before, { id, setupId: to === '' ? null : to }),
    ),
    wide: true,
  };
}
