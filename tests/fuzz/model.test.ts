import fc from 'fast-check';
import { expect } from 'vitest';
import { packGlb } from '../../src/exchange/glb/container';
import { ModelFault } from '../../src/exchange/gltf-in/modelFault';
import { readModel } from '../../src/exchange/gltf-in/readModel';
import { brokenNumbers } from '../plans/brokenNumbers';
import { triangleDescription } from '../plans/glbOf';
import { makeDraco, REAL_MODELS } from '../plans/realModels';
import { scanGlb } from '../plans/scan';
import { fuzzed } from './fuzzed';
import { byteChanges, changesTo } from './mutation';

/** A real model of some thousands of triangles is unpacked anew in each run. */
const LONGEST_MS = 3000;

/** One sentence, or a model whose numbers are numbers. */
async function holds(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  try {
    const { model, extent, triangles } = await readModel(bytes, makeDraco);
    expect(brokenNumbers({ extent, centre: model.centre })).toEqual([]);
    expect(triangles).toBeGreaterThan(0);
    for (const { positions, indices } of model.chunks) {
      expect(indices.every((corner) => corner < positions.length / 3)).toBe(true);
      expect(positions.every(Number.isFinite)).toBe(true);
    }
    return 'read';
  } catch (error) {
    if (!(error instanceof ModelFault)) throw error;
    expect(error.message).toMatch(/^[A-Z][^\n]+\.$/);
    return 'refused';
  }
}

fuzzed('a model: some bytes changed', byteChanges([REAL_MODELS.bunny, REAL_MODELS.sign, scanGlb(8)]), holds, {
  longestMs: LONGEST_MS,
});

const description = triangleDescription({
  nodes: [
    { mesh: 0, name: 'flag', translation: [1, 2, 3], children: [1] },
    { mesh: 0, rotation: [0, 1, 0, 0], scale: [2, 2, 2] },
  ],
});
const corners = new Uint8Array(Float32Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0).buffer);
fuzzed(
  'a model: one thing of its description changed',
  changesTo(description).map((changed) => packGlb(Object(changed), corners)),
  holds,
  { longestMs: LONGEST_MS },
);

fuzzed(
  'a model: any bytes',
  fc.uint8Array({ maxLength: 400 }).map((bytes) => Uint8Array.from(bytes)),
  async (bytes) => {
    expect(await holds(bytes)).toBe('refused');
    return 'refused';
  },
);
