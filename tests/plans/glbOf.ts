import { packGlb } from '../../src/exchange/glb/container';

/** Three corners of a triangle a metre wide, a metre high, as glTF has them. */
const CORNERS = Float32Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0);

type Json = Record<string, unknown>;

/** The description of a file with one triangle, with parts of it replaced. */
export const triangleDescription = (over: Json = {}): Json => ({
  asset: { version: '2.0' },
  scene: 0,
  scenes: [{ nodes: [0] }],
  nodes: [{ mesh: 0, name: 'flag' }],
  meshes: [{ primitives: [{ attributes: { POSITION: 0 } }] }],
  buffers: [{ byteLength: CORNERS.byteLength }],
  bufferViews: [{ buffer: 0, byteLength: CORNERS.byteLength }],
  accessors: [{ bufferView: 0, componentType: 5126, count: 3, type: 'VEC3', min: [0, 0, 0], max: [1, 1, 0] }],
  ...over,
});

/** A GLB of one triangle, its description and its bytes changed as wanted. */
export const triangleGlb = (over: Json = {}, corners: Float32Array = CORNERS): Uint8Array<ArrayBuffer> =>
  packGlb(triangleDescription(over), new Uint8Array(corners.slice().buffer));
