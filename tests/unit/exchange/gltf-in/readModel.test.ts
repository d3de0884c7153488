import { expect, test } from 'vitest';
import { trianglesIn } from '../../../../src/core/form/models/heldModel';
import { type ReadModel, readModel } from '../../../../src/exchange/gltf-in/readModel';
import { triangleGlb } from '../../../plans/glbOf';
import { makeDraco, REAL_MODELS } from '../../../plans/realModels';
import { scanGlb } from '../../../plans/scan';

const read = (bytes: Uint8Array<ArrayBuffer>): Promise<ReadModel> => readModel(bytes, makeDraco);

/** The corners of a model's triangles, in the file's own place. */
function cornersOf({ model }: ReadModel): number[][] {
  return model.chunks.flatMap(({ positions, indices }) =>
    Array.from(indices, (corner) =>
      [0, 1, 2].map((axis) => positions[corner * 3 + axis] + model.centre[axis]),
    ),
  );
}

/** The normal of the first triangle, not of unit length. */
function firstNormal(found: ReadModel): number[] {
  const [a, b, c] = cornersOf(found);
  const [u, v] = [b, c].map((corner) => corner.map((value, axis) => value - a[axis]));
  return [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
}

test.each([
  ['bunny', 5648, 'mesh'],
  ['suzi', 14842, 'mesh'],
  ['sign', 1552, 'cube'],
] as const)('reads a model that a package ships: %s', async (name, triangles, part) => {
  const found = await read(REAL_MODELS[name]);
  expect(found.triangles).toBe(triangles);
  expect(trianglesIn(found.model)).toBe(triangles);
  expect(new Set(found.model.chunks.map((chunk) => chunk.name))).toEqual(new Set([part]));
  expect(found.notes).toEqual([]);
});

test('takes the picture on a surface as it is in the file, with a place on it for each corner', async () => {
  const [chunk] = (await read(REAL_MODELS.sign)).model.chunks;
  expect(chunk.skin?.picture?.mime).toBe('image/jpeg');
  expect(chunk.skin?.picture?.bytes.length).toBe(76502);
  expect(chunk.skin?.places?.length).toBe((chunk.positions.length / 3) * 2);
});

test('the same bytes give the same model', async () => {
  expect(await read(REAL_MODELS.suzi)).toEqual(await read(REAL_MODELS.suzi));
});

test('puts nodes where their parents put them, and turns mirrored triangles back', async () => {
  const nodes = [
    { children: [1], translation: [10, 0, 0], scale: [2, 2, 2] },
    { mesh: 0, name: 'flag', translation: [0, 5, 0], scale: [-1, 1, 1] },
  ];
  const found = await read(triangleGlb({ nodes }));
  expect(found.extent).toEqual({ lowest: [8, 10, 0], highest: [10, 12, 0] });
  // The triangle faced +z; mirrored across x it would face −z, were its corners not taken the other way round.
  expect(firstNormal(await read(triangleGlb()))[2]).toBeGreaterThan(0);
  expect(firstNormal(found)[2]).toBeGreaterThan(0);
});

test('reads copies of a mesh, each at its own place', async () => {
  const corners = Float32Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 0, 5, 0, 0);
  const found = await read(
    triangleGlb(
      {
        nodes: [{ mesh: 0, extensions: { EXT_mesh_gpu_instancing: { attributes: { TRANSLATION: 1 } } } }],
        buffers: [{ byteLength: 60 }],
        bufferViews: [
          { buffer: 0, byteLength: 36 },
          { buffer: 0, byteOffset: 36, byteLength: 24 },
        ],
        accessors: [
          { bufferView: 0, componentType: 5126, count: 3, type: 'VEC3' },
          { bufferView: 1, componentType: 5126, count: 2, type: 'VEC3' },
        ],
        extensionsRequired: ['EXT_mesh_gpu_instancing'],
      },
      corners,
    ),
  );
  expect(found.triangles).toBe(2);
  expect(found.extent.highest[0]).toBe(6);
});

test('leaves lines and points out, and says so', async () => {
  const primitives = [{ attributes: { POSITION: 0 } }, { attributes: { POSITION: 0 }, mode: 1 }];
  const found = await read(triangleGlb({ meshes: [{ primitives }] }));
  expect(found.triangles).toBe(1);
  expect(found.notes).toEqual(['Its points and lines were left out (1): they have no surface.']);
});

test('leaves triangles out whose corners are no numbers, and says so', async () => {
  const corners = Float32Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0, Number.NaN, 0, 0, 1, 0, 0, 0, 1, 0);
  const accessors = [{ bufferView: 0, componentType: 5126, count: 6, type: 'VEC3' }];
  const sizes = { buffers: [{ byteLength: 72 }], bufferViews: [{ buffer: 0, byteLength: 72 }] };
  const found = await read(triangleGlb({ ...sizes, accessors }, corners));
  expect(found.triangles).toBe(1);
  expect(found.notes).toEqual(['Triangles without a place were left out (1).']);
});

test('reads the scene that the file starts with, and says that there are others', async () => {
  const found = await read(
    triangleGlb({
      scene: 1,
      scenes: [{ nodes: [0] }, { nodes: [1] }],
      nodes: [{ mesh: 0 }, { mesh: 0, translation: [100, 0, 0] }],
    }),
  );
  expect(found.extent.lowest[0]).toBe(100);
  expect(found.notes).toEqual(['It has 2 scenes; one of them was read.']);
});

test('a large surface is cut into stretches that lie together, without a triangle lost', async () => {
  const found = await read(scanGlb(150_000));
  const { chunks } = found.model;
  expect(trianglesIn(found.model)).toBe(found.triangles);
  expect(chunks.length).toBeGreaterThan(8);
  expect(chunks.every(({ isCut, indices }) => isCut && indices.length / 3 <= 1024)).toBe(true);
  // A stretch of a roof of 24 m is much smaller than the roof.
  const widths = chunks.map(({ positions }) => {
    const xs = positions.filter((_, k) => k % 3 === 0);
    return (
      xs.reduce((most, x) => Math.max(most, x), -Infinity) -
      xs.reduce((least, x) => Math.min(least, x), Infinity)
    );
  });
  expect(widths.toSorted((a, b) => a - b)[Math.floor(widths.length / 2)]).toBeLessThan(9);
});

test('a scan of a million triangles is thinned out to what can be judged, and says how far off it may be', async () => {
  const found = await read(scanGlb(1_000_000));
  const { trianglesInFile, errorUnits } = found.model;
  expect(trianglesInFile).toBeGreaterThan(990_000);
  expect(found.triangles).toBeLessThanOrEqual(300_000);
  expect(errorUnits).toBeGreaterThan(0);
  expect(errorUnits).toBeLessThan(0.012);
  expect(found.extent.highest[0]).toBe(12);
});
