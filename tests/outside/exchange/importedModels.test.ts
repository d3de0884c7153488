import { WebIO } from '@gltf-transform/core';
import { EXTMeshoptCompression, KHRDracoMeshCompression } from '@gltf-transform/extensions';
import { MeshoptDecoder, MeshoptEncoder } from 'meshoptimizer';
import { Box3, type BufferGeometry, Mesh } from 'three';
import { GLTFLoader } from 'three/addons/loaders/GLTFLoader.js';
import { describe, expect, test } from 'vitest';
import { planToGlb } from '../../../src/exchange/glb';
import { packGlb } from '../../../src/exchange/glb/container';
import { type ReadModel, readModel } from '../../../src/exchange/gltf-in/readModel';
import { DEMO, readPlan } from '../../plans/readPlan';
import { makeDraco, REAL_MODELS } from '../../plans/realModels';
import { scanGlb } from '../../plans/scan';
import { smallRoof } from '../../unit/smallRoof';

const read = (bytes: Uint8Array<ArrayBuffer>): Promise<ReadModel> => readModel(bytes, makeDraco);

/** Triangles and bounds as three's own loader finds them. */
async function byThree(
  bytes: Uint8Array<ArrayBuffer>,
): Promise<{ readonly triangles: number; readonly box: Box3 }> {
  const { scene } = await new GLTFLoader().parseAsync(bytes.slice().buffer, '');
  scene.updateMatrixWorld(true);
  let triangles = 0;
  const box = new Box3();
  scene.traverse((thing) => {
    if (!(thing instanceof Mesh)) return;
    const geometry: BufferGeometry = thing.geometry;
    triangles += (geometry.index?.count ?? geometry.attributes.position.count) / 3;
    box.union(new Box3().setFromObject(thing, true));
  });
  return { triangles, box };
}

function expectSame({ extent }: ReadModel, { box }: { readonly box: Box3 }, within: number): void {
  for (let axis = 0; axis < 3; axis += 1) {
    expect(Math.abs(extent.lowest[axis] - box.min.getComponent(axis))).toBeLessThan(within);
    expect(Math.abs(extent.highest[axis] - box.max.getComponent(axis))).toBeLessThan(within);
  }
}

test.each([
  ['a small roof', planToGlb(smallRoof(), 1.3)],
  ['the demo night', planToGlb(readPlan(DEMO), 20)],
  ['a scan', scanGlb(40_000)],
] as const)('finds as many triangles, in the same bounds, as another reader does in %s', async (_, glb) => {
  const bytes = Uint8Array.from(glb);
  const [own, other] = [await read(bytes), await byThree(bytes)];
  expect(own.triangles).toBe(other.triangles);
  expectSame(own, other, 1e-4);
});

test('a skin stands where another reader puts it: at rest, by its joints', async () => {
  const floats = Float32Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 0, 0, 0, 1, 0, 0, 0, 0.5, 0.5, 0, 0);
  const joints = Uint8Array.of(0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 0, 0);
  const binary = new Uint8Array(floats.byteLength + joints.byteLength);
  binary.set(new Uint8Array(floats.buffer));
  binary.set(joints, floats.byteLength);
  const glb = packGlb(
    {
      asset: { version: '2.0' },
      scene: 0,
      scenes: [{ nodes: [0, 1] }],
      nodes: [
        { mesh: 0, skin: 0, translation: [50, 0, 0] },
        { translation: [3, 0, 0], children: [2] },
        { rotation: [0, 0, Math.SQRT1_2, Math.SQRT1_2], scale: [2, 2, 2] },
      ],
      skins: [{ joints: [1, 2] }],
      meshes: [{ primitives: [{ attributes: { POSITION: 0, WEIGHTS_0: 1, JOINTS_0: 2 } }] }],
      buffers: [{ byteLength: binary.length }],
      bufferViews: [
        { buffer: 0, byteLength: 36 },
        { buffer: 0, byteOffset: 36, byteLength: 48 },
        { buffer: 0, byteOffset: 84, byteLength: 12 },
      ],
      accessors: [
        { bufferView: 0, componentType: 5126, count: 3, type: 'VEC3', min: [0, 0, 0], max: [1, 1, 0] },
        { bufferView: 1, componentType: 5126, count: 3, type: 'VEC4' },
        { bufferView: 2, componentType: 5121, count: 3, type: 'VEC4' },
      ],
    },
    binary,
  );
  expectSame(await read(glb), await byThree(glb), 1e-6);
});

interface Described {
  readonly accessors: readonly { readonly count: number; readonly min?: number[]; readonly max?: number[] }[];
  readonly meshes: readonly {
    readonly primitives: readonly {
      readonly indices: number;
      readonly attributes: { readonly POSITION: number };
    }[];
  }[];
}

test.each(Object.entries(REAL_MODELS))('finds what the maker of %s says is in it', async (_, bytes) => {
  const length = new DataView(bytes.buffer).getUint32(12, true);
  const { accessors, meshes }: Described = JSON.parse(
    new TextDecoder().decode(bytes.subarray(20, 20 + length)),
  );
  const [{ indices, attributes }] = meshes[0].primitives;
  const { min = [], max = [] } = accessors[attributes.POSITION];
  const found = await read(bytes);
  expect(found.triangles).toBe(accessors[indices].count / 3);
  for (let axis = 0; axis < 3; axis += 1) {
    // Draco rounds places to one part in some thousands of the model.
    expect(Math.abs(found.extent.lowest[axis] - min[axis])).toBeLessThan(1e-3);
    expect(Math.abs(found.extent.highest[axis] - max[axis])).toBeLessThan(1e-3);
  }
});

describe('a model packed in other ways by its own library gives the same triangles', () => {
  /** The bunny without Draco, written once more. */
  async function rewritten(change: 'plain' | 'meshopt' | 'sparse'): Promise<Uint8Array<ArrayBuffer>> {
    await MeshoptEncoder.ready;
    const io = new WebIO()
      .registerExtensions([KHRDracoMeshCompression, EXTMeshoptCompression])
      .registerDependencies({
        'draco3d.decoder': await makeDraco(),
        'meshopt.encoder': MeshoptEncoder,
        'meshopt.decoder': MeshoptDecoder,
      });
    const document = await io.readBinary(REAL_MODELS.bunny);
    for (const extension of document.getRoot().listExtensionsUsed()) extension.dispose();
    if (change === 'meshopt') document.createExtension(EXTMeshoptCompression).setRequired(true);
    if (change === 'sparse')
      for (const accessor of document.getRoot().listAccessors()) accessor.setSparse(true);
    return Uint8Array.from(await io.writeBinary(document));
  }

  test.each(['plain', 'meshopt', 'sparse'] as const)('%s', async (change) => {
    const [whole, found] = [await read(REAL_MODELS.bunny), await read(await rewritten(change))];
    expect(found.triangles).toBe(whole.triangles);
    expect(found.extent).toEqual(whole.extent);
    expect(found.model.chunks.map(({ positions }) => positions)).toEqual(
      whole.model.chunks.map(({ positions }) => positions),
    );
  });
});
