import { cross, dot, length, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import { atan2 } from '../units/steadyMath';

/**
 * The light of an even diffuse polygon at a place, as a vector: times a unit normal it is the lux of a surface there,
 * exactly, as long as all of the polygon is before that surface. Along each edge goes the angle that it takes up at the
 * place: V = L/2 Σ γᵢ (rᵢ × rᵢ₊₁) ÷ |rᵢ × rᵢ₊₁|. It points to the polygon whichever way round the corners go.
 * `luminance`: cd/m².
 *
 * Source: [polygon-light]
 */
export function polygonLight(corners: readonly Vec3[], luminance: number, point: Vec3): Vec3 {
  const sum: [number, number, number] = [0, 0, 0];
  const ways = corners.map((corner) => unit(subtract(corner, point)));
  ways.forEach((way, k) => {
    const next = ways[(k + 1) % ways.length];
    const across = cross(way, next);
    const sine = length(across);
    if (sine < 1e-12) return;
    const angle = atan2(sine, dot(way, next));
    for (let axis = 0; axis < 3; axis += 1) sum[axis] += (across[axis] / sine) * angle;
  });
  const towards = ways.reduce((total, way) => total + dot(way, sum), 0);
  return scale(sum, (towards < 0 ? -luminance : luminance) / 2);
}
