import fc from 'fast-check';
import { expect } from 'vitest';
import { readPlanPack } from '../../src/exchange/planPack/read';
import { writePlanPack } from '../../src/exchange/planPack/write';
import { packedPlan } from '../plans/packed';
import { fuzzed } from './fuzzed';
import { byteChanges, share } from './mutation';

const { plan, files } = packedPlan();
const whole = (await writePlanPack(plan, async ({ sha256 }) => files.get(sha256) ?? null)).bytes;

/** One sentence, or the very files that the plan names. */
async function holds(bytes: Uint8Array): Promise<string> {
  const read = await readPlanPack(bytes);
  if (!read.ok) {
    expect(read.sentence).toMatch(/^\S[^\p{Cc}\u2028\u2029]*\.$/u);
    return 'refused';
  }
  for (const { asset, bytes: file } of read.pack.files)
    expect(Buffer.compare(file, files.get(asset.sha256) ?? new Uint8Array())).toBe(0);
  return 'read';
}

fuzzed('a pack: any bytes', fc.uint8Array({ maxLength: 400 }), holds);

/** Most of the changes are in its directory, which lies at its end. */
const tail = Math.max(0, whole.length - 400) / whole.length;
fuzzed(
  'a pack: some bytes changed',
  byteChanges(
    [whole],
    fc.oneof(
      share.map((part) => tail + part * (1 - tail)),
      share,
    ),
  ),
  holds,
);
