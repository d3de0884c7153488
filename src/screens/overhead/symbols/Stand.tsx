import { standTop } from '../../../core/form/gear';
import { standClassOf } from '../../../core/form/gear/references';
import { legBags, standFeet } from '../../../core/form/gear/stand';
import type { Plan } from '../../../core/plan/schema/plan';
import { circle, polyline } from '../geometry/paths';
import type { Spot } from '../geometry/spots';
import { Bean } from './Bean';
import type { GearOf } from './kinds';
import { Dots, Ring } from './Marks';

/** Three legs at their real spread, the first towards the heading, bags over them; feet as dots, column, arm. */
export function Stand({ gear, plan }: { readonly gear: GearOf<'stand'>; readonly plan: Plan }) {
  const standClass = standClassOf(gear, plan);
  const at: Spot = [gear.at[0], gear.at[2]];
  const feet = standFeet(gear, standClass).map(([x, , z]): Spot => [x, z]);
  const top = standTop(gear).at;
  return (
    <>
      <path className="leg" d={feet.map((foot) => polyline([at, foot])).join('')} />
      {legBags(gear, standClass).map((bag) => (
        <Bean
          key={bag.at.join(' ')}
          at={[bag.at[0], bag.at[2]]}
          headingDegrees={bag.headingDegrees}
          half={bag.half}
        />
      ))}
      <Dots at={feet} kind="foot" />
      {gear.arm && <path className="arm" d={polyline([at, [top[0], top[2]]])} />}
      <Ring at={[at]} kind="column" />
      <path className="tube" d={circle(at, standClass.baseTubeMetres / 2)} />
    </>
  );
}
