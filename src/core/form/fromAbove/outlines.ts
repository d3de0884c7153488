import type { PlacedPart } from '../types';
import { hullOf, type Spot } from './hull';

/** One named part of a form as it is seen from above. */
export interface Outline {
  readonly name: string;
  readonly hull: readonly Spot[];
}

/** The outline from above of each named part; parts of one name are outlined together, in the order they come. */
export function outlinesOf(parts: readonly PlacedPart[]): Outline[] {
  const spots = new Map<string, Spot[]>();
  for (const part of parts) {
    const known = spots.get(part.name) ?? [];
    spots.set(part.name, known);
    for (const spot of spotsOf(part)) known.push(spot);
  }
  return [...spots].map(([name, points]) => ({ name, hull: hullOf(points) }));
}

function spotsOf({ shape, worldFromPart: m }: PlacedPart): Spot[] {
  const { positions } = shape;
  const spots: Spot[] = [];
  for (let i = 0; i + 2 < positions.length; i += 3) {
    const [x, y, z] = [positions[i], positions[i + 1], positions[i + 2]];
    spots.push(m ? [m[0] * x + m[1] * y + m[2] * z + m[3], m[8] * x + m[9] * y + m[10] * z + m[11]] : [x, z]);
  }
  return spots;
}
