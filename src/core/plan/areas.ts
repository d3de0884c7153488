import { headingWay } from './runs';
import type { Spot } from './schema/numbers';

/** On an edge is inside: what is drawn along the edge of a deck stands on it. Metres. */
const EDGE_METRES = 1e-6;

/** Whether a place lies on the straight piece between two others. */
function isOnEdge([x, z]: Spot, [ax, az]: Spot, [bx, bz]: Spot): boolean {
  const [dx, dz] = [bx - ax, bz - az];
  const squared = dx * dx + dz * dz;
  const share = squared === 0 ? 0 : Math.min(Math.max(((x - ax) * dx + (z - az) * dz) / squared, 0), 1);
  const [awayX, awayZ] = [ax + dx * share - x, az + dz * share - z];
  return awayX * awayX + awayZ * awayZ <= EDGE_METRES * EDGE_METRES;
}

/** Whether a place lies in an outline of either winding, its edge included unless `edge` is false. */
export function isWithin(outline: readonly Spot[], spot: Spot, edge = true): boolean {
  let inside = false;
  for (let index = 0; index < outline.length; index += 1) {
    const a = outline[index];
    const b = outline[(index + 1) % outline.length];
    if (isOnEdge(spot, a, b)) return edge;
    const crosses = a[1] > spot[1] !== b[1] > spot[1];
    if (crosses && spot[0] < a[0] + ((spot[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside;
  }
  return inside;
}

/**
 * A place in the own frame of a thing that stands at `at` and faces a compass heading: [to its right, to its back],
 * metres, as the thing itself faces −z.
 */
export function inOwnFrame(at: readonly [number, number, number], headingDegrees: number, spot: Spot): Spot {
  const [forwardX, forwardZ] = headingWay(headingDegrees);
  const [dx, dz] = [spot[0] - at[0], spot[1] - at[2]];
  return [dx * -forwardZ + dz * forwardX, -(dx * forwardX + dz * forwardZ)];
}

/** The place of what lies at [to the right, to the back] in the own frame of such a thing: the way back from `inOwnFrame`. */
export function outOfOwnFrame(
  at: readonly [number, number, number],
  headingDegrees: number,
  [right, back]: Spot,
): Spot {
  const [forwardX, forwardZ] = headingWay(headingDegrees);
  return [at[0] - right * forwardZ - back * forwardX, at[2] + right * forwardX - back * forwardZ];
}

/** Area of an outline in square metres, whichever way it winds; what crosses itself counts its loops against each other. */
export function areaOf(outline: readonly Spot[]): number {
  const sum = outline.reduce((total, [x, z], index) => {
    const [nextX, nextZ] = outline[(index + 1) % outline.length];
    return total + x * nextZ - nextX * z;
  }, 0);
  return Math.abs(sum) / 2;
}
