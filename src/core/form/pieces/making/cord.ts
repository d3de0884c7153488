import { cos, sin } from '../../../units/steadyMath';
import { ShapeBuilder, type ShapeLook } from '../../build/shapeBuilder';
import { add, cross, frameAround, scale, subtract, unit, type Vec3 } from '../../build/vector';
import type { PartShape } from '../../types';

const SIDES = 6;

/** A round cord through points, as one closed solid without seams; each stretch is noted as a tube. */
export function cord(points: readonly Vec3[], radius: number, look: ShapeLook): PartShape {
  const builder = new ShapeBuilder();
  const last = points.length - 1;
  const [side] = frameAround(unit(subtract(points[last], points[0])));
  const rows = points.map((point, k) => {
    const along = unit(subtract(points[Math.min(k + 1, last)], points[Math.max(k - 1, 0)]));
    const up = unit(cross(along, side));
    return Array.from({ length: SIDES }, (_, corner) => {
      const turn = (2 * Math.PI * corner) / SIDES;
      const out = add(scale(side, cos(turn)), scale(up, sin(turn)));
      return builder.corner(add(point, scale(out, radius)));
    });
  });
  for (let row = 0; row < last; row += 1) {
    for (let k = 0; k < SIDES; k += 1) {
      const next = (k + 1) % SIDES;
      builder.triangle(rows[row][k], rows[row][next], rows[row + 1][next]);
      builder.triangle(rows[row][k], rows[row + 1][next], rows[row + 1][k]);
    }
  }
  for (let k = 1; k + 1 < SIDES; k += 1) {
    builder.triangle(rows[0][0], rows[0][k + 1], rows[0][k]);
    builder.triangle(rows[last][0], rows[last][k], rows[last][k + 1]);
  }
  const tubes = points.slice(1).map((to, k) => ({ from: points[k], to, radius }));
  return { ...builder.finish(look), tubes };
}
