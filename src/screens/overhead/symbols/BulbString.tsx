import { bulbPlaces } from '../../../core/form/gear/bulbString';
import { headClassOf } from '../../../core/form/gear/references';
import type { Plan } from '../../../core/plan/schema/plan';
import { polyline } from '../geometry/paths';
import type { Spot } from '../geometry/spots';
import type { GearOf } from './kinds';
import { Ring } from './Marks';

/** The wire as it runs from above (its sag is upright, so that it is straight here) and each bulb where it hangs. */
export function BulbString({ gear, plan }: { readonly gear: GearOf<'bulb string'>; readonly plan: Plan }) {
  const bulbs = bulbPlaces(gear, headClassOf(gear, plan).size).map(([x, , z]): Spot => [x, z]);
  return (
    <>
      <path
        className="hair"
        d={polyline([
          [gear.from[0], gear.from[2]],
          [gear.to[0], gear.to[2]],
        ])}
      />
      <Ring at={bulbs} kind="bulb" />
    </>
  );
}
