import { standTop } from '../../../core/form/gear';
import { standClassOf } from '../../../core/form/gear/references';
import type { Plan } from '../../../core/plan/schema/plan';
import { circle, polyline } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { GearOf } from './kinds';
import { Dots, Ring } from './Marks';

/** Three legs at their real spread, the first towards the heading; feet as dots, the column as a ring, its arm. */
export function Stand({ gear, plan }: { readonly gear: GearOf<'stand'>; readonly plan: Plan }) {
  const { footprintMetres, baseTubeMetres } = standClassOf(gear, plan);
  const at: Spot = [gear.at[0], gear.at[2]];
  const feet = [0, 120, 240].map((way) => standing(at, gear.headingDegrees + way, [0, -footprintMetres / 2]));
  const top = standTop(gear).at;
  return (
    <>
      <path className="leg" d={feet.map((foot) => polyline([at, foot])).join('')} />
      <Dots at={feet} kind="foot" />
      {gear.arm && <path className="arm" d={polyline([at, [top[0], top[2]]])} />}
      <Ring at={[at]} kind="column" />
      <path className="tube" d={circle(at, baseTubeMetres / 2)} />
    </>
  );
}
