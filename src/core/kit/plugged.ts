import type { Gear } from '../plan/schema/gear';

/** The kinds of gear that a cable may be plugged into. */
export const TAKES_A_PLUG: ReadonlySet<Gear['kind']> = new Set<Gear['kind']>([
  'head',
  'practical',
  'bulb string',
  'generator',
  'distro',
  'outlet',
  'battery',
  'appliance',
  'cart',
  'monitor',
]);
