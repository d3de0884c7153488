import { moved, turned } from '../../core/form/build/placement';
import { cross, subtract, unit, type Vec3 } from '../../core/form/build/vector';
import type { PlacedPart } from '../../core/form/types';

/** Triangles in world coordinates, metres, with a unit normal to each vertex. */
export interface Triangles {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly indices: Uint32Array;
}

interface Lists {
  readonly positions: number[];
  readonly normals: number[];
  readonly indices: number[];
}

/** The triangles of placed parts as one mesh, in the order given. */
export function trianglesOf(parts: readonly PlacedPart[]): Triangles {
  const lists: Lists = { positions: [], normals: [], indices: [] };
  for (const part of parts) {
    const corners = worldCorners(part);
    if (part.shape.skin?.normals) addOwn(lists, corners, part, part.shape.skin.normals);
    else if (part.shape.smooth) addSmooth(lists, corners, part.shape.indices);
    else addFaceted(lists, corners, part.shape.indices);
  }
  return {
    positions: Float32Array.from(lists.positions),
    normals: Float32Array.from(lists.normals),
    indices: Uint32Array.from(lists.indices),
  };
}

function worldCorners({ shape, worldFromPart }: PlacedPart): Vec3[] {
  const { positions } = shape;
  return Array.from({ length: positions.length / 3 }, (_, corner): Vec3 => {
    const at: Vec3 = [positions[corner * 3], positions[corner * 3 + 1], positions[corner * 3 + 2]];
    return worldFromPart ? moved(worldFromPart, at) : at;
  });
}

/** Square to the triangle, as long as twice its area. */
function faceNormal(a: Vec3, b: Vec3, c: Vec3): Vec3 {
  return cross(subtract(b, a), subtract(c, a));
}

/** Corners keep their number and the normals that an imported model gives them. */
function addOwn(
  lists: Lists,
  corners: readonly Vec3[],
  { shape, worldFromPart }: PlacedPart,
  normals: Float32Array,
): void {
  const start = lists.positions.length / 3;
  corners.forEach((corner, k) => {
    const own: Vec3 = [normals[k * 3], normals[k * 3 + 1], normals[k * 3 + 2]];
    lists.positions.push(...corner);
    lists.normals.push(...(worldFromPart ? turned(worldFromPart, own) : own));
  });
  for (const index of shape.indices) lists.indices.push(start + index);
}

/** Corners keep their number; each normal is the mean of the faces around it, weighted by their area. */
function addSmooth(lists: Lists, corners: readonly Vec3[], indices: Uint32Array): void {
  const start = lists.positions.length / 3;
  const sums = new Float64Array(corners.length * 3);
  for (let k = 0; k < indices.length; k += 3) {
    const normal = faceNormal(corners[indices[k]], corners[indices[k + 1]], corners[indices[k + 2]]);
    for (let corner = 0; corner < 3; corner += 1) {
      for (let axis = 0; axis < 3; axis += 1) sums[indices[k + corner] * 3 + axis] += normal[axis];
    }
  }
  corners.forEach((corner, index) => {
    lists.positions.push(...corner);
    lists.normals.push(...unit([sums[index * 3], sums[index * 3 + 1], sums[index * 3 + 2]]));
  });
  for (const index of indices) lists.indices.push(start + index);
}

/** A corner is written once for each direction that its faces have. */
function addFaceted(lists: Lists, corners: readonly Vec3[], indices: Uint32Array): void {
  const written = new Map<string, number>();
  for (let k = 0; k < indices.length; k += 3) {
    const face = [indices[k], indices[k + 1], indices[k + 2]];
    const normal = unit(faceNormal(corners[face[0]], corners[face[1]], corners[face[2]]));
    const direction = normal.map((value) => Math.round(value * 1e5)).join();
    for (const index of face) {
      const key = `${index}:${direction}`;
      let place = written.get(key);
      if (place === undefined) {
        place = lists.positions.length / 3;
        lists.positions.push(...corners[index]);
        lists.normals.push(...normal);
        written.set(key, place);
      }
      lists.indices.push(place);
    }
  }
}
