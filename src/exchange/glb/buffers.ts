import { type GltfPrimitive, listed } from './document';
import type { Triangles } from './partMesh';

const FLOAT = 5126;
const UNSIGNED_INT = 5125;
const VERTEX_DATA = 34962;
const INDEX_DATA = 34963;
const VECTOR_BYTES = 12;

type Data = Float32Array | Uint32Array;

/** Collects the meshes' numbers: one buffer, with a view each for positions, normals and indices. */
export class MeshBuffers {
  private readonly accessors: object[] = [];
  private readonly positions = new DataGroup();
  private readonly normals = new DataGroup();
  private readonly indices = new DataGroup();

  /** Takes in triangles (at least one) and gives what a primitive says of them. */
  add(triangles: Triangles): Pick<GltfPrimitive, 'attributes' | 'indices'> {
    const { positions, normals, indices } = triangles;
    const first = this.accessors.length;
    const vectors = { componentType: FLOAT, type: 'VEC3', count: positions.length / 3 };
    const bounds = boundsOf(positions);
    this.accessors.push(
      { bufferView: 0, byteOffset: this.positions.bytes, ...vectors, ...bounds },
      { bufferView: 1, byteOffset: this.normals.bytes, ...vectors },
      {
        bufferView: 2,
        byteOffset: this.indices.bytes,
        componentType: UNSIGNED_INT,
        type: 'SCALAR',
        count: indices.length,
      },
    );
    this.positions.push(positions);
    this.normals.push(normals);
    this.indices.push(indices);
    return { attributes: { POSITION: first, NORMAL: first + 1 }, indices: first + 2 };
  }

  /** The document's lists that belong to the buffer, and the buffer itself. */
  finish(): { readonly lists: object; readonly binary: Uint8Array } {
    if (this.accessors.length === 0) return { lists: {}, binary: new Uint8Array() };
    const groups = [this.positions, this.normals, this.indices];
    const lengths = groups.map(({ bytes }) => bytes);
    const starts = [0, lengths[0], lengths[0] + lengths[1]];
    const binary = new Uint8Array(lengths[0] + lengths[1] + lengths[2]);
    groups.forEach((group, index) => {
      let at = starts[index];
      for (const data of group.list) {
        binary.set(new Uint8Array(data.buffer, data.byteOffset, data.byteLength), at);
        at += data.byteLength;
      }
    });
    const bufferViews = groups.map((_, index) => ({
      buffer: 0,
      byteOffset: starts[index],
      byteLength: lengths[index],
      ...(index < 2 ? { byteStride: VECTOR_BYTES, target: VERTEX_DATA } : { target: INDEX_DATA }),
    }));
    return {
      lists: {
        ...listed('accessors', this.accessors),
        bufferViews,
        buffers: [{ byteLength: binary.length }],
      },
      binary,
    };
  }
}

/** Numbers of one kind, one after the other, and how many bytes they are by now. */
class DataGroup {
  readonly list: Data[] = [];
  bytes = 0;

  push(data: Data): void {
    this.list.push(data);
    this.bytes += data.byteLength;
  }
}

function boundsOf(positions: Float32Array): { readonly min: number[]; readonly max: number[] } {
  const min = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const max = min.map((value) => -value);
  positions.forEach((value, index) => {
    const axis = index % 3;
    if (value < min[axis]) min[axis] = value;
    if (value > max[axis]) max[axis] = value;
  });
  return { min, max };
}
