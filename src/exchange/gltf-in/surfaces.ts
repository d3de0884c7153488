import type { Accessor, Document, Primitive } from '@gltf-transform/core';
import type { Description } from './description';
import { shortened } from './description';
import type { Looks, SurfaceLook } from './looks';
import { counted, ModelFault } from './modelFault';
import { bent, type Skeleton, skeletonOf } from './skeleton';
import { after, composed, IDENTITY, type Matrix, mirrors } from './standings';
import { makesTriangles } from './trimmed';
import { valuesOf } from './unpack';

/** A surface of the model as it stands in the scene: in the file's units and axes, corners in double precision. */
export interface Surface {
  readonly name: string;
  readonly positions: Float64Array;
  readonly normals: Float32Array | null;
  readonly colours: Uint16Array;
  readonly places: Float32Array | null;
  readonly indices: Uint32Array;
  readonly look: SurfaceLook;
}

/** What was met on the way and not taken in. */
export interface LeftOut {
  /** Lines and points. */
  strokes: number;
  /** Triangles with a corner that is no number. */
  nowhere: number;
  seeThrough: number;
}

/** More triangles than any scan of a roof that a browser can draw. */
export const MOST_TRIANGLES = 8_000_000;
/** Copies of one mesh. */
const MOST_COPIES = 200_000;

interface Source {
  readonly description: Description;
  readonly document: Document;
  readonly looks: Looks;
  readonly world: ReadonlyMap<number, Matrix>;
}

/** Every surface of the scene, node by node in the file's order. @throws ModelFault */
export function* surfacesOf(source: Source, leftOut: LeftOut): Generator<Surface, void, void> {
  const { description, document, looks, world } = source;
  const meshes = document.getRoot().listMeshes();
  let triangles = 0;
  for (const [index, matrix] of world) {
    const node = description.nodes[index];
    if (node.mesh === undefined) continue;
    const entry = description.meshes[node.mesh];
    leftOut.strokes += entry.primitives.filter((each) => !makesTriangles(each)).length;
    const skeleton = node.skin === undefined ? null : skeletonOf(description, document, node.skin, world);
    const copies = copiesOf(node.extensions?.EXT_mesh_gpu_instancing?.attributes ?? null, document);
    const entries = entry.primitives.filter(makesTriangles);
    const primitives = meshes[node.mesh].listPrimitives();
    for (const [place, primitive] of primitives.entries()) {
      const { mode, material } = entries[place];
      const look = looks.of(material);
      const indices = trianglesOf(primitive, mode);
      triangles += (indices.length / 3) * copies.length;
      if (triangles > MOST_TRIANGLES) {
        throw new ModelFault(
          `The model has more than ${counted(MOST_TRIANGLES)} triangles. Thin it out where it was made, and import that.`,
        );
      }
      if (look.isSeeThrough) leftOut.seeThrough += 1;
      for (const copy of copies) {
        // A skin's joints say where its corners are; where its own node stands is not asked, as glTF has it.
        const standing = skeleton ? IDENTITY : after(matrix, copy);
        yield surfaceOf(
          primitive,
          indices,
          standing,
          skeleton,
          look,
          nameOf(node.name || entry.name),
          leftOut,
        );
      }
    }
  }
}

const LONGEST_NAME = 40;
/** A node's name, fit for a sentence; `scan` where there is none. */
function nameOf(word: string): string {
  return shortened(word).replace(/\s+/g, ' ').slice(0, LONGEST_NAME).trim() || 'scan';
}

function trianglesOf(primitive: Primitive, mode: number): Uint32Array {
  const corners = primitive.getAttribute('POSITION')?.getCount() ?? 0;
  const listed = primitive.getIndices()?.getArray();
  const order = listed ? Uint32Array.from(listed) : Uint32Array.from({ length: corners }, (_, k) => k);
  if (order.some((corner) => corner >= corners)) {
    throw new ModelFault(
      'The triangles in the file name corners that it does not have. Save the model anew.',
    );
  }
  if (mode === 4) return order.length % 3 === 0 ? order : order.slice(0, order.length - (order.length % 3));
  const triangles = new Uint32Array(Math.max(0, order.length - 2) * 3);
  for (let k = 0; k + 2 < order.length; k += 1) {
    if (mode === 6) triangles.set([order[0], order[k + 1], order[k + 2]], k * 3);
    else if (k % 2 === 0) triangles.set([order[k], order[k + 1], order[k + 2]], k * 3);
    else triangles.set([order[k + 1], order[k], order[k + 2]], k * 3);
  }
  return triangles;
}

/** Where the copies of a mesh stand on their node: once at its own place, unless it says otherwise. */
function copiesOf(
  attributes: Readonly<Record<string, number>> | null,
  document: Document,
): readonly Matrix[] {
  if (!attributes) return [IDENTITY];
  const accessors = document.getRoot().listAccessors();
  const read = (word: string): { readonly values: ArrayLike<number>; readonly count: number } | null => {
    const accessor: Accessor | undefined = accessors[attributes[word] ?? -1];
    return accessor ? { values: valuesOf(accessor), count: accessor.getCount() } : null;
  };
  const [t, r, s] = [read('TRANSLATION'), read('ROTATION'), read('SCALE')];
  const count = Math.max(...[t, r, s].map((list) => list?.count ?? 0));
  if (count > MOST_COPIES) {
    throw new ModelFault(
      `The model has ${counted(count)} copies of one mesh; at most ${counted(MOST_COPIES)} are read.`,
    );
  }
  const slice = (list: typeof t, k: number, size: number, otherwise: readonly number[]): readonly number[] =>
    list && k < list.count ? Array.from({ length: size }, (_, c) => list.values[k * size + c]) : otherwise;
  return Array.from({ length: count }, (_, k) =>
    composed(slice(t, k, 3, [0, 0, 0]), slice(r, k, 4, [0, 0, 0, 1]), slice(s, k, 3, [1, 1, 1])),
  );
}

function surfaceOf(
  primitive: Primitive,
  indices: Uint32Array,
  matrix: Matrix,
  skeleton: Skeleton | null,
  look: SurfaceLook,
  name: string,
  leftOut: LeftOut,
): Surface {
  const position = primitive.getAttribute('POSITION');
  const own = position ? valuesOf(position) : [];
  const bend = skeleton && bent(primitive, skeleton);
  const corners = own.length / 3;
  const positions = new Float64Array(own.length);
  for (let k = 0; k < corners; k += 1) {
    const m = bend ? bend(k) : matrix;
    const [x, y, z] = [own[k * 3], own[k * 3 + 1], own[k * 3 + 2]];
    positions[k * 3] = m[0] * x + m[4] * y + m[8] * z + m[12];
    positions[k * 3 + 1] = m[1] * x + m[5] * y + m[9] * z + m[13];
    positions[k * 3 + 2] = m[2] * x + m[6] * y + m[10] * z + m[14];
  }
  return {
    name,
    positions,
    normals: normalsOf(primitive, matrix, bend, corners),
    colours: coloursOf(primitive, look, corners),
    places: look.picture ? placesOf(primitive, look, corners) : null,
    indices: sound(indices, positions, mirrors(bend ? bend(0) : matrix), leftOut),
    look,
  };
}

/** The triangles whose corners are somewhere, turned round where the motion mirrors them; those without area are dropped. */
function sound(indices: Uint32Array, positions: Float64Array, turn: boolean, leftOut: LeftOut): Uint32Array {
  const isNowhere = (corner: number): boolean =>
    !Number.isFinite(positions[corner * 3] + positions[corner * 3 + 1] + positions[corner * 3 + 2]);
  const kept = new Uint32Array(indices.length);
  let at = 0;
  for (let k = 0; k < indices.length; k += 3) {
    const [a, b, c] = [indices[k], indices[k + 1], indices[k + 2]];
    if (a === b || b === c || c === a) continue;
    if (isNowhere(a) || isNowhere(b) || isNowhere(c)) {
      leftOut.nowhere += 1;
      continue;
    }
    kept[at] = a;
    kept[at + 1] = turn ? c : b;
    kept[at + 2] = turn ? b : c;
    at += 3;
  }
  return at === kept.length ? kept : kept.slice(0, at);
}

function normalsOf(
  primitive: Primitive,
  matrix: Matrix,
  bend: ((corner: number) => Matrix) | null,
  corners: number,
): Float32Array | null {
  const normal = primitive.getAttribute('NORMAL');
  if (!normal || normal.getCount() !== corners) return null;
  const own = valuesOf(normal);
  const normals = new Float32Array(corners * 3);
  for (let k = 0; k < corners; k += 1) {
    const m = bend ? bend(k) : matrix;
    const sign = mirrors(m) ? -1 : 1;
    const [x, y, z] = [own[k * 3], own[k * 3 + 1], own[k * 3 + 2]];
    // Cofactors of the motion: what turns a plane's normal as the motion turns the plane.
    const nx =
      (m[5] * m[10] - m[6] * m[9]) * x + (m[2] * m[9] - m[1] * m[10]) * y + (m[1] * m[6] - m[2] * m[5]) * z;
    const ny =
      (m[6] * m[8] - m[4] * m[10]) * x + (m[0] * m[10] - m[2] * m[8]) * y + (m[2] * m[4] - m[0] * m[6]) * z;
    const nz =
      (m[4] * m[9] - m[5] * m[8]) * x + (m[1] * m[8] - m[0] * m[9]) * y + (m[0] * m[5] - m[1] * m[4]) * z;
    const size = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (!(size > 0) || !Number.isFinite(size)) {
      normals[k * 3 + 1] = 1;
      continue;
    }
    normals[k * 3] = (sign * nx) / size;
    normals[k * 3 + 1] = (sign * ny) / size;
    normals[k * 3 + 2] = (sign * nz) / size;
  }
  return normals;
}

const FULL = 65535;

function coloursOf(primitive: Primitive, { colour }: SurfaceLook, corners: number): Uint16Array {
  const accessor = primitive.getAttribute('COLOR_0');
  const own = accessor && accessor.getCount() === corners ? valuesOf(accessor) : null;
  const size = accessor?.getElementSize() ?? 3;
  const colours = new Uint16Array(corners * 3);
  for (let k = 0; k < corners; k += 1) {
    for (let channel = 0; channel < 3; channel += 1) {
      const value = colour[channel] * (own ? own[k * size + channel] : 1);
      colours[k * 3 + channel] = Math.round(FULL * Math.min(1, Math.max(0, value)));
    }
  }
  return colours;
}

function placesOf(
  primitive: Primitive,
  { set, placing: m }: SurfaceLook,
  corners: number,
): Float32Array | null {
  const accessor = primitive.getAttribute(set);
  if (!accessor || accessor.getCount() !== corners) return null;
  const own = valuesOf(accessor);
  const places = new Float32Array(corners * 2);
  for (let k = 0; k < corners; k += 1) {
    const [u, v] = [own[k * 2], own[k * 2 + 1]];
    places[k * 2] = m[0] * u + m[1] * v + m[2];
    places[k * 2 + 1] = m[3] * u + m[4] * v + m[5];
  }
  return places;
}
