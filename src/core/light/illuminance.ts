import { add, dot, length, UP, unit, type Vec3 } from '../form/build/vector';
import { acos } from '../units/steadyMath';
import { ambientLux, rayLux } from './ambient';
import { type LightAt, lightAt } from './lightAt';
import type { LightScene } from './lightScene';
import { type LightQuestion, type SourceLight, sourceLux, sourceVector } from './sourceLight';

/** What one source gives to a surface. */
export interface Share {
  readonly itemId: string;
  readonly lux: number;
  readonly metres: number;
  /** Off the surface's normal. */
  readonly incidenceDegrees: number;
  /** Off the lamp's axis or the cloth's normal. */
  readonly offAxisDegrees: number;
  /** 1 with nothing in the way, 0 in the shade. */
  readonly visible: number;
}

/** The light on a surface. */
export interface Illuminance {
  /** All of it, sky, streets and moon included. */
  readonly lux: number;
  /** Of sky, streets and moon. */
  readonly ambientLux: number;
  /** Of lamps and cloths, strongest first; those in the shade too. */
  readonly shares: readonly Share[];
}

/**
 * Unit vector towards the light that gives most: an item with all of its lamps, as a string of bulbs, or the moon;
 * straight up where nothing gives any.
 */
export function strongestWay({ sources, moon }: LightAt): Vec3 {
  const byItem = new Map<string, Vec3>();
  for (const source of sources)
    byItem.set(source.itemId, add(byItem.get(source.itemId) ?? [0, 0, 0], sourceVector(source)));
  const best = [...byItem.values()].reduce<Vec3>(
    (most, next) => (length(next) > length(most) ? next : most),
    moon ?? [0, 0, 0],
  );
  return length(best) > 0 ? unit(best) : UP;
}

/** Lux of what is no lamp on a surface by its unit normal: sky, streets and moon. */
export const nightLux = ({ ambient, moon }: LightAt, normal: Vec3): number =>
  ambientLux(ambient, normal) + rayLux(moon, normal);

/** All lux on a surface by its unit normal, sky, streets and moon included. */
export const luxOn = (light: LightAt, normal: Vec3): number =>
  light.sources.reduce((sum, source) => sum + sourceLux(source, normal), nightLux(light, normal));

/** All lux on the side of an upright cylinder, averaged round it, sky, streets and moon included. */
export function cylindricalLux({ sources, ambient, moon }: LightAt): number {
  let lux = ambientLux(ambient, [1, 0, 0]);
  if (moon) lux += length([moon[0], 0, moon[2]]) / Math.PI;
  for (const { rays } of sources) for (const ray of rays) lux += length([ray[0], 0, ray[2]]) / Math.PI;
  return lux;
}

function shareOf(source: SourceLight, normal: Vec3): Share {
  const { itemId, metres, offAxisDegrees, visible } = source;
  const cosine = dot(unit(sourceVector(source)), normal);
  return {
    itemId,
    lux: sourceLux(source, normal),
    metres,
    incidenceDegrees: source.rays.length > 0 ? (acos(cosine) * 180) / Math.PI : 90,
    offAxisDegrees,
    visible,
  };
}

/** The light on a surface with this unit normal at a place, of what was found there. */
export function onPlane(light: LightAt, normal: Vec3): Illuminance {
  const shares = light.sources.map((source) => shareOf(source, normal)).sort((a, b) => b.lux - a.lux);
  const ambient = nightLux(light, normal);
  return { lux: shares.reduce((sum, { lux }) => sum + lux, ambient), ambientLux: ambient, shares };
}

/**
 * Illuminance of a surface at a place, E = Σ I(θ) cos β ÷ d² of all that gets there, lux: level ground with the normal
 * [0, 1, 0], an upright surface towards something with a level normal, a surface square to the light with the normal
 * towards it.
 *
 * Source: [inverse-square]
 */
export const illuminance = (
  scene: LightScene,
  point: Vec3,
  normal: Vec3,
  question: Omit<LightQuestion, 'facing'> = {},
): Illuminance => onPlane(lightAt(scene, point, { ...question, facing: normal }), normal);
