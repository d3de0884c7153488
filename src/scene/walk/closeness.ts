import type { Vec3 } from '../../core/form/build/vector';
import type { Ray } from '../../core/sight/rays';

const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/**
 * Where a ray passes a straight piece most nearly: how far along the ray, and how far away it is there, metres.
 * The ray's direction is a unit vector; what lies behind its start counts from the start.
 */
export function nearestOnSegment(
  { origin, direction }: Ray,
  from: Vec3,
  to: Vec3,
): readonly [along: number, away: number] {
  const piece: Vec3 = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const start: Vec3 = [from[0] - origin[0], from[1] - origin[1], from[2] - origin[2]];
  const lean = dot(piece, direction);
  const size = dot(piece, piece);
  const square = size - lean * lean;
  // Of a piece along the ray, or of none at all, the start will do.
  const share =
    square > 1e-12 * Math.max(1, size)
      ? Math.min(1, Math.max(0, (lean * dot(start, direction) - dot(piece, start)) / square))
      : 0;
  const there: Vec3 = [start[0] + piece[0] * share, start[1] + piece[1] * share, start[2] + piece[2] * share];
  const along = Math.max(0, dot(there, direction));
  return [
    along,
    Math.hypot(
      there[0] - direction[0] * along,
      there[1] - direction[1] * along,
      there[2] - direction[2] * along,
    ),
  ];
}

/** Where on an upright line through [x, z] a ray passes most nearly: the height, metres; null when it looks along it. */
export function heightOnUpright(
  { origin, direction }: Ray,
  [x, z]: readonly [number, number],
): number | null {
  const level = direction[0] * direction[0] + direction[2] * direction[2];
  // Nearer to upright than some ten degrees, a pixel would mean metres.
  if (level < 0.03) return null;
  const along = ((x - origin[0]) * direction[0] + (z - origin[2]) * direction[2]) / level;
  return along > 0 ? origin[1] + along * direction[1] : null;
}

/** Where a ray meets the level plane at a height; null when it does not, or farther than `most` metres away. */
export function onLevel({ origin, direction }: Ray, height: number, most = 400): Vec3 | null {
  const along = (height - origin[1]) / direction[1];
  if (!(along > 0) || along > most) return null;
  return [origin[0] + along * direction[0], height, origin[2] + along * direction[2]];
}
