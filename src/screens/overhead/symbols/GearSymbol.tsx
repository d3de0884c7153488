import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { Dolly } from './Dolly';
import { StillGear } from './StillGear';

/** A piece of gear as it is drawn from above at the instant of the clock. */
export function GearSymbol({ gear, plan }: { readonly gear: Gear; readonly plan: Plan }) {
  return gear.kind === 'dolly' ? <Dolly gear={gear} /> : <StillGear gear={gear} plan={plan} />;
}
