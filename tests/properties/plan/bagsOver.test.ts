import { fc, test } from '@fast-check/vitest';
import { expect } from 'vitest';
import { bagsOver } from '../../../src/core/plan/edits/entourage';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { fullRoof } from '../../plans/fullRoof';

const ROOF = fullRoof();
type Stand = Extract<Gear, { readonly kind: 'stand' }>;
type Bag = Extract<Gear, { readonly kind: 'sandbag' }>;
const [stand] = ROOF.gear.filter((gear): gear is Stand => gear.kind === 'stand');
const [bag] = ROOF.gear.filter((gear): gear is Bag => gear.kind === 'sandbag');

// So few places that some are as near to one stand as to another.
const metres = fc.constantFrom(0, 0.25, 0.5, 1, 1.5);
const place = fc.tuple(metres, fc.constantFrom(0, 0.5, 1), metres);

/** The stand that a bag lies over: the nearest of those whose circle it lies in, the first of two as near. */
function standUnder(plan: Plan, { at }: Bag): string | null {
  let nearest: Stand | null = null;
  const awayFrom = (other: Stand): number => Math.hypot(at[0] - other.at[0], at[2] - other.at[2]);
  for (const gear of plan.gear) {
    if (gear.kind !== 'stand' || Math.abs(at[1] - gear.at[1]) > 0.6) continue;
    if (awayFrom(gear) > (gear.spreadMetres ?? 0) / 2) continue;
    if (!nearest || awayFrom(gear) < awayFrom(nearest)) nearest = gear;
  }
  return nearest?.id ?? null;
}

test.prop([
  fc.array(fc.tuple(place, fc.constantFrom(0.6, 1.2, 2.4)), { minLength: 1, maxLength: 6 }),
  fc.array(place, { maxLength: 6 }),
])('each bag lies over the legs of one stand at most, the nearest', (stands, bags) => {
  const gear: Gear[] = [
    ...stands.map(([at, spreadMetres], k): Gear => ({ ...stand, id: `stand-${k}`, at, spreadMetres })),
    ...bags.map((at, k): Gear => ({ ...bag, id: `bag-${k}`, at })),
  ];
  const plan: Plan = { ...ROOF, gear };
  for (const { id } of gear) {
    const over = gear.flatMap((each) =>
      each.kind === 'sandbag' && standUnder(plan, each) === id ? [each.id] : [],
    );
    expect(bagsOver(plan, id)).toEqual(over);
  }
});
