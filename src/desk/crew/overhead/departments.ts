import { standUnder } from '../../../core/plan/edits/anchorOf';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Department } from '../crewStore';

/** Somebody's own: a department, without the word for all of them. */
export type OneDepartment = Exclude<Department, 'all'>;

const OF_KIND: Readonly<Record<Exclude<Gear['kind'], 'stand'>, OneDepartment>> = {
  head: 'light',
  practical: 'light',
  'bulb string': 'light',
  flag: 'grip',
  frame: 'grip',
  bounce: 'grip',
  ladder: 'grip',
  sandbag: 'grip',
  generator: 'power',
  distro: 'power',
  outlet: 'power',
  battery: 'power',
  appliance: 'power',
  cable: 'power',
  track: 'camera',
  dolly: 'camera',
  cart: 'camera',
  monitor: 'camera',
};

/** Who brings and sets a piece of gear: a stand is with the lamp that it carries, any other is grip's. */
export function departmentOf(plan: Plan, gear: Gear): OneDepartment {
  if (gear.kind !== 'stand') return OF_KIND[gear.kind];
  return plan.gear.some((other) => other.kind === 'head' && standUnder(other) === gear.id) ? 'light' : 'grip';
}
