import { BufferAttribute, BufferGeometry, DoubleSide, Ray, type Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { dice } from '../../plans/draw';
import type { Scene, SceneCamera, ScenePart } from './glbScene';

/** Rays by item and part, as shares of the frame; `coveredBy` and `through` by the item and the other's id. */
export interface Traced {
  readonly items: Map<string, number>;
  readonly parts: Map<string, number>;
  readonly mirrored: Map<string, number>;
  readonly coveredBy: Map<string, number>;
  readonly through: Map<string, number>;
}

interface Hit {
  readonly distance: number;
  readonly part: ScenePart;
  readonly normal: Vector3;
}

/** Traces rays of a random place in each cell of a raster, through another library and the exported triangles alone. */
export class SceneTracer {
  private readonly bvh: MeshBVH;
  private readonly partOfCorner: ScenePart[] = [];

  constructor(scene: Scene) {
    const corners = scene.parts.flatMap((part) => Array.from(part.corners));
    for (const part of scene.parts) {
      for (let k = 0; k < part.corners.length; k += 3) this.partOfCorner.push(part);
    }
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(Float32Array.from(corners), 3));
    geometry.setIndex(Array.from({ length: corners.length / 3 }, (_, k) => k));
    this.bvh = new MeshBVH(geometry);
  }

  private hits(origin: Vector3, direction: Vector3): Hit[] {
    const { index } = this.bvh.geometry;
    return this.bvh.raycast(new Ray(origin, direction), DoubleSide).flatMap((hit) => {
      if (!index || !hit.face) return [];
      const part = this.partOfCorner[hit.face.a];
      return [{ distance: hit.distance, part, normal: hit.face.normal }];
    });
  }

  private static nearestSolid(hits: readonly Hit[]): Hit | null {
    let nearest: Hit | null = null;
    for (const hit of hits) {
      if (!hit.part.isLayer && (!nearest || hit.distance < nearest.distance)) nearest = hit;
    }
    return nearest;
  }

  /** What one ray sees: the first solid, and every layer before it. */
  private static seen(hits: readonly Hit[], solid: Hit | null): Set<ScenePart> {
    const seen = new Set<ScenePart>(solid ? [solid.part] : []);
    for (const { part, distance } of hits) {
      if (part.isLayer && (!solid || distance < solid.distance)) seen.add(part);
    }
    return seen;
  }

  raster(camera: SceneCamera, width: number, seed: number): Traced {
    const roll = dice(seed);
    const height = Math.round(width / camera.aspect);
    const share = 1 / (width * height);
    const traced: Traced = {
      items: new Map(),
      parts: new Map(),
      mirrored: new Map(),
      coveredBy: new Map(),
      through: new Map(),
    };
    const count = (list: Map<string, number>, names: Iterable<string>) => {
      for (const name of new Set(names)) list.set(name, (list.get(name) ?? 0) + share);
    };
    const itemOf = ({ item }: ScenePart) => item;
    for (let row = 0; row < height; row += 1) {
      for (let column = 0; column < width; column += 1) {
        const across = (2 * (column + roll(0, 1))) / width - 1;
        const rise = 1 - (2 * (row + roll(0, 1))) / height;
        const direction = camera.forward
          .clone()
          .addScaledVector(camera.right, across * camera.tanHalfHeight * camera.aspect)
          .addScaledVector(camera.up, rise * camera.tanHalfHeight)
          .normalize();
        const hits = this.hits(camera.position, direction);
        const solid = SceneTracer.nearestSolid(hits);
        const seen = [...SceneTracer.seen(hits, solid)];
        const seenItems = new Set(seen.map(itemOf));
        count(traced.items, seenItems);
        count(
          traced.parts,
          seen.map(({ item, part }) => `${item}:${part}`),
        );
        if (!solid) continue;
        const hidden = hits.map(({ part }) => part.item).filter((item) => !seenItems.has(item));
        count(
          traced.coveredBy,
          hidden.map((item) => `${item} by ${solid.part.item}`),
        );
        const before = [...seenItems].filter((item) => item !== solid.part.item);
        count(
          traced.through,
          before.map((layer) => `${solid.part.item} through ${layer}`),
        );
        if (!solid.part.reflects) continue;
        const normal = solid.normal.clone();
        if (direction.dot(normal) >= 0) continue;
        const at = camera.position.clone().addScaledVector(direction, solid.distance);
        at.addScaledVector(normal, 1e-5);
        const onwards = this.hits(at, direction.clone().reflect(normal));
        const image = SceneTracer.seen(onwards, SceneTracer.nearestSolid(onwards));
        count(traced.mirrored, [...image].map(itemOf));
      }
    }
    return traced;
  }
}
