import { outlinesOf } from '../../../core/form/fromAbove/outlines';
import { gearParts } from '../../../core/form/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { polygon } from '../geometry/paths';
import type { GearOf } from './kinds';

/** A monitor: its case, its screen the thick edge, and its foot. */
export function Monitor({ gear, plan }: { readonly gear: GearOf<'monitor'>; readonly plan: Plan }) {
  const outlines = outlinesOf(gearParts(gear, plan));
  const path = (wanted: (name: string) => boolean): string =>
    outlines
      .filter(({ name }) => wanted(name))
      .map(({ hull }) => polygon(hull))
      .join('');
  return (
    <>
      <path className="item" d={path((name) => name !== 'screen')} />
      <path className="screen" d={path((name) => name === 'screen')} />
    </>
  );
}
