import { headOf } from '../../../core/kit/inKit';
import { type Item, kindOf } from '../../../core/plan/items';
import type { Kit } from '../../../core/plan/schema/kit';
import type { IconName } from './icons';

const OF_KIND: Readonly<Record<string, IconName>> = {
  performer: 'performer',
  stand: 'stand',
  head: 'head',
  flag: 'flag',
  frame: 'frame',
  bounce: 'bounce',
  practical: 'practical',
  'bulb string': 'bulbs',
  generator: 'generator',
  distro: 'distro',
  outlet: 'outlet',
  battery: 'battery-box',
  appliance: 'appliance',
  cable: 'cable',
  track: 'track',
  dolly: 'dolly',
  cart: 'cart',
  monitor: 'monitor',
  ladder: 'ladder',
  sandbag: 'sandbag',
  deck: 'deck',
  parapet: 'parapet',
  wall: 'wall',
  fence: 'fence',
  'stair house': 'stairhouse',
  shed: 'shed',
  tank: 'tank',
  post: 'post',
  line: 'line',
  chimney: 'chimney',
  box: 'box',
  riser: 'riser',
  pane: 'pane',
  chart: 'chart',
  'skyline block': 'block',
  model: 'model',
};

const OF_FORM: Readonly<Record<Kit['heads'][number]['form'], IconName>> = {
  spot: 'spot',
  fresnel: 'fresnel',
  panel: 'panel',
  tube: 'tube',
  bulb: 'practical',
  bulkhead: 'bulkhead',
  sign: 'sign',
  street: 'street',
};

/** The icon of a kind of item, whatever its class. */
export const iconOfKind = (kind: string): IconName => OF_KIND[kind] ?? 'box';

/** The icon of an item: a lamp's is that of its class, a mirror's is not a window's. */
export function iconOfItem(kit: Kit, item: Item): IconName {
  const { record } = item;
  if ('head' in record && typeof record.head === 'string') {
    const form = headOf(kit, record.head)?.form;
    if (form && kindOf(item) !== 'bulb string') return OF_FORM[form];
  }
  if ('finish' in record && record.finish === 'mirror') return 'mirror';
  return iconOfKind(kindOf(item));
}
