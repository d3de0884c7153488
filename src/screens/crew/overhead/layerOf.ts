import type { Gear } from '../../../core/plan/schema/gear';
import type { RoofLayer } from '../../../desk/crew/overhead/overheadStore';

/** The layer that a piece of gear is left out with: drawn, named and tapped alike. */
export const layerOf = ({ kind }: Pick<Gear, 'kind'>): RoofLayer =>
  kind === 'cable' ? 'cables' : kind === 'track' || kind === 'dolly' ? 'cameras' : 'stands';
