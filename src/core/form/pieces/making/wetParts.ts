import type { Ground, WetArea } from '../../../plan/schema/ground';
import type { Spot } from '../../../plan/schema/numbers';
import { boundsOf } from '../../../plan/walkWays/planar';
import { isMirroring } from '../../../plan/wetness';
import { cutByRings, type Pieces } from './slabs';

/** More crossings than this among the outlines over one deck are no wetting down that anybody draws. */
const MOST_CROSSINGS = 2000;

/** The areas that reach over an outline, by the rectangles around them. */
export function areasOver(ground: Ground, outline: readonly Spot[]): readonly WetArea[] {
  if (!ground.areas) return [];
  const [left, back, right, front] = boundsOf(outline);
  return ground.areas.filter((area) => {
    const [areaLeft, areaBack, areaRight, areaFront] = boundsOf(area.outline);
    return areaLeft < right && areaRight > left && areaBack < front && areaFront > back;
  });
}

/** A deck's top in two: what mirrors, and what does not. */
export interface WetParts {
  readonly mirroring: Pieces;
  readonly others: Pieces;
}

/**
 * How areas part the top of a deck into what mirrors and what does not; *all* or *none* of it where they do not part it;
 * *too many crossings* where outlines cross so often that the deck is left as the ground is.
 */
export function wetPartsOf(
  ground: Ground,
  outline: readonly Spot[],
  holes: readonly (readonly Spot[])[],
): WetParts | 'all' | 'none' | 'too many crossings' {
  const whole = isMirroring(ground.wetness);
  const over = areasOver(ground, outline);
  if (over.every(({ wetness }) => isMirroring(wetness) === whole)) return whole ? 'all' : 'none';
  const first = 1 + holes.length;
  const kindOf = (inside: readonly boolean[]): boolean | null => {
    if (!inside[0] || holes.some((_, k) => inside[1 + k])) return null;
    const uppermost = over.findLast((_, k) => inside[first + k]);
    return uppermost ? isMirroring(uppermost.wetness) : whole;
  };
  const cut = cutByRings([outline, ...holes, ...over.map((area) => area.outline)], kindOf, MOST_CROSSINGS);
  if (!cut) return 'too many crossings';
  const [mirroring, others] = [cut.get(true) ?? [], cut.get(false) ?? []];
  if (mirroring.length === 0) return 'none';
  return others.length === 0 ? 'all' : { mirroring, others };
}
