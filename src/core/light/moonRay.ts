import { add, scale, type Vec3 } from '../form/build/vector';
import { partsAlong, passingShare } from './blockers';
import type { LightScene } from './lightScene';
import { LEAST_LUX } from './sourceLight';

/** Farther off than this nothing of a plan stands in the moon's light, metres. */
const FAR_METRES = 2000;
/** Off the surface that is lit, metres. */
const OFF_METRES = 0.002;

/**
 * What of the moon gets to a place past the set and the skyline, as long as its lux on a surface that faces it; null
 * where the night has none, or it is in the shade. Its disc of half a degree counts as a point: shadows have hard edges.
 */
export function moonRay(scene: LightScene, point: Vec3, ignore?: ReadonlySet<string>): Vec3 | null {
  const { moon } = scene.ambient;
  if (!moon || moon.lux < LEAST_LUX) return null;
  const far = add(point, scale(moon.way, FAR_METRES));
  const near = add(point, scale(moon.way, OFF_METRES));
  const { forms } = scene.blockers.stage;
  const parts = partsAlong(scene.blockers, near, far, 0, ({ item }) => ignore?.has(forms[item].id) ?? false);
  const share = passingShare(parts, near, far);
  return share === 0 ? null : scale(moon.way, moon.lux * share);
}
