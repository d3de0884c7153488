import { packGlb } from '../../src/exchange/glb/container';

/** Lengths of the scanned roof, metres. */
const SIDE = 24;

/** The height of the scanned roof at a place: a deck with a rim, a hut, ducts and the noise of a scan. */
function heightAt(x: number, z: number): number {
  const noise = 0.006 * Math.sin(x * 37.1 + z * 11.3) * Math.sin(z * 41.7 - x * 7.9);
  const isRim = Math.max(Math.abs(x), Math.abs(z)) > SIDE / 2 - 0.4;
  const isHut = Math.abs(x - 4) < 1.6 && Math.abs(z + 5) < 1.3;
  const isDuct = Math.abs(z - 3) < 0.25 && Math.abs(x) < 7;
  return noise + (isRim ? 0.9 : isHut ? 2.4 : isDuct ? 0.5 : 0);
}

/**
 * A GLB of a scanned roof as scanners make them: one open surface without names, so many triangles, with colours by
 * corner. The same count always gives the same bytes.
 */
export function scanGlb(triangles: number): Uint8Array<ArrayBuffer> {
  const cells = Math.max(1, Math.round(Math.sqrt(triangles / 2)));
  const side = cells + 1;
  const positions = new Float32Array(side * side * 3);
  const colours = new Uint8Array(side * side * 4);
  for (let row = 0; row < side; row += 1) {
    for (let column = 0; column < side; column += 1) {
      const corner = row * side + column;
      const [x, z] = [(column / cells - 0.5) * SIDE, (row / cells - 0.5) * SIDE];
      positions.set([x, heightAt(x, z), z], corner * 3);
      const grey = 90 + Math.round(60 * Math.sin(x * 2) ** 2);
      colours.set([grey, grey - 8, grey - 20, 255], corner * 4);
    }
  }
  const indices = new Uint32Array(cells * cells * 6);
  for (let row = 0; row < cells; row += 1) {
    for (let column = 0; column < cells; column += 1) {
      const a = row * side + column;
      indices.set([a, a + side, a + 1, a + 1, a + side, a + side + 1], (row * cells + column) * 6);
    }
  }
  const lists = [positions, colours, indices] as const;
  const binary = new Uint8Array(lists.reduce((sum, { byteLength }) => sum + byteLength, 0));
  let at = 0;
  const bufferViews = lists.map(({ buffer, byteLength }) => {
    binary.set(new Uint8Array(buffer), at);
    at += byteLength;
    return { buffer: 0, byteOffset: at - byteLength, byteLength };
  });
  const count = side * side;
  return packGlb(
    {
      asset: { version: '2.0' },
      scene: 0,
      scenes: [{ nodes: [0] }],
      nodes: [{ mesh: 0 }],
      meshes: [{ primitives: [{ attributes: { POSITION: 0, COLOR_0: 1 }, indices: 2 }] }],
      buffers: [{ byteLength: binary.length }],
      bufferViews,
      accessors: [
        {
          bufferView: 0,
          componentType: 5126,
          count,
          type: 'VEC3',
          min: [-SIDE / 2, -1, -SIDE / 2],
          max: [SIDE / 2, 3, SIDE / 2],
        },
        { bufferView: 1, componentType: 5121, normalized: true, count, type: 'VEC4' },
        { bufferView: 2, componentType: 5125, count: indices.length, type: 'SCALAR' },
      ],
    },
    binary,
  );
}
