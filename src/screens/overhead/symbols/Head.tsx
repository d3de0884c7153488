import { outlinesOf } from '../../../core/form/fromAbove/outlines';
import { gearParts } from '../../../core/form/gear';
import { headPlace } from '../../../core/form/gear/headPlace';
import { headClassOf } from '../../../core/form/gear/references';
import type { Plan } from '../../../core/plan/schema/plan';
import { polygon } from '../geometry/paths';
import type { GearOf } from './kinds';
import { Ring } from './Marks';

/** Parts that would only thicken the outline. */
const LEFT_OUT = new Set(['yoke']);

/** The outline of the lamp's own form, turned to its aim; the axis that it hangs on as a ring. */
export function Head({ gear, plan }: { readonly gear: GearOf<'head'>; readonly plan: Plan }) {
  const parts = gearParts(gear, plan).filter(({ name }) => !LEFT_OUT.has(name));
  const { pivot } = headPlace(gear, headClassOf(gear, plan), plan);
  return (
    <>
      <path
        className="lamp"
        d={outlinesOf(parts)
          .map(({ hull }) => polygon(hull))
          .join('')}
      />
      {'on' in gear.place && <Ring at={[[pivot[0], pivot[2]]]} kind="column" />}
    </>
  );
}
