import { gearParts } from '../../../core/form/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { outlinesOf } from '../geometry/outlines';
import { polygon } from '../geometry/paths';
import type { GearOf } from './kinds';

const KINDS = { flag: 'cloth', frame: 'cloth diffusion', bounce: 'cloth board' } as const;

/** The cloth's edge, thick: a line where it stands upright, its slant where it is tilted. */
export function Cloth({
  gear,
  plan,
}: {
  readonly gear: GearOf<'flag' | 'frame' | 'bounce'>;
  readonly plan: Plan;
}) {
  const cloth = outlinesOf(gearParts(gear, plan).filter(({ name }) => name === 'cloth'));
  return <path className={KINDS[gear.kind]} d={cloth.map(({ hull }) => polygon(hull)).join('')} />;
}
