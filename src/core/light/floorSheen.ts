import { dot, length, scale, UP, type Vec3 } from '../form/build/vector';
import type { Spot } from '../plan/schema/numbers';
import { wetnessAt } from '../plan/wetness';
import { fresnel } from './fresnel';
import { lampLight } from './lampLight';
import type { LightScene, SceneLamp } from './lightScene';
import { lobe } from './microfacet';
import { sourceVector } from './sourceLight';
import { DECK_SKINS } from './wetness';

/** A face that looks large from the deck is drawn out by half of that, as slopes of half as much would draw it. */
const spreadOf = ({ reachMetres }: SceneLamp, metres: number): number => reachMetres / metres / 4;

/**
 * What a level deck mirrors of the lamps towards an eye, cd/m², as a mean over its skins: bare ground, film and standing
 * water, each by its slopes and by Fresnel. A lamp's own size is taken as if the water's slopes were as much wider.
 * @param toEye unit vector
 *
 * Source: [microfacets], [water-reflectance]
 */
export function floorSheen(scene: LightScene, place: Vec3, toEye: Vec3): number {
  const spot: Spot = [place[0], place[2]];
  const skins = DECK_SKINS[wetnessAt(scene.plan, spot)];
  let luminance = 0;
  for (const lamp of scene.lamps) {
    const light = lampLight(scene, lamp, place, { facing: UP }, true);
    if (!light) continue;
    const ray = sourceVector(light);
    const lux = length(ray);
    if (lux === 0) continue;
    const way = scale(ray, 1 / lux);
    if (dot(way, UP) <= 0) continue;
    const spread = spreadOf(lamp, light.metres);
    for (const { share, slope, index } of skins) {
      const { perLux, facetCosine } = lobe(UP, way, toEye, Math.sqrt(slope * slope + spread * spread));
      luminance += share * lux * perLux * fresnel(facetCosine, index).unpolarised;
    }
  }
  return luminance;
}
