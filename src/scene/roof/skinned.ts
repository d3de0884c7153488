import { BufferAttribute, BufferGeometry } from 'three';
import type { ModelSkin } from '../../core/form/models/heldModel';
import type { PartShape } from '../../core/form/types';
import { facetsOf } from './normals';

/** A stretch of an imported model, as it is drawn. */
export type Skinned = PartShape & { readonly skin: ModelSkin };

export const isSkinned = (shape: PartShape): shape is Skinned => shape.skin !== undefined;
export const allSkinned = (shapes: readonly PartShape[]): shapes is readonly Skinned[] =>
  shapes.every(isSkinned);

/** More stretches than this are not put together: what is out of view is passed over by the mesh. */
export const MOST_STRETCHES = 96;

/** Whether two stretches may be one mesh. */
export function looksAlike(a: ModelSkin, b: ModelSkin): boolean {
  return (
    a.picture === b.picture &&
    a.isCutOut === b.isCutOut &&
    (a.normals === null) === (b.normals === null) &&
    (a.places === null) === (b.places === null)
  );
}

interface Corners {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly colours: Uint16Array;
  readonly places: Float32Array | null;
  /** Null where every three corners are a triangle. */
  readonly indices: Uint32Array | null;
}

/** The corners with the file's normals; without any, each triangle by itself, flat. */
function cornersOf(shape: Skinned): Corners {
  const { skin, positions, indices } = shape;
  const { normals, colours, places } = skin;
  if (normals) return { positions, normals, colours, places, indices };
  const facets = facetsOf({ ...shape, smooth: false });
  const own = new Uint16Array(indices.length * 3);
  const ownPlaces = places && new Float32Array(indices.length * 2);
  indices.forEach((corner, k) => {
    own.set(colours.subarray(corner * 3, corner * 3 + 3), k * 3);
    if (places) ownPlaces?.set(places.subarray(corner * 2, corner * 2 + 2), k * 2);
  });
  return { ...facets, colours: own, places: ownPlaces, indices: null };
}

/** One geometry for stretches that look alike. */
export function skinnedGeometry(shapes: readonly Skinned[]): BufferGeometry {
  const all = shapes.map(cornersOf);
  const sum = (count: (corners: Corners) => number) => all.reduce((total, each) => total + count(each), 0);
  const corners = sum(({ positions }) => positions.length / 3);
  const joined = {
    position: new Float32Array(corners * 3),
    normal: new Float32Array(corners * 3),
    color: new Uint16Array(corners * 3),
    uv: new Float32Array(all[0].places ? corners * 2 : 0),
  };
  const indices = new Uint32Array(sum((each) => each.indices?.length ?? 0));
  let corner = 0;
  let edge = 0;
  for (const { positions, normals, colours, places, indices: own } of all) {
    joined.position.set(positions, corner * 3);
    joined.normal.set(normals, corner * 3);
    joined.color.set(colours, corner * 3);
    if (places) joined.uv.set(places, corner * 2);
    for (const index of own ?? []) {
      indices[edge] = index + corner;
      edge += 1;
    }
    corner += positions.length / 3;
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(joined.position, 3));
  geometry.setAttribute('normal', new BufferAttribute(joined.normal, 3));
  geometry.setAttribute('color', new BufferAttribute(joined.color, 3, true));
  if (all[0].places) geometry.setAttribute('uv', new BufferAttribute(joined.uv, 2));
  if (all[0].indices) geometry.setIndex(new BufferAttribute(indices, 1));
  geometry.computeBoundingSphere();
  return geometry;
}
