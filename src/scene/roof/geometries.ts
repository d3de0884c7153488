import { BufferAttribute, BufferGeometry } from 'three';
import type { PartShape } from '../../core/form/types';
import { facetsOf } from './normals';

/**
 * One geometry per shape, for as long as something draws it. Shapes are shared and immutable, so the same object
 * always gets the same geometry; what no mesh has used between two sweeps gives its memory on the card back.
 */
export class Geometries {
  private readonly kept = new Map<PartShape, BufferGeometry>();
  private used = new Set<PartShape>();

  of(shape: PartShape): BufferGeometry {
    this.used.add(shape);
    const found = this.kept.get(shape);
    if (found) return found;
    const { positions, normals } = facetsOf(shape);
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(positions, 3));
    geometry.setAttribute('normal', new BufferAttribute(normals, 3));
    geometry.computeBoundingSphere();
    this.kept.set(shape, geometry);
    return geometry;
  }

  get count(): number {
    return this.kept.size;
  }

  /** Disposes of what was not asked for since the last sweep. */
  sweep(): void {
    for (const [shape, geometry] of this.kept) {
      if (this.used.has(shape)) continue;
      geometry.dispose();
      this.kept.delete(shape);
    }
    this.used = new Set();
  }

  dispose(): void {
    this.used = new Set();
    this.sweep();
  }
}
