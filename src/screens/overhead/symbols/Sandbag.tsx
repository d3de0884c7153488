import { gearParts } from '../../../core/form/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { polyline } from '../geometry/paths';
import { boundsOf, type Spot, standing } from '../geometry/spots';
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
  const [half, deep] = [(right - left) / 2, (bottom - top) / 2];
  const own = (x: number, z: number): string =>
    standing(at, gear.headingDegrees, [x * half, z * deep]).join(' ');
  return (
    <>
      <path
        className="item bag"
        d={
          `M${own(-0.95, 0)}C${own(-1.05, -1.3)} ${own(-0.3, -1.1)} ${own(0, -0.6)}` +
          `C${own(0.3, -1.1)} ${own(1.05, -1.3)} ${own(0.95, 0)}` +
          `C${own(1.05, 1.3)} ${own(0.3, 1.1)} ${own(0, 0.8)}` +
          `C${own(-0.3, 1.1)} ${own(-1.05, 1.3)} ${own(-0.95, 0)}Z`
        }
      />
      <path
        className="hair"
        d={polyline([
          standing(at, gear.headingDegrees, [0, -deep * 0.6]),
          standing(at, gear.headingDegrees, [0, deep * 0.8]),
        ])}
      />
    </>
  );
}
