import type { Spot } from '../../plan/schema/numbers';
import { AT_ORIGIN } from '../build/placement';
import { length, mix, subtract, type Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { ownPart, placeParts } from './part';
import type { GearOf } from './references';
import { addPipe } from './rounds';

/** Tightest bend that a cable is laid in. Source: common practice, no source */
const BEND_METRES = 0.25;
/** A path of more points than this is a curve as it is: its corners are left. */
const LONGEST_ROUNDED = 20;
const LONGEST_SIX_SIDED = 60;

/** A cable lying on the height of its base along its path, its corners rounded. World coordinates. */
export function cableParts(cable: GearOf<'cable'>): PlacedPart[] {
  const radius = cable.diameterMetres / 2;
  const path = cablePath(cable.path, cable.baseMetres + radius);
  return placeParts(
    [
      ownPart('cable', { substance: 'rubber' }, (builder) => {
        addPipe(builder, path, radius, path.length > LONGEST_SIX_SIDED ? 4 : 6);
      }),
    ],
    AT_ORIGIN,
  );
}

/** The axis of a cable: the drawn spots at a height, each corner replaced by a short curve of three points. */
export function cablePath(spots: readonly Spot[], height: number): Vec3[] {
  const points = spots.map(([x, z]): Vec3 => [x, height, z]);
  if (points.length > LONGEST_ROUNDED) return points;
  return points.flatMap((point, k) => {
    const [before, after] = [points[k - 1], points[k + 1]];
    if (before === undefined || after === undefined) return [point];
    const entry = towards(point, before);
    const exit = towards(point, after);
    return [entry, mix(mix(entry, point, 0.5), mix(point, exit, 0.5), 0.5), exit];
  });
}

/** A point on the way from a corner to its neighbour, at most half the way. */
function towards(corner: Vec3, neighbour: Vec3): Vec3 {
  const run = length(subtract(neighbour, corner));
  return run < 1e-6 ? corner : mix(corner, neighbour, Math.min(BEND_METRES / run, 0.5));
}
