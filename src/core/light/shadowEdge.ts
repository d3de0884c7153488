import { length, subtract, type Vec3 } from '../form/build/vector';
import { cos } from '../units/steadyMath';
import type { LightScene } from './lightScene';
import type { SourceLight } from './sourceLight';

/**
 * How far before a face the edge is thought of whose shadow falls on it, metres: about where a flag, a hat's brim or
 * a raised hand is that cuts into a close light. An estimate, no source.
 */
export const SHADOW_EDGE_METRES = 0.5;

/** Seen from its edge a face still is as wide as this share of itself. */
const THINNEST = 0.02;

/** The sides of a square as large as what shines looks from a place: of a cloth, or of the lamp at that distance. */
function acrossMetres(scene: LightScene, point: Vec3, source: SourceLight): number {
  const facing = Math.max(THINNEST, cos((source.offAxisDegrees * Math.PI) / 180));
  const cloth = scene.cloths.find(({ id }) => id === source.itemId);
  if (cloth) return Math.sqrt(cloth.size[0] * cloth.size[1] * facing);
  const off = ({ face }: LightScene['lamps'][number]): number =>
    Math.abs(length(subtract(face.middle, point)) - source.metres);
  const [lamp] = scene.lamps
    .filter(({ form }) => form.itemId === source.itemId)
    .sort((a, b) => off(a) - off(b));
  if (!lamp) return 0;
  const { outline, halfWidth, halfHeight } = lamp.face;
  return 2 * Math.sqrt(halfWidth * halfHeight * (outline === 'ball' ? 1 : facing));
}

/**
 * How wide the edge of a shadow is at a place, metres: from full light to full shade, square to an edge that stands
 * `SHADOW_EDGE_METRES` before it on the straight way to what shines. By similar triangles it is the size of what
 * shines times the way behind the edge over the way before it. The size is the geometric mean of width and height as
 * they look from the place, so that of a long tube an edge along it is sharper and one across it softer. Of a string it
 * is one bulb's. Null where what shines is no farther off than the edge.
 */
export function shadowEdge(scene: LightScene, point: Vec3, source: SourceLight): number | null {
  const before = source.metres - SHADOW_EDGE_METRES;
  if (before <= 0) return null;
  return (acrossMetres(scene, point, source) * SHADOW_EDGE_METRES) / before;
}
