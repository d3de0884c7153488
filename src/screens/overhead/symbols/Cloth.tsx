import { outlinesOf } from '../../../core/form/fromAbove/outlines';
import { gearParts } from '../../../core/form/gear';
import { netOpenness } from '../../../core/form/gear/cloth';
import type { Plan } from '../../../core/plan/schema/plan';
import { polygon } from '../geometry/paths';
import type { GearOf } from './kinds';

const KINDS = { flag: 'cloth', frame: 'cloth diffusion', bounce: 'cloth board' } as const;
const NET = 'cloth net';

/** The cloth's edge, thick, of a net broken: a line where it stands upright, its slant where it is tilted. */
export function Cloth({
  gear,
  plan,
}: {
  readonly gear: GearOf<'flag' | 'frame' | 'bounce'>;
  readonly plan: Plan;
}) {
  const cloth = outlinesOf(gearParts(gear, plan).filter(({ name }) => name === 'cloth'));
  return (
    <path
      className={netOpenness(gear) === null ? KINDS[gear.kind] : NET}
      d={cloth.map(({ hull }) => polygon(hull)).join('')}
    />
  );
}
