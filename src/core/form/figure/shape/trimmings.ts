import { cos, pow } from '../../../units/steadyMath';
import type { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';
import { loft, type Ring } from './loft';
import { onSection, type Section, sectionAt } from './sections';

/** A collar about the neck: sections by bearing, standing `rise` high and turned down by `fall`, open at the front. */
export function addCollar(
  builder: ShapeBuilder,
  foot: Section,
  look: { readonly rise: number; readonly fall: number; readonly gap: number; readonly thick: number },
): void {
  const steps = 10;
  const closed = look.gap === 0;
  const rings = Array.from({ length: closed ? steps : steps + 1 }, (_, k): Ring => {
    const bearing = ((look.gap + (360 - 2 * look.gap) * (k / steps)) * Math.PI) / 180;
    const [x, y, z] = onSection(foot, bearing);
    const ahead = (1 + cos(bearing)) / 2;
    const top = y + look.rise * (1 - 0.35 * ahead);
    const out = (by: number): Vec3 => [
      x * (1 + by / foot.half),
      0,
      z + (by * (z - (foot.z ?? 0))) / foot.front,
    ];
    const [inner, outer, edge] = [out(-look.thick), out(look.thick), out(look.thick * 2 + look.fall * 0.3)];
    return [
      [inner[0], y - look.thick, inner[2]],
      [inner[0], top, inner[2]],
      [outer[0], top, outer[2]],
      [edge[0], top - look.fall, edge[2]],
      [outer[0], y - look.thick, outer[2]],
    ];
  });
  loft(builder, rings, closed);
}

/** A strip's two edges at a share of the way up it. */
export type Edges = (share: number) => readonly [from: number, to: number];

/** A strip laid on the front of the chest between two heights, `lift` proud of the cloth. */
export function addStrip(
  builder: ShapeBuilder,
  chest: readonly Section[],
  [low, high]: readonly [number, number],
  edges: Edges,
  lift: number,
): void {
  // A row at each of the chest's own, so that the strip nowhere sinks into the cloth.
  const heights = [low, ...chest.map(({ y }) => y).filter((y) => y > low + 0.01 && y < high - 0.005), high];
  const rings = heights.map((y): Ring => {
    const section = sectionAt(chest, y);
    const at = (x: number, proud: number): Vec3 => {
      const across = pow(Math.min(0.98, Math.abs(x) / section.half), section.square ?? 2);
      return [x, y, (section.z ?? 0) - section.front * pow(1 - across, 1 / (section.square ?? 2)) - proud];
    };
    const [from, to] = edges((y - low) / (high - low));
    return [at(from, lift), at((from + to) / 2, lift), at(to, lift), at(to, -0.012), at(from, -0.012)];
  });
  loft(builder, rings);
}
