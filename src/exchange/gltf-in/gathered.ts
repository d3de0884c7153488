import type { ModelPicture } from '../../core/form/models/heldModel';
import type { Surface } from './surfaces';

/** Surfaces of one name and one way of looking, put together; corners from the middle of the model. */
export interface Gathered {
  readonly name: string;
  readonly positions: Float32Array;
  readonly indices: Uint32Array;
  readonly normals: Float32Array | null;
  readonly colours: Uint16Array;
  readonly places: Float32Array | null;
  readonly picture: ModelPicture | null;
  readonly isCutOut: boolean;
}

/** The box around a model, in the file's units and axes. */
export interface Extent {
  readonly lowest: [number, number, number];
  readonly highest: [number, number, number];
}

/** Findings speak of parts by name; a model of more names than anyone reads is one part. */
const MOST_NAMES = 200;
const ONE_NAME = 'scan';

/** The box around all triangles; null when there are none. */
export function extentOf(surfaces: readonly Surface[]): Extent | null {
  const lowest: Extent['lowest'] = [Infinity, Infinity, Infinity];
  const highest: Extent['highest'] = [-Infinity, -Infinity, -Infinity];
  for (const { positions, indices } of surfaces) {
    for (const corner of indices) {
      for (let axis = 0; axis < 3; axis += 1) {
        const value = positions[corner * 3 + axis];
        if (value < lowest[axis]) lowest[axis] = value;
        if (value > highest[axis]) highest[axis] = value;
      }
    }
  }
  return lowest[0] <= highest[0] ? { lowest, highest } : null;
}

/** Puts surfaces of one name and look together, in the order in which they come, and moves all to the model's middle. */
export function gathered(surfaces: readonly Surface[], centre: readonly number[]): Gathered[] {
  const names = new Set(surfaces.map(({ name }) => name));
  const shared = names.size > MOST_NAMES ? ONE_NAME : null;
  const groups = new Map<string, Surface[]>();
  const pictures = new Map<ModelPicture, number>();
  for (const surface of surfaces) {
    if (surface.indices.length === 0) continue;
    const { picture, isCutOut } = surface.look;
    if (picture && !pictures.has(picture)) pictures.set(picture, pictures.size);
    const hasPicture = picture && surface.places ? pictures.get(picture) : '';
    const key = [shared ?? surface.name, hasPicture, isCutOut, surface.normals !== null].join('\n');
    const group = groups.get(key);
    if (group) group.push(surface);
    else groups.set(key, [surface]);
  }
  return Array.from(groups.values(), (group) => together(group, shared ?? group[0].name, centre));
}

function together(group: readonly Surface[], name: string, centre: readonly number[]): Gathered {
  const [{ look, normals, places }] = group;
  const corners = group.reduce((sum, { positions }) => sum + positions.length / 3, 0);
  const edges = group.reduce((sum, { indices }) => sum + indices.length, 0);
  const all = {
    positions: new Float32Array(corners * 3),
    indices: new Uint32Array(edges),
    normals: normals ? new Float32Array(corners * 3) : null,
    colours: new Uint16Array(corners * 3),
    places: look.picture && places ? new Float32Array(corners * 2) : null,
  };
  let corner = 0;
  let edge = 0;
  for (const surface of group) {
    const { positions } = surface;
    for (let k = 0; k < positions.length; k += 1) {
      all.positions[corner * 3 + k] = positions[k] - centre[k % 3];
    }
    if (surface.normals) all.normals?.set(surface.normals, corner * 3);
    if (surface.places) all.places?.set(surface.places, corner * 2);
    all.colours.set(surface.colours, corner * 3);
    for (const index of surface.indices) {
      all.indices[edge] = index + corner;
      edge += 1;
    }
    corner += positions.length / 3;
  }
  return {
    name,
    ...all,
    picture: all.places && look.picture,
    isCutOut: look.isCutOut && all.places !== null,
  };
}
