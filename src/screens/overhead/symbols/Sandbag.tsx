import { gearParts } from '../../../core/form/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { boundsOf, type Spot } from '../geometry/spots';
import { Bean } from './Bean';
import type { GearOf } from './kinds';

/** A bean as long and as wide as the bag, narrow where its strap lies over the leg. */
export function Sandbag({ gear, plan }: { readonly gear: GearOf<'sandbag'>; readonly plan: Plan }) {
  const at: Spot = [gear.at[0], gear.at[2]];
  const bag = gearParts({ ...gear, headingDegrees: 0 }, plan).find(({ name }) => name === 'bag');
  const corners: Spot[] = [];
  for (let k = 0; bag && k < bag.shape.positions.length; k += 3) {
    corners.push([bag.shape.positions[k], bag.shape.positions[k + 2]]);
  }
  const [left, top, right, bottom] = boundsOf(corners) ?? [0, 0, 0, 0];
  return (
    <Bean at={at} headingDegrees={gear.headingDegrees} half={[(right - left) / 2, (bottom - top) / 2]} />
  );
}
