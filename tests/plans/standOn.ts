import type { ClearGround } from '../../src/core/clearance/ground/types';
import { BUILT_IN_KIT } from '../../src/core/kit/builtInKit';
import type { Plan } from '../../src/core/plan/schema/plan';

/** A place to try a stand on: a square, how it is turned, and how far off the square's middle, in halves of its side. */
export interface TriedPlace {
  readonly square: number;
  readonly headingDegrees: number;
  readonly off: readonly [number, number];
}

/** The id of the stand that is tried on a place. */
export const triedId = (place: number): string => `tried-${place}`;

/** The plan with a stand of a height more on each place, of the class that clear ground takes for that height. */
export function standsOn(
  plan: Plan,
  { deckMetres, columns, corner, stepMetres }: ClearGround,
  heightMetres: number,
  places: readonly TriedPlace[],
): Plan {
  const lowest = (classes: Plan['kit']['stands']) =>
    classes
      .filter(({ highestMetres }) => highestMetres >= heightMetres)
      .sort((a, b) => a.highestMetres - b.highestMetres)
      .at(0);
  const standClass = lowest(plan.kit.stands) ?? lowest(BUILT_IN_KIT.stands);
  if (!standClass) throw new Error(`standsOn: no stand reaches ${heightMetres} m`);
  const stands = places.map(({ square, headingDegrees, off }, k): Plan['gear'][number] => ({
    id: triedId(k),
    label: `Tried ${k}`,
    kind: 'stand',
    stand: standClass.id,
    at: [
      corner[0] + ((square % columns) + 0.5 + off[0] / 2) * stepMetres,
      deckMetres[square],
      corner[1] + (Math.floor(square / columns) + 0.5 + off[1] / 2) * stepMetres,
    ],
    headingDegrees,
    heightMetres,
  }));
  return {
    ...plan,
    kit: { ...plan.kit, stands: [...plan.kit.stands.filter(({ id }) => id !== standClass.id), standClass] },
    gear: [...plan.gear, ...stands],
  };
}
