import type { Material } from '../../../plan/schema/pieces';
import type { Substance } from '../../types';

const BY_MATERIAL: Readonly<Record<Material, Substance>> = {
  brick: 'brick',
  render: 'render',
  timber: 'boards',
  metal: 'metal',
  concrete: 'concrete',
};

/** What a surface of a material is drawn and lit as; a timber surface is made of boards. */
export const substanceOf = (material: Material): Substance => BY_MATERIAL[material];
