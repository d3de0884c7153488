import { outlinesOf } from '../../../core/form/fromAbove/outlines';
import { gearParts } from '../../../core/form/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { polygon } from '../geometry/paths';
import { boundsOf, middleOf } from '../geometry/spots';
import type { GearOf } from './kinds';
import { Ring } from './Marks';

/** A lamp that belongs to the place: its outline, filled with light, never smaller than a bulb is drawn. */
export function Practical({ gear, plan }: { readonly gear: GearOf<'practical'>; readonly plan: Plan }) {
  const outlines = outlinesOf(gearParts(gear, plan));
  const bounds = boundsOf(outlines.flatMap(({ hull }) => hull));
  return (
    <>
      {bounds && <Ring at={[middleOf(bounds)]} kind="bulb" />}
      <path className="lamp" d={outlines.map(({ hull }) => polygon(hull)).join('')} />
    </>
  );
}
