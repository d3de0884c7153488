import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packGlb } from '../../src/exchange/glb/container';
import { ModelFault } from '../../src/exchange/gltf-in/modelFault';
import { readModel } from '../../src/exchange/gltf-in/readModel';
import { brokenNumbers } from '../plans/brokenNumbers';
import { triangleDescription } from '../plans/glbOf';
import { makeDraco, REAL_MODELS } from '../plans/realModels';
import { scanGlb } from '../plans/scan';
import { type Mutation, mutated, pathsOf } from './mutation';

/** How many files each test makes, and the seed that makes the same ones again: others each time, unless it is given. */
const RUNS = Number(process.env.FUZZ_RUNS ?? 300);
const given = Number(process.env.FUZZ_SEED ?? Number.NaN);
const SEED = Number.isInteger(given) ? given : Date.now() % 2 ** 31;

/** One sentence, or a model whose numbers are numbers. */
async function holds(bytes: Uint8Array<ArrayBuffer>): Promise<boolean> {
  try {
    const { model, extent, triangles } = await readModel(bytes, makeDraco);
    expect(brokenNumbers({ extent, centre: model.centre })).toEqual([]);
    expect(triangles).toBeGreaterThan(0);
    for (const { positions, indices } of model.chunks) {
      expect(indices.every((corner) => corner < positions.length / 3)).toBe(true);
      expect(positions.every(Number.isFinite)).toBe(true);
    }
    return true;
  } catch (error) {
    if (!(error instanceof ModelFault)) throw error;
    expect(error.message).toMatch(/^[A-Z][^\n]+\.$/);
    return false;
  }
}

const small = scanGlb(8);
const wholes = [REAL_MODELS.bunny, REAL_MODELS.sign, small];

const description: unknown = triangleDescription({
  nodes: [
    { mesh: 0, name: 'flag', translation: [1, 2, 3], children: [1] },
    { mesh: 0, rotation: [0, 1, 0, 0], scale: [2, 2, 2] },
  ],
});
const corners = new Uint8Array(Float32Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0).buffer);
const paths = pathsOf(description);
const place = fc.nat({ max: paths.length - 1 });
const odd = fc.oneof(
  fc.constantFrom<unknown>(0, -1, 1, 0.5, 1e9, 4e9, 2 ** 53, 1e308, null, true, '', 'http://x/', [], {}, [
    [],
  ]),
  fc.jsonValue({ maxDepth: 2 }),
);
const mutation: fc.Arbitrary<Mutation> = fc.oneof(
  fc.record({ kind: fc.constant('put' as const), path: place, value: odd }),
  fc.record({ kind: fc.constant('take away' as const), path: place }),
  fc.record({ kind: fc.constant('twice' as const), path: place }),
  fc.record({ kind: fc.constant('copy' as const), path: place, from: place }),
);

describe(`seed ${SEED}`, () => {
  test(`models with some bytes changed, ${RUNS} times: a sentence, or a sound model`, async () => {
    let read = 0;
    const change = fc.record({
      whole: fc.constantFrom(...wholes),
      bytes: fc.array(
        fc.record({
          at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
          to: fc.nat({ max: 255 }),
        }),
        {
          minLength: 1,
          maxLength: 3,
        },
      ),
    });
    await fc.assert(
      fc.asyncProperty(change, async ({ whole, bytes }) => {
        const copy = whole.slice();
        for (const { at, to } of bytes) copy[Math.floor(at * copy.length)] = to;
        if (await holds(copy)) read += 1;
      }),
      { numRuns: RUNS, seed: SEED },
    );
    console.log(`${read} of ${RUNS} changed models could still be read`);
  });

  test(`a description with one thing changed, ${RUNS} times: a sentence, or a sound model`, async () => {
    await fc.assert(
      fc.asyncProperty(mutation, async (change) => {
        await holds(packGlb(Object(mutated(description, paths, change)), corners));
      }),
      { numRuns: RUNS, seed: SEED },
    );
  });

  test(`any bytes, ${RUNS} times: a sentence`, async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => {
        expect(await holds(Uint8Array.from(bytes))).toBe(false);
      }),
      { numRuns: RUNS, seed: SEED },
    );
  });
});
