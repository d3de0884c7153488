import { BufferAttribute, BufferGeometry } from 'three';
import type { PartShape } from '../../core/form/types';
import { type Facets, facetsOf } from './normals';
import { allSkinned, skinnedGeometry } from './skinned';

interface Kept {
  readonly shapes: readonly PartShape[];
  readonly geometry: BufferGeometry;
}

/**
 * One geometry for each list of shapes, for as long as something draws it. Shapes are shared and immutable, so the
 * same shapes always get the same geometry.
 */
export class Geometries {
  /** By the first shape of the list. */
  private readonly kept = new Map<PartShape, readonly Kept[]>();

  of(shapes: readonly PartShape[]): BufferGeometry {
    const alike = this.kept.get(shapes[0]) ?? [];
    const found = alike.find((entry) => isSame(entry.shapes, shapes));
    if (found) return found.geometry;
    const geometry = allSkinned(shapes) ? skinnedGeometry(shapes) : geometryOf(shapes.map(facetsOf));
    if (shapes[0].substance === 'window') numberWindows(geometry);
    this.kept.set(shapes[0], [...alike, { shapes, geometry }]);
    return geometry;
  }

  get count(): number {
    return [...this.kept.values()].reduce((sum, entries) => sum + entries.length, 0);
  }

  /** Disposes of all but what is drawn now. */
  sweep(drawn: ReadonlySet<BufferGeometry>): void {
    for (const [first, entries] of this.kept) {
      const left = entries.filter(({ geometry }) => drawn.has(geometry));
      for (const entry of entries) if (!left.includes(entry)) entry.geometry.dispose();
      if (left.length > 0) this.kept.set(first, left);
      else this.kept.delete(first);
    }
  }
}

const isSame = (a: readonly PartShape[], b: readonly PartShape[]): boolean =>
  a.length === b.length && a.every((shape, k) => shape === b[k]);

/** Two triangles of six corners each. */
const CORNERS_OF_A_WINDOW = 6;

/** Numbers the windows, so that each keeps its own light when it is drawn together with those of other houses. */
function numberWindows(geometry: BufferGeometry): void {
  const { count } = geometry.attributes.position;
  const numbers = Float32Array.from({ length: count }, (_, corner) =>
    Math.floor(corner / CORNERS_OF_A_WINDOW),
  );
  geometry.setAttribute('windowNumber', new BufferAttribute(numbers, 1));
}

function geometryOf(all: readonly Facets[]): BufferGeometry {
  const geometry = new BufferGeometry();
  for (const [name, of] of [
    ['position', 'positions'],
    ['normal', 'normals'],
  ] as const) {
    const values = new Float32Array(all.reduce((sum, facets) => sum + facets[of].length, 0));
    let at = 0;
    for (const facets of all) {
      values.set(facets[of], at);
      at += facets[of].length;
    }
    geometry.setAttribute(name, new BufferAttribute(values, 3));
  }
  geometry.computeBoundingSphere();
  return geometry;
}
