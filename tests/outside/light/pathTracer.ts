import { add, cross, dot, scale, subtract, unit, type Vec3 } from '../../../src/core/form/build/vector';
import { dice } from '../../plans/draw';

/**
 * A small path tracer of its own for rectangles and point lamps: it knows nothing of the program's light but where
 * things stand. From the place that is lit it follows rays by the cosine, reads the lamps wherever one meets a cloth,
 * and goes on from there by chance; the mean of very many is the illuminance. Source: Kajiya (1986), from memory
 */

/** A rectangle: its middle, half its sides as vectors, and what it gives back or lets through, 0 for black. */
export interface Sheet {
  readonly middle: Vec3;
  readonly across: Vec3;
  readonly up: Vec3;
  readonly reflectance: number;
  readonly transmittance: number;
}

/** A lamp that is as strong all round. */
export interface PointLamp {
  readonly at: Vec3;
  readonly candela: number;
}

export interface Traced {
  readonly sheets: readonly Sheet[];
  readonly lamps: readonly PointLamp[];
}

function meets(sheet: Sheet, from: Vec3, way: Vec3): number {
  const normal = cross(sheet.across, sheet.up);
  const slant = dot(way, normal);
  if (slant === 0) return Infinity;
  const distance = dot(subtract(sheet.middle, from), normal) / slant;
  if (distance < 1e-6) return Infinity;
  const off = subtract(add(from, scale(way, distance)), sheet.middle);
  const u = dot(off, sheet.across) / dot(sheet.across, sheet.across);
  const v = dot(off, sheet.up) / dot(sheet.up, sheet.up);
  return Math.abs(u) <= 1 && Math.abs(v) <= 1 ? distance : Infinity;
}

/** Lux of the lamps straight on a place of either side of a sheet. */
function direct({ sheets, lamps }: Traced, at: Vec3, normal: Vec3): number {
  let lux = 0;
  for (const lamp of lamps) {
    const way = subtract(lamp.at, at);
    const square = dot(way, way);
    const cosine = dot(way, normal) / Math.sqrt(square);
    if (cosine <= 0 || sheets.some((sheet) => meets(sheet, at, way) < 1)) continue;
    lux += (lamp.candela * cosine) / square;
  }
  return lux;
}

function byCosine(normal: Vec3, random: () => number): Vec3 {
  const side = unit(cross(Math.abs(normal[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0], normal));
  const radius = Math.sqrt(random());
  const turn = 2 * Math.PI * random();
  const out = add(scale(side, radius * Math.cos(turn)), scale(cross(normal, side), radius * Math.sin(turn)));
  return add(out, scale(normal, Math.sqrt(1 - radius * radius)));
}

/** Radiance times π that comes along one ray, after `left` more sheets at most. */
function along(scene: Traced, from: Vec3, way: Vec3, random: () => number, left: number): number {
  let nearest: Sheet | null = null;
  let distance = Infinity;
  for (const sheet of scene.sheets) {
    const found = meets(sheet, from, way);
    if (found < distance) [nearest, distance] = [sheet, found];
  }
  if (!nearest || left === 0) return 0;
  const at = add(from, scale(way, distance));
  const normal = unit(cross(nearest.across, nearest.up));
  const facing = dot(normal, way) < 0 ? normal : scale(normal, -1);
  let sum = 0;
  for (const [share, side] of [
    [nearest.reflectance, facing],
    [nearest.transmittance, scale(facing, -1)],
  ] as const) {
    if (share === 0) continue;
    const off = add(at, scale(side, 1e-5));
    sum += share * direct(scene, off, side);
    if (left > 1) sum += share * along(scene, off, byCosine(side, random), random, left - 1);
  }
  return sum;
}

/**
 * Lux that sheets give on to a surface, what comes straight from the lamps left out: the mean of `count` rays, after at
 * most so many sheets.
 */
export function givenOn(
  scene: Traced,
  at: Vec3,
  normal: Vec3,
  sheets = 1,
  count = 60_000,
  seed = 20261127,
): number {
  const draw = dice(seed);
  const random = (): number => draw(0, 1);
  let sum = 0;
  for (let ray = 0; ray < count; ray += 1) sum += along(scene, at, byCosine(normal, random), random, sheets);
  return sum / count;
}
