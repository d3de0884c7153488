import { add, cross, dot, length, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import type { Tube } from '../form/types';
import { wetnessAt } from '../plan/wetness';
import { meets, type Ray } from '../sight/rays';
import { type StagePart, worldOf } from '../sight/stage';
import { cos, sin } from '../units/steadyMath';
import { type Ambient, ambientLux } from './ambient';
import { clothLight } from './clothLight';
import { type Finish, finishOf } from './finishes';
import { fresnel, WATER_INDEX } from './fresnel';
import { glowFaceArea } from './glowArea';
import { lampLight } from './lampLight';
import type { LightScene } from './lightScene';
import { lobe } from './microfacet';
import { moonRay } from './moonRay';
import { type SourceLight, vectorOf } from './sourceLight';
import { SCREEN_LUMINANCE, skyLuminance, skylineLux, throughHaze, WINDOW_LUMINANCE } from './surroundings';
import { WET_DARKENING, wetShare } from './wetness';

/** What a place of a part sends to an eye, cd/m². */
export interface PartLuminance {
  readonly total: number;
  /** What of it comes from each lamp or cloth, sheen included. */
  readonly byItem: ReadonlyMap<string, number>;
  /** Lux on it that come back evenly. */
  readonly lux: number;
  /** The share of them that does. */
  readonly diffuse: number;
  readonly metres: number;
}

/** Off the surface, so that it does not stand in its own light; metres. */
const OFF_METRES = 0.003;
/** Where round a round member it is lit: strips of 15° from edge to edge, so that a rim of light is met, each by its width. */
const ROUND = Array.from({ length: 12 }, (_, k) => {
  const turn = ((k * 15 - 82.5) * Math.PI) / 180;
  return { sine: sin(turn), cosine: cos(turn) };
});
const ROUND_WIDTH = ROUND.reduce((sum, { cosine }) => sum + cosine, 0);
/** How far from a tube's axis, in radii, still is that tube. */
const NEAR_AXIS = 1.4;
/** How far beside a ray the two others go that tell how a surface lies, as a share of the way. */
const BESIDE = 2e-4;
/** A clear surface that is no water: glass, paint, glazed tile; from memory. */
const CLEAR_INDEX = 1.5;

/** Even soot-black render gives back some: what old fronts come near to, as the picture has them. By eye, no source. */
const WEATHERED = 0.226;
const WEATHERED_SHARE = 0.45;

/** A unit normal that is seen, and its share of the width. */
interface Normal {
  readonly way: Vec3;
  readonly share: number;
}

/** A place with all normals that are seen there, and where the light is read. */
interface Facing {
  readonly lit: Vec3;
  readonly normals: readonly Normal[];
  /** Round members are read without their own item: it would stand in its own rim light. */
  readonly ignore: ReadonlySet<string>;
}

const NOTHING: ReadonlySet<string> = new Set();

function roundFacing(part: StagePart, tube: Tube, at: Vec3, eye: Vec3, ownId: string): Facing | null {
  const [from, to] = [worldOf(part, tube.from), worldOf(part, tube.to)];
  const axis = subtract(to, from);
  const along = dot(subtract(at, from), axis) / Math.max(1e-12, dot(axis, axis));
  if (along < -0.01 || along > 1.01) return null;
  const middle = add(from, scale(axis, along));
  if (length(subtract(at, middle)) > tube.radius * NEAR_AXIS + 1e-4) return null;
  const way = unit(axis);
  const towards = subtract(eye, middle);
  const front = unit(subtract(towards, scale(way, dot(towards, way))));
  const side = cross(way, front);
  return {
    lit: add(middle, scale(front, tube.radius + OFF_METRES)),
    normals: ROUND.map(({ sine, cosine }) => ({
      way: add(scale(front, cosine), scale(side, sine)),
      share: cosine / ROUND_WIDTH,
    })),
    ignore: new Set([ownId]),
  };
}

/** How a surface lies where a ray meets it, towards the eye; from two more rays beside it. */
function flatFacing(part: StagePart, { origin, direction }: Ray, at: Vec3): Facing {
  const way = unit(direction);
  const right = unit(cross(way, Math.abs(way[1]) < 0.99 ? [0, 1, 0] : [1, 0, 0]));
  const up = cross(right, way);
  const beside = [right, up].map((aside): Vec3 => {
    for (const sign of [1, -1]) {
      const slanted = add(way, scale(aside, sign * BESIDE));
      const distance = meets(part, { origin, direction: slanted });
      if (distance < Infinity) return scale(subtract(add(origin, scale(slanted, distance)), at), sign);
    }
    return aside;
  });
  const found = unit(cross(beside[0], beside[1]));
  const normal = dot(found, way) > 0 ? scale(found, -1) : found;
  return { lit: add(at, scale(normal, OFF_METRES)), normals: [{ way: normal, share: 1 }], ignore: NOTHING };
}

function facingAt(part: StagePart, ray: Ray, at: Vec3, ownId: string): Facing {
  for (const tube of part.shape.tubes) {
    const found = roundFacing(part, tube, at, ray.origin, ownId);
    if (found) return found;
  }
  return flatFacing(part, ray, at);
}

/** All that lamps and cloths send to a place, each lamp from its middle alone: for many places, quickly. */
const lightOn = (scene: LightScene, point: Vec3, ignore: ReadonlySet<string>): readonly SourceLight[] => [
  ...scene.lamps.flatMap((lamp) => lampLight(scene, lamp, point, { ignore }, true) ?? []),
  ...scene.cloths.flatMap((cloth) => clothLight(scene, cloth, point, { ignore }) ?? []),
];

/** What small mirrors turn back at an incidence. */
const mirrored = ({ sheen }: Finish, cosine: number): number =>
  sheen ?? fresnel(cosine, CLEAR_INDEX).unpolarised;

/** Luminance for one ray of light as long as its lux, on all normals that are seen. */
function fromRay(finish: Finish, normals: readonly Normal[], ray: Vec3, toEye: Vec3): number {
  const lux = length(ray);
  // A stretch of a cloth may give nothing at all.
  if (lux === 0) return 0;
  const way = scale(ray, 1 / lux);
  let sum = 0;
  for (const { way: normal, share } of normals) {
    const cosine = dot(normal, way);
    if (cosine <= 0) continue;
    sum += (share * finish.diffuse * lux * cosine) / Math.PI;
    if (finish.slope === null) continue;
    const { perLux, facetCosine } = lobe(normal, way, toEye, finish.slope);
    sum += share * lux * perLux * mirrored(finish, facetCosine);
  }
  return sum;
}

/** Lux of one ray on all normals that are seen. */
const onNormals = (normals: readonly Normal[], ray: Vec3): number =>
  normals.reduce((sum, { way, share }) => sum + share * Math.max(0, dot(way, ray)), 0);

/** What sky and streets give to the normals that are seen. */
function fromSky(ambient: Ambient, finish: Finish, normals: readonly Normal[], toEye: Vec3): number {
  let sum = 0;
  for (const { way: normal, share } of normals) {
    sum += (share * finish.diffuse * ambientLux(ambient, normal)) / Math.PI;
    if (finish.slope === null) continue;
    const cosine = dot(normal, toEye);
    sum +=
      share * mirrored(finish, cosine) * skyLuminance(ambient, subtract(scale(normal, 2 * cosine), toEye));
  }
  return sum;
}

/** The luminance of an item's lamps towards an eye: candela over the area that is seen. 0 where they are off. */
function glowLuminance(scene: LightScene, itemId: string, eye: Vec3): number {
  let most = 0;
  for (const lamp of scene.lamps) {
    if (lamp.form.itemId !== itemId) continue;
    const light = lampLight(scene, lamp, eye, {}, true);
    if (!light || light.visible === 0) continue;
    const candela = (length(vectorOf([light])) / light.visible) * light.metres * light.metres;
    const cosine = dot(unit(subtract(eye, lamp.face.middle)), lamp.form.direction);
    most = Math.max(most, candela / glowFaceArea(lamp.face, cosine));
  }
  return most;
}

/** What a wet deck adds, by what it mirrors of the sky, and takes, since it is darker. */
function wetted(scene: LightScene, part: StagePart, [x, , z]: Vec3, finish: Finish): Finish {
  const { kind } = scene.blockers.stage.forms[part.item];
  if (kind !== 'deck') return finish;
  const wet = wetShare(wetnessAt(scene.plan, [x, z]));
  return { ...finish, diffuse: finish.diffuse * (1 - wet * WET_DARKENING) };
}

function mirroredSky(scene: LightScene, part: StagePart, [x, , z]: Vec3, toEye: Vec3): number {
  if (scene.blockers.stage.forms[part.item].kind !== 'deck' || toEye[1] <= 0) return 0;
  const share = wetShare(wetnessAt(scene.plan, [x, z])) * fresnel(toEye[1], WATER_INDEX).unpolarised;
  return share * skyLuminance(scene.ambient, [-toEye[0], toEye[1], -toEye[2]]);
}

/**
 * Luminance of a part where a ray from the eye meets it, L = ρE ÷ π of all light that gets there, of sky and moon, with
 * the sheen of metal and of what is glossy; a lamp's glass, a lit window or a screen by what it gives off; a building of
 * the skyline by its own street. Through the town's haze. `finish`: another than its own. `at`: where the ray is known
 * to meet it, for what is thinner than a ray finds. Null where it does not meet it.
 *
 * Source: [inverse-square], [microfacets]
 */
export function partLuminance(
  scene: LightScene,
  part: StagePart,
  ray: Ray,
  at: Vec3 | null = null,
  finish: Finish | null = null,
): PartLuminance | null {
  const distance = at ? 0 : meets(part, ray);
  if (distance === Infinity) return null;
  const place = at ?? add(ray.origin, scale(ray.direction, distance));
  const metres = length(subtract(place, ray.origin));
  const form = scene.blockers.stage.forms[part.item];
  const { substance } = part.shape;
  const seen = (luminance: number, more: Partial<PartLuminance> = {}): PartLuminance => ({
    byItem: new Map(),
    lux: 0,
    diffuse: 0,
    ...more,
    total: throughHaze(scene.ambient, luminance, metres),
    metres,
  });
  if (substance === 'window') return seen(WINDOW_LUMINANCE);
  if (substance === 'screen') return seen(SCREEN_LUMINANCE);
  if (substance === 'glow') {
    const own = glowLuminance(scene, form.id, ray.origin);
    if (own > 0) return seen(own);
  }
  const { lit, normals, ignore } = facingAt(part, ray, place, form.id);
  const own = wetted(scene, part, place, finish ?? finishOf(part.shape));
  if (form.kind === 'skyline block') {
    const lux = skylineLux(scene.ambient, normals[0].way, place[1]);
    const weathered = own.diffuse + (WEATHERED - own.diffuse) * WEATHERED_SHARE;
    return seen((weathered * lux) / Math.PI, { lux, diffuse: weathered });
  }
  const toEye = unit(subtract(ray.origin, place));
  const byItem = new Map<string, number>();
  let luminance = fromSky(scene.ambient, own, normals, toEye) + mirroredSky(scene, part, place, toEye);
  let lux = normals.reduce((sum, { way, share }) => sum + share * ambientLux(scene.ambient, way), 0);
  const moon = moonRay(scene, lit, ignore);
  if (moon) {
    luminance += fromRay(own, normals, moon, toEye);
    lux += onNormals(normals, moon);
  }
  for (const { itemId, rays } of lightOn(scene, lit, ignore)) {
    let given = 0;
    for (const each of rays) {
      given += fromRay(own, normals, each, toEye);
      lux += onNormals(normals, each);
    }
    if (given === 0) continue;
    luminance += given;
    byItem.set(itemId, (byItem.get(itemId) ?? 0) + given);
  }
  return seen(luminance, { lux, byItem, diffuse: own.diffuse });
}
