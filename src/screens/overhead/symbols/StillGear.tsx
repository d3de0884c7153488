import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { BulbString } from './BulbString';
import { Cable } from './Cable';
import { Cart } from './Cart';
import { Cloth } from './Cloth';
import { DollyPlan } from './DollyPlan';
import { Head } from './Head';
import { Ladder } from './Ladder';
import { Monitor } from './Monitor';
import { PowerBox } from './PowerBox';
import { Practical } from './Practical';
import { Sandbag } from './Sandbag';
import { Stand } from './Stand';
import { Track } from './Track';

/** A piece of gear as it is drawn from above where its record has it, whatever the clock says. */
export function StillGear({ gear, plan }: { readonly gear: Gear; readonly plan: Plan }) {
  switch (gear.kind) {
    case 'stand':
      return <Stand gear={gear} plan={plan} />;
    case 'head':
      return <Head gear={gear} plan={plan} />;
    case 'flag':
    case 'frame':
    case 'bounce':
      return <Cloth gear={gear} plan={plan} />;
    case 'practical':
      return <Practical gear={gear} plan={plan} />;
    case 'bulb string':
      return <BulbString gear={gear} plan={plan} />;
    case 'generator':
    case 'distro':
    case 'outlet':
    case 'battery':
    case 'appliance':
      return <PowerBox gear={gear} />;
    case 'cable':
      return <Cable gear={gear} />;
    case 'track':
      return <Track gear={gear} />;
    case 'dolly':
      return (
        <g transform={`translate(${gear.at[0]} ${gear.at[2]}) rotate(${gear.headingDegrees})`}>
          <DollyPlan gear={gear} />
        </g>
      );
    case 'cart':
      return <Cart gear={gear} />;
    case 'monitor':
      return <Monitor gear={gear} plan={plan} />;
    case 'ladder':
      return <Ladder gear={gear} plan={plan} />;
    case 'sandbag':
      return <Sandbag gear={gear} plan={plan} />;
  }
}
