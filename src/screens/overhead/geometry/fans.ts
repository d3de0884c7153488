import { type Spot, standing, towards } from './spots';

/** How a cone of light lies on the plan: round its apex, or a fan of half an angle to each side of its heading. */
export type Spread = { readonly round: true } | { readonly round: false; readonly halfDegrees: number };

const RADIANS = Math.PI / 180;

/**
 * What of the compass a cone takes in: a cone of half angle a whose axis is tilted by t has its outermost directions
 * at asin(sin a / cos t) to each side, since its silhouette seen from above are the two upright planes that touch it.
 * When the cone holds the plumb line, it takes in the whole compass.
 */
export function spreadOf(coneDegrees: number, tiltDegrees: number): Spread {
  const half = coneDegrees / 2;
  const sine = Math.sin(half * RADIANS);
  const level = Math.cos(tiltDegrees * RADIANS);
  if (half >= 90 || sine >= level) return { round: true };
  return { round: false, halfDegrees: Math.asin(sine / level) / RADIANS };
}

/** Path of a fan: apex, one edge, arc, back. Metres. */
export function fanPath(apex: Spot, headingDegrees: number, halfDegrees: number, reach: number): string {
  const [fromX, fromZ] = standing(apex, headingDegrees - halfDegrees, [0, -reach]);
  const [toX, toZ] = standing(apex, headingDegrees + halfDegrees, [0, -reach]);
  const large = halfDegrees > 90 ? 1 : 0;
  return `M${apex[0]} ${apex[1]}L${fromX} ${fromZ}A${reach} ${reach} 0 ${large} 1 ${toX} ${toZ}Z`;
}

/** Both edges of a field of view, far enough to leave any sheet: half a turn to each side of `forward`. */
export function edgesOf(apex: Spot, headingDegrees: number, halfDegrees: number, far: number): [Spot, Spot] {
  const edge = (side: number): Spot => {
    const [x, z] = towards(headingDegrees + side * halfDegrees);
    return [apex[0] + x * far, apex[1] + z * far];
  };
  return [edge(-1), edge(1)];
}
