import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPlanPack } from '../../src/exchange/planPack/read';
import { writePlanPack } from '../../src/exchange/planPack/write';
import { packedPlan } from '../plans/packed';

/** How many packs each test makes, and the seed that makes the same ones again: others each time, unless it is given. */
const RUNS = Number(process.env.FUZZ_RUNS ?? 300);
const given = Number(process.env.FUZZ_SEED ?? Number.NaN);
const SEED = Number.isInteger(given) ? given : Date.now() % 2 ** 31;

const { plan, files } = packedPlan();
const whole = (await writePlanPack(plan, async ({ sha256 }) => files.get(sha256) ?? null)).bytes;

/** One sentence, or the very files that the plan names. */
async function holds(bytes: Uint8Array): Promise<void> {
  const read = await readPlanPack(bytes);
  if (!read.ok) {
    expect(read.sentence).toMatch(/^\S[^\n]*\.$/);
    return;
  }
  for (const { asset, bytes: file } of read.pack.files)
    expect(Buffer.compare(file, files.get(asset.sha256) ?? new Uint8Array())).toBe(0);
}

describe(`seed ${SEED}`, () => {
  test('any bytes', async () => {
    await fc.assert(fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), holds), {
      numRuns: RUNS,
      seed: SEED,
    });
  });

  test('a pack with some bytes changed, most of them in its directory', async () => {
    const tail = fc.integer({ min: Math.max(0, whole.length - 400), max: whole.length - 1 });
    const place = fc.oneof(tail, fc.nat({ max: whole.length - 1 }));
    const change = fc.tuple(place, fc.nat({ max: 255 }));
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 6 }), async (changes) => {
        const bytes = Uint8Array.from(whole);
        for (const [at, value] of changes) bytes[at] = value;
        await holds(bytes);
      }),
      { numRuns: RUNS, seed: SEED },
    );
  });
});
