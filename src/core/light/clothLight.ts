import { moved, turned } from '../form/build/placement';
import { dot, length, subtract, type Vec3 } from '../form/build/vector';
import { clothPlace } from '../form/gear/cloth';
import { acos } from '../units/steadyMath';
import { partsAlong, passingShare } from './blockers';
import { lampLight } from './lampLight';
import type { GivingCloth, LightScene } from './lightScene';
import { polygonLight } from './polygonLight';
import { LEAST_LUX, type LightQuestion, type SourceLight, sourceLux } from './sourceLight';

/** A cloth is cut into so many squares along either side, each of them even. */
const CELLS = 4;

interface Cell {
  readonly middle: Vec3;
  readonly corners: readonly [Vec3, Vec3, Vec3, Vec3];
}

/** One face of a cloth, and what reaches it and goes on from it. */
interface ClothSide {
  readonly normal: Vec3;
  /** What goes on from each cell, cd/m². */
  readonly luminances: readonly number[];
  readonly fedBy: string | null;
  /** What the lamps send it, by their items. */
  readonly byItem: ReadonlyMap<string, number>;
}

interface LitCloth {
  readonly middle: Vec3;
  readonly reachMetres: number;
  readonly cells: readonly Cell[];
  readonly sides: readonly ClothSide[];
}

const litKept = new WeakMap<LightScene, Map<GivingCloth, LitCloth>>();

function cellsOf(cloth: GivingCloth, at: (x: number, y: number) => Vec3): readonly Cell[] {
  const [width, height] = cloth.size;
  return Array.from({ length: CELLS * CELLS }, (_, k): Cell => {
    const [column, row] = [k % CELLS, Math.floor(k / CELLS)];
    const x = (share: number) => ((column + share) / CELLS - 0.5) * width;
    const y = (share: number) => ((row + share) / CELLS - 0.5) * height;
    return {
      middle: at(x(0.5), y(0.5)),
      corners: [at(x(0), y(0)), at(x(1), y(0)), at(x(1), y(1)), at(x(0), y(1))],
    };
  });
}

/** Lux of the lamps alone on each cell of one face, and the lamp that most of it comes from. */
function reaching(
  scene: LightScene,
  cloth: GivingCloth,
  cells: readonly Cell[],
  normal: Vec3,
): { readonly lux: readonly number[]; readonly fedBy: string | null; readonly byItem: ClothSide['byItem'] } {
  const question: LightQuestion = { ignore: new Set([cloth.id]), facing: normal };
  const byItem = new Map<string, number>();
  const lux = cells.map(({ middle }) => {
    let sum = 0;
    for (const lamp of scene.lamps) {
      const light = lampLight(scene, lamp, middle, question, true);
      const got = light ? sourceLux(light, normal) : 0;
      if (!light || got === 0) continue;
      sum += got;
      byItem.set(light.itemId, (byItem.get(light.itemId) ?? 0) + got);
    }
    return sum;
  });
  const [strongest] = [...byItem].sort((a, b) => b[1] - a[1]);
  return { lux, fedBy: strongest?.[0] ?? null, byItem };
}

function litCloth(scene: LightScene, cloth: GivingCloth): LitCloth {
  const { placement } = clothPlace(cloth, scene.plan);
  const cells = cellsOf(cloth, (x, y) => moved(placement, [x, y, 0]));
  const front = turned(placement, [0, 0, -1]);
  const back = turned(placement, [0, 0, 1]);
  const [onFront, onBack] = [front, back].map((normal) => reaching(scene, cloth, cells, normal));
  const isBounce = cloth.kind === 'bounce';
  const share = (isBounce ? cloth.reflectance : cloth.transmission) / Math.PI;
  const side = (normal: Vec3, { lux, fedBy, byItem }: typeof onFront): ClothSide => ({
    normal,
    luminances: lux.map((level) => level * share),
    fedBy,
    byItem,
  });
  return {
    middle: moved(placement, [0, 0, 0]),
    reachMetres: length([cloth.size[0] / 2, cloth.size[1] / 2, 0]),
    cells,
    // What reaches a bounce goes back from the same face, what reaches a frame goes on from the other.
    sides: [side(front, isBounce ? onFront : onBack), side(back, isBounce ? onBack : onFront)],
  };
}

function keptCloth(scene: LightScene, cloth: GivingCloth): LitCloth {
  const kept = litKept.get(scene) ?? new Map<GivingCloth, LitCloth>();
  litKept.set(scene, kept);
  const known = kept.get(cloth) ?? litCloth(scene, cloth);
  kept.set(cloth, known);
  return known;
}

/** A face of a cloth as a source of light, for whoever lights a picture with it. */
export interface GivingFace {
  readonly middle: Vec3;
  readonly normal: Vec3;
  /** Along its normal: mean luminance times area. */
  readonly candela: number;
  readonly size: readonly [width: number, height: number];
  /** What of its light comes from which lamp's item, in any unit. */
  readonly byItem: ReadonlyMap<string, number>;
}

/** The faces of a cloth that give on light at an instant, as even diffusers. */
export function givingFaces(scene: LightScene, cloth: GivingCloth): readonly GivingFace[] {
  const { middle, sides } = keptCloth(scene, cloth);
  const [width, height] = cloth.size;
  return sides.flatMap(({ normal, luminances, byItem }): GivingFace[] => {
    const mean = luminances.reduce((sum, each) => sum + each, 0) / luminances.length;
    return mean > 0 ? [{ middle, normal, candela: mean * width * height, size: cloth.size, byItem }] : [];
  });
}

/**
 * What a bounce or a diffusion frame gives on to a place. Both give what the lamps send them on as even diffusers,
 * L = ρE ÷ π, in sixteen squares: a bounce, silver ones too, from the face that is lit, a frame its transmitted share
 * from the other face, and nothing passes a frame straight. One bounce only: no cloth lights another, sky and walls
 * light none. Null for nothing worth asking about.
 *
 * Source: [inverse-square], [polygon-light]
 */
export function clothLight(
  scene: LightScene,
  cloth: GivingCloth,
  point: Vec3,
  { ignore, facing }: LightQuestion,
): SourceLight | null {
  const { middle, reachMetres, cells, sides } = keptCloth(scene, cloth);
  const way = subtract(point, middle);
  if (facing && -dot(way, facing) < -reachMetres) return null;
  const side = sides.find(({ normal }) => dot(way, normal) > 0);
  if (!side) return null;
  const lights = cells.map(({ corners }, k) => polygonLight(corners, side.luminances[k], point));
  const full = lights.reduce((sum, light) => sum + length(light), 0);
  if (full < LEAST_LUX) return null;
  const { stage } = scene.blockers;
  const parts = partsAlong(scene.blockers, middle, point, reachMetres, (part) => {
    const { id } = stage.forms[part.item];
    return id === cloth.id || (ignore?.has(id) ?? false);
  });
  const rays: Vec3[] = [];
  let arrived = 0;
  lights.forEach((light, k) => {
    const share = passingShare(parts, cells[k].middle, point);
    if (share === 0) return;
    rays.push([light[0] * share, light[1] * share, light[2] * share]);
    arrived += length(light) * share;
  });
  const metres = length(way);
  return {
    itemId: cloth.id,
    fedBy: side.fedBy,
    metres,
    offAxisDegrees: (acos(dot(way, side.normal) / metres) * 180) / Math.PI,
    visible: arrived / full,
    rays,
  };
}
