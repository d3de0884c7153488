import type { ModelChunk } from '../../core/form/models/heldModel';
import type { Gathered } from './gathered';

/** Triangles in a stretch of a large surface: enough to be worth a look, few enough to be passed over as one. */
const CHUNK_TRIANGLES = 1024;
/** Up to this many triangles a surface stays in one piece, so that a closed one is known as a solid. */
const WHOLE_TRIANGLES = 6000;

/** Cuts a surface into stretches that lie together; a small one stays whole. */
export function chunksOf(surface: Gathered): ModelChunk[] {
  const triangles = surface.indices.length / 3;
  if (triangles <= WHOLE_TRIANGLES) return [stretch(surface, null, 0, triangles)];
  const order = alongCurve(surface);
  const count = Math.ceil(triangles / CHUNK_TRIANGLES);
  return Array.from({ length: count }, (_, k) =>
    stretch(surface, order, Math.floor((triangles * k) / count), Math.floor((triangles * (k + 1)) / count)),
  );
}

const CELLS = 1024;

/**
 * The triangles in the order of their middles along a curve that fills space (Morton's; common practice, no source):
 * what follows each other lies together.
 */
function alongCurve({ positions, indices }: Gathered): Uint32Array {
  const triangles = indices.length / 3;
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  const middles = new Float32Array(indices.length);
  for (let k = 0; k < indices.length; k += 3) {
    for (let axis = 0; axis < 3; axis += 1) {
      const middle =
        (positions[indices[k] * 3 + axis] +
          positions[indices[k + 1] * 3 + axis] +
          positions[indices[k + 2] * 3 + axis]) /
        3;
      middles[k + axis] = middle;
      if (middle < low[axis]) low[axis] = middle;
      if (middle > high[axis]) high[axis] = middle;
    }
  }
  const size = Math.max(high[0] - low[0], high[1] - low[1], high[2] - low[2]) || 1;
  const keys = new Float64Array(triangles);
  for (let t = 0; t < triangles; t += 1) {
    let code = 0;
    for (let axis = 0; axis < 3; axis += 1) {
      const cell = Math.min(CELLS - 1, Math.floor(((middles[t * 3 + axis] - low[axis]) / size) * CELLS));
      code |= spread(cell) << axis;
    }
    // The place of the triangle rides along below the code: one sort of plain numbers, and ties keep their order.
    keys[t] = code * PLACES + t;
  }
  keys.sort();
  return Uint32Array.from(keys, (key) => key % PLACES);
}

/** More places than triangles; times the largest code it stays below 2^53. */
const PLACES = 2 ** 23;

/** The ten bits of a number with two free places after each. */
function spread(cell: number): number {
  let bits = cell & 0x3ff;
  bits = (bits | (bits << 16)) & 0x030000ff;
  bits = (bits | (bits << 8)) & 0x0300f00f;
  bits = (bits | (bits << 4)) & 0x030c30c3;
  return (bits | (bits << 2)) & 0x09249249;
}

let numbers = new Int32Array(0);

/** Some triangles of a surface with the corners that they use, in the order of their first use. */
function stretch(surface: Gathered, order: Uint32Array | null, from: number, to: number): ModelChunk {
  const corners = surface.positions.length / 3;
  if (numbers.length < corners) numbers = new Int32Array(corners);
  const indices = new Uint32Array((to - from) * 3);
  const used: number[] = [];
  for (let k = from; k < to; k += 1) {
    const triangle = (order ? order[k] : k) * 3;
    for (let c = 0; c < 3; c += 1) {
      const corner = surface.indices[triangle + c];
      if (numbers[corner] === 0) {
        used.push(corner);
        numbers[corner] = used.length;
      }
      indices[(k - from) * 3 + c] = numbers[corner] - 1;
    }
  }
  for (const corner of used) numbers[corner] = 0;
  return {
    name: surface.name,
    positions: picked(surface.positions, 3, used, Float32Array),
    indices,
    isCut: order !== null,
    skin: {
      normals: surface.normals && picked(surface.normals, 3, used, Float32Array),
      colours: picked(surface.colours, 3, used, Uint16Array),
      places: surface.places && picked(surface.places, 2, used, Float32Array),
      picture: surface.picture,
      isCutOut: surface.isCutOut,
    },
  };
}

function picked<Numbers extends Float32Array | Uint16Array>(
  values: Numbers,
  each: number,
  used: readonly number[],
  Make: new (length: number) => Numbers,
): Numbers {
  const own = new Make(used.length * each);
  used.forEach((corner, k) => {
    for (let c = 0; c < each; c += 1) own[k * each + c] = values[corner * each + c];
  });
  return own;
}
