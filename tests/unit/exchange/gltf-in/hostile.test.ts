import { describe, expect, test } from 'vitest';
import { packGlb } from '../../../../src/exchange/glb/container';
import { ModelFault } from '../../../../src/exchange/gltf-in/modelFault';
import { readModel } from '../../../../src/exchange/gltf-in/readModel';
import { triangleDescription, triangleGlb } from '../../../plans/glbOf';
import { makeDraco, REAL_MODELS } from '../../../plans/realModels';

/** The sentence that a file is refused with; fails when it is read, or when anything but a sentence comes. */
async function sentenceFor(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const outcome = await readModel(bytes, makeDraco).catch((error: unknown) => error);
  expect(outcome).toBeInstanceOf(ModelFault);
  const { message } = outcome as ModelFault;
  expect(message).toMatch(/^[A-Z][^\n]{10,300}\.$/);
  return message;
}

const changed = (
  bytes: Uint8Array<ArrayBuffer>,
  change: (view: DataView) => void,
): Uint8Array<ArrayBuffer> => {
  const copy = bytes.slice();
  change(new DataView(copy.buffer));
  return copy;
};

test('a file cut anywhere is refused with a sentence', async () => {
  for (const whole of [REAL_MODELS.bunny, REAL_MODELS.sign, triangleGlb()]) {
    for (let k = 0; k < 50; k += 1) {
      await sentenceFor(whole.slice(0, Math.floor((whole.length * k) / 50)));
    }
  }
});

test('a cut file is called that', async () => {
  expect(await sentenceFor(REAL_MODELS.bunny.slice(0, 9000))).toBe(
    'The file is cut short: it should have 18,808 bytes and has 9,000. Copy it once more.',
  );
});

describe('the container', () => {
  test('other letters at the beginning', async () => {
    expect(await sentenceFor(changed(triangleGlb(), (view) => view.setUint32(0, 7)))).toContain('is no GLB');
    expect(await sentenceFor(new Uint8Array(0))).toContain('is no GLB');
  });
  test('a .gltf, which is text', async () => {
    const text = new TextEncoder().encode(JSON.stringify(triangleDescription()));
    expect(await sentenceFor(Uint8Array.from(text))).toContain('a .gltf');
  });
  test('a header that says two gigabytes', async () => {
    const found = await sentenceFor(changed(triangleGlb(), (view) => view.setUint32(8, 2 ** 31, true)));
    expect(found).toContain('2,147,483,648');
  });
  test('version 1', async () => {
    expect(await sentenceFor(changed(triangleGlb(), (view) => view.setUint32(4, 1, true)))).toContain(
      'version 1',
    );
  });
  test('a description that is no JSON', async () => {
    expect(await sentenceFor(changed(triangleGlb(), (view) => view.setUint8(20, 0)))).toContain('not JSON');
  });
});

describe('the description', () => {
  const refused = (over: Record<string, unknown>): Promise<string> => sentenceFor(triangleGlb(over));

  test.each([
    ['http://example.org/roof.bin', 'from the network'],
    ['https://example.org/roof.bin', 'from the network'],
    ['//example.org/roof.bin', 'from the network'],
    ['file:///etc/passwd', 'from the network'],
    ['roof.bin', 'in another file'],
    ['../roof.bin', 'in another file'],
  ])('a part of it at %s', async (uri, words) => {
    expect(await refused({ buffers: [{ byteLength: 36, uri }] })).toContain(words);
    expect(await refused({ images: [{ uri }] })).toContain(words);
  });
  test('no triangles', async () => {
    expect(await refused({ nodes: [{}] })).toContain('no triangles');
    expect(await refused({ scenes: [{}] })).toContain('no triangles');
    const strokes = [{ primitives: [{ attributes: { POSITION: 0 }, mode: 0 }] }];
    expect(await refused({ meshes: strokes })).toContain('only points and lines');
  });
  test('corners that are no numbers', async () => {
    const nowhere = new Float32Array(9).fill(Number.NaN);
    expect(await sentenceFor(triangleGlb({}, nowhere))).toContain('not numbers');
  });
  test('a node that is its own ancestor', async () => {
    const nodes = [{ mesh: 0, children: [1] }, { children: [2] }, { children: [1] }];
    expect(await refused({ nodes })).toMatch(/hangs on/);
    expect(await refused({ nodes: [{ children: [0] }] })).toContain('round a circle');
  });
  test('counts beyond its bytes, and beyond all bounds', async () => {
    const accessor = { bufferView: 0, componentType: 5126, type: 'VEC3' };
    expect(await refused({ accessors: [{ ...accessor, count: 4 }] })).toContain('longer than the bytes');
    expect(await refused({ accessors: [{ ...accessor, count: 4e9 }] })).toContain('corners');
    expect(await refused({ accessors: [{ componentType: 5126, type: 'VEC3', count: 4e9 }] })).toContain(
      'corners',
    );
    expect(await refused({ accessors: [{ ...accessor, count: 1e300 }] })).toContain('accessors.0.count');
    expect(await refused({ buffers: [{ byteLength: 4e9 }] })).toContain('cut short');
    expect(await refused({ bufferViews: [{ buffer: 0, byteLength: 4e9 }] })).toContain('beyond its buffer');
  });
  test('triangles that name corners that are not there', async () => {
    const corners = Float32Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0, 0);
    const indices = new Uint32Array(corners.buffer);
    indices[9] = 0x02010009;
    const found = await sentenceFor(
      triangleGlb(
        {
          meshes: [{ primitives: [{ attributes: { POSITION: 0 }, indices: 1 }] }],
          buffers: [{ byteLength: 40 }],
          bufferViews: [
            { buffer: 0, byteLength: 36 },
            { buffer: 0, byteOffset: 36, byteLength: 4 },
          ],
          accessors: [
            { bufferView: 0, componentType: 5126, count: 3, type: 'VEC3' },
            { bufferView: 1, componentType: 5121, count: 3, type: 'SCALAR' },
          ],
        },
        corners,
      ),
    );
    expect(found).toContain('name corners');
  });
  test('an extension that nothing can be read without', async () => {
    expect(await refused({ extensionsRequired: ['XX_secret'] })).toContain('XX_secret');
  });
  test('a name that would break a line is no part of a sentence', async () => {
    expect(await refused({ extensionsRequired: ['XX\u0000\u202e\nsecret'] })).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  });
  test('places beyond all measure', async () => {
    expect(await refused({ nodes: [{ mesh: 0, scale: [1e30, 1, 1] }] })).toContain('from its origin');
  });
  test('copies without end', async () => {
    const nodes = [{ mesh: 0, extensions: { EXT_mesh_gpu_instancing: { attributes: { TRANSLATION: 1 } } } }];
    const accessors = [
      { bufferView: 0, componentType: 5126, count: 3, type: 'VEC3' },
      { componentType: 5126, count: 5_000_000, type: 'VEC3' },
    ];
    expect(await refused({ nodes, accessors })).toContain('copies');
  });
  test('a description of another kind', async () => {
    for (const other of [null, [], 'glTF', 7, {}, { asset: 2 }, { asset: { version: '1.0' } }]) {
      await sentenceFor(packGlb(other as object, new Uint8Array(0)));
    }
  });
});
