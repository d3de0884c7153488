import { footprintOf } from '../../form/fromAbove/footprint';
import { clothSheet } from '../../form/gear/cloth';
import { standClassOf } from '../../form/gear/references';
import { standFeet } from '../../form/gear/stand';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { HEADROOM_METRES, lying } from '../../plan/walkWays/obstacles';

/** What gear takes of a floor at a height that somebody would walk into: convex outlines, wound as walkWays has them. */
export function gearOutlines(plan: Plan, floorMetres: number): readonly (readonly Spot[])[] {
  const box = (
    thing: { readonly at: readonly [number, number, number]; readonly headingDegrees: number },
    width: number,
    depth: number,
  ): readonly Spot[] =>
    lying(
      { at: [...thing.at], headingDegrees: thing.headingDegrees },
      [-width / 2, width / 2],
      [-depth / 2, depth / 2],
    );
  const isHere = (y: number): boolean => Math.abs(y - floorMetres) < 0.5;
  return plan.gear.flatMap((gear): readonly (readonly Spot[])[] => {
    switch (gear.kind) {
      case 'stand':
        return isHere(gear.at[1])
          ? [standFeet(gear, standClassOf(gear, plan)).map(([x, , z]): Spot => [x, z])]
          : [];
      case 'generator':
      case 'distro':
      case 'cart':
        return isHere(gear.at[1]) ? [box(gear, gear.size[0], gear.size[2])] : [];
      case 'dolly':
        return gear.rides === undefined && isHere(gear.at[1]) ? [box(gear, gear.size[0], gear.size[2])] : [];
      case 'ladder':
        return isHere(gear.at[1])
          ? [footprintOf({ section: 'gear', record: gear }, plan).outline.map(([x, z]): Spot => [x, z])]
          : [];
      case 'flag':
      case 'frame':
      case 'bounce': {
        const { middle, right, up } = clothSheet(gear, plan);
        const lowest = middle[1] - Math.abs(up[1]) - Math.abs(right[1]);
        const highest = middle[1] + Math.abs(up[1]) + Math.abs(right[1]);
        if (lowest > floorMetres + HEADROOM_METRES || highest < floorMetres) return [];
        return [
          [
            [middle[0] - right[0], middle[2] - right[2]],
            [middle[0] + right[0], middle[2] + right[2]],
          ],
        ];
      }
      default:
        return [];
    }
  });
}
