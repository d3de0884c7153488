import type { Gear } from '../../plan/schema/gear';
import type { Plan } from '../../plan/schema/plan';
import type { PlacedPart } from '../types';
import { blackedParts } from './blacked';
import { bulbStringParts } from './bulbString';
import { cableParts } from './cable';
import { cartParts } from './cart';
import { clothParts } from './cloth';
import { distroParts } from './distro';
import { dollyParts } from './dolly';
import { generatorParts } from './generator';
import { headParts } from './head';
import { ladderParts } from './ladder';
import { monitorParts } from './monitor';
import { powerCaseParts } from './powerCase';
import { practicalParts } from './practical';
import { sandbagParts } from './sandbag';
import { standParts } from './stand';
import { trackParts } from './track';

export { recordsOf } from './references';
export { standTop } from './standTop';

/**
 * A piece of gear as named parts in world coordinates, metres. The form depends on the records that `recordsOf` names
 * and on nothing else. Throws where a reference leads nowhere, which a plan that was read cannot have.
 */
export function gearParts(gear: Gear, plan: Plan): readonly PlacedPart[] {
  const parts = bareParts(gear, plan);
  return gear.blacked ? blackedParts(parts) : parts;
}

function bareParts(gear: Gear, plan: Plan): readonly PlacedPart[] {
  switch (gear.kind) {
    case 'stand':
      return standParts(gear, plan);
    case 'head':
      return headParts(gear, plan);
    case 'flag':
    case 'frame':
    case 'bounce':
      return clothParts(gear, plan);
    case 'practical':
      return practicalParts(gear, plan);
    case 'bulb string':
      return bulbStringParts(gear, plan);
    case 'generator':
      return generatorParts(gear);
    case 'distro':
      return distroParts(gear);
    case 'outlet':
    case 'battery':
    case 'appliance':
      return powerCaseParts(gear);
    case 'cable':
      return cableParts(gear);
    case 'track':
      return trackParts(gear);
    case 'dolly':
      return dollyParts(gear);
    case 'cart':
      return cartParts(gear);
    case 'monitor':
      return monitorParts(gear, plan);
    case 'ladder':
      return ladderParts(gear);
    case 'sandbag':
      return sandbagParts(gear);
  }
}
