import { BufferAttribute, BufferGeometry, DoubleSide, Ray, Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import type { Camera } from '../../../src/core/optics/types';
import { mirrorOf } from '../../../src/core/sight/mirrors';
import type { SightStage, StagePart } from '../../../src/core/sight/stage';

/** All triangles of some parts in world coordinates, in one tree of a library that the product does not use for this. */
interface Tree {
  readonly bvh: MeshBVH;
  /** The tree sorts the triangles, never the corners: a triangle's first corner names its part. */
  readonly partOfCorner: Int32Array;
}

function treeOf(parts: readonly StagePart[]): Tree | null {
  const positions: number[] = [];
  const indices: number[] = [];
  const owners: number[] = [];
  for (const part of parts) {
    const start = positions.length / 3;
    const m = part.worldFromPart;
    const { positions: p } = part.shape;
    for (let k = 0; k < p.length; k += 3) {
      if (!m) positions.push(p[k], p[k + 1], p[k + 2]);
      else {
        for (const row of [0, 4, 8]) {
          positions.push(m[row] * p[k] + m[row + 1] * p[k + 1] + m[row + 2] * p[k + 2] + m[row + 3]);
        }
      }
    }
    for (const index of part.shape.indices) indices.push(start + index);
    for (let k = 0; k < p.length; k += 3) owners.push(part.index);
  }
  if (indices.length === 0) return null;
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(Float32Array.from(positions), 3));
  geometry.setIndex(indices);
  return { bvh: new MeshBVH(geometry), partOfCorner: Int32Array.from(owners) };
}

export interface Traced {
  /** Per part: rays that meet it first (or, for a layer, before any solid), directly and by way of a mirror. */
  readonly direct: Float64Array;
  readonly mirrored: Float64Array;
  readonly rays: number;
}

/** What exact rays through the middles of a width × height raster meet: the independent answer. */
export class Tracer {
  private readonly solids: Tree | null;
  private readonly layers: { readonly part: StagePart; readonly tree: Tree }[] = [];
  private readonly ray = new Ray();

  constructor(private readonly stage: SightStage) {
    this.solids = treeOf(stage.parts.filter((part) => part.shape.openness === null));
    for (const part of stage.parts) {
      if (part.shape.openness === null) continue;
      const tree = treeOf([part]);
      if (tree) this.layers.push({ part, tree });
    }
  }

  private firstSolid(
    origin: Vector3,
    direction: Vector3,
  ): { readonly distance: number; readonly part: number } | null {
    if (!this.solids) return null;
    this.ray.set(origin, direction);
    const hit = this.solids.bvh.raycastFirst(this.ray, DoubleSide);
    if (!hit || hit.faceIndex === undefined || hit.faceIndex === null) return null;
    const { index } = this.solids.bvh.geometry;
    if (!index) throw new Error('firstSolid: the tree has lost its index');
    return { distance: hit.distance, part: this.solids.partOfCorner[index.getX(hit.faceIndex * 3)] };
  }

  /** Counts what one ray sees into `seen`; the part of the first solid and its distance come back. */
  private count(origin: Vector3, direction: Vector3, seen: Float64Array) {
    const first = this.firstSolid(origin, direction);
    if (first) seen[first.part] += 1;
    for (const { part, tree } of this.layers) {
      this.ray.set(origin, direction);
      const hit = tree.bvh.raycastFirst(this.ray, DoubleSide);
      if (hit && (!first || hit.distance < first.distance)) seen[part.index] += 1;
    }
    return first;
  }

  /** Traces through a camera without distortion. `x`, `y` in 0..1 of the frame. */
  see(camera: Camera, x: number, y: number, direct: Float64Array, mirrored: Float64Array): void {
    const { position, right, up, forward } = camera.pose;
    const across = (2 * x - 1) * camera.frame.tanHalfWidth;
    const rise = (1 - 2 * y) * camera.frame.tanHalfHeight;
    const direction = new Vector3(
      forward[0] + across * right[0] + rise * up[0],
      forward[1] + across * right[1] + rise * up[1],
      forward[2] + across * right[2] + rise * up[2],
    ).normalize();
    const origin = new Vector3(...position);
    const first = this.count(origin, direction, direct);
    if (!first) return;
    const mirror = mirrorOf(this.stage.parts[first.part]);
    if (!mirror) return;
    const normal = new Vector3(mirror.normal[0], mirror.normal[1], mirror.normal[2]);
    if (direction.dot(normal) >= 0) return;
    const at = origin.clone().addScaledVector(direction, first.distance);
    const onwards = direction.clone().reflect(normal);
    // Off the surface by a hair, so that the mirror does not meet itself.
    at.addScaledVector(normal, 1e-6);
    this.count(at, onwards, mirrored);
  }

  raster(camera: Camera, width: number, height: number): Traced {
    const direct = new Float64Array(this.stage.parts.length);
    const mirrored = new Float64Array(this.stage.parts.length);
    for (let row = 0; row < height; row += 1) {
      for (let column = 0; column < width; column += 1) {
        this.see(camera, (column + 0.5) / width, (row + 0.5) / height, direct, mirrored);
      }
    }
    return { direct, mirrored, rays: width * height };
  }

  /**
   * Whether any of many rays towards a part's tubes meets the part first: 600 places along each axis, seven across it,
   * those that fall inside the frame.
   */
  meetsAnyTube(camera: Camera, part: StagePart): boolean {
    const { position, right, up, forward } = camera.pose;
    const origin = new Vector3(...position);
    const direction = new Vector3();
    for (const tube of part.shape.tubes) {
      const axis = new Vector3(...tube.to).sub(new Vector3(...tube.from));
      for (let k = 0; k <= 600; k += 1) {
        const at = new Vector3(...tube.from).addScaledVector(axis, k / 600);
        const across = axis.clone().cross(at.clone().sub(origin)).normalize();
        for (const offset of [0, 0.3, -0.3, 0.6, -0.6, 0.9, -0.9]) {
          direction
            .copy(at)
            .addScaledVector(across, tube.radius * offset)
            .sub(origin);
          const depth = direction.dot(new Vector3(...forward));
          if (depth <= 0.01) continue;
          if (Math.abs(direction.dot(new Vector3(...right))) > depth * camera.frame.tanHalfWidth) continue;
          if (Math.abs(direction.dot(new Vector3(...up))) > depth * camera.frame.tanHalfHeight) continue;
          if (this.firstSolid(origin, direction.normalize())?.part === part.index) return true;
        }
      }
    }
    return false;
  }

  /** Whether any ray of a raster of 4,096 × 2,048 places that goes near the part meets it first. */
  meetsInBox(camera: Camera, part: StagePart): boolean {
    const { position, right, up, forward } = camera.pose;
    const origin = new Vector3(...position);
    const direction = new Vector3();
    const centre = new Vector3(...part.centre).sub(origin);
    for (let row = 0; row < 2048; row += 1) {
      for (let column = 0; column < 4096; column += 1) {
        const across = ((2 * (column + 0.5)) / 4096 - 1) * camera.frame.tanHalfWidth;
        const rise = (1 - (2 * (row + 0.5)) / 2048) * camera.frame.tanHalfHeight;
        direction.set(...forward).addScaledVector(new Vector3(...right), across);
        direction.addScaledVector(new Vector3(...up), rise).normalize();
        const along = direction.dot(centre);
        if (centre.lengthSq() - along * along > part.radius * part.radius) continue;
        if (this.firstSolid(origin, direction)?.part === part.index) return true;
      }
    }
    return false;
  }
}
