import JSZip from 'jszip';
import { expect, test } from 'vitest';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { readPlanPack } from '../../../src/exchange/planPack/read';
import { writePlanPack } from '../../../src/exchange/planPack/write';
import { packedPlan } from '../../plans/packed';

const { plan, files } = packedPlan();
const fileOf = async ({ sha256 }: { readonly sha256: string }) => files.get(sha256) ?? null;

test('another zip library reads the pack, its checks right', async () => {
  const { bytes, missing } = await writePlanPack(plan, fileOf);
  expect(missing).toEqual([]);
  const zip = await JSZip.loadAsync(bytes, { checkCRC32: true });
  const [model, picture] = [...files.keys()];
  expect(Object.keys(zip.files).sort()).toEqual(
    ['plan.json', `files/${model}.glb`, `files/${picture}.jpg`].sort(),
  );
  expect(await zip.file('plan.json')?.async('string')).toBe(serialisePlan(plan));
  expect(await zip.file(`files/${model}.glb`)?.async('uint8array')).toEqual(
    Uint8Array.from(files.get(model) ?? []),
  );
});

test.each(['STORE', 'DEFLATE'] as const)(
  'a pack that the other library wrote is read (%s)',
  async (compression) => {
    const zip = new JSZip();
    zip.file('plan.json', serialisePlan(plan));
    for (const [sha256, bytes] of files)
      zip.file(`files/${sha256}${bytes[0] === 0x67 ? '.glb' : '.jpg'}`, bytes, { createFolders: false });
    for (const streamFiles of [false, true]) {
      const read = await readPlanPack(
        await zip.generateAsync({ type: 'uint8array', compression, streamFiles }),
      );
      if (!read.ok) throw new Error(read.sentence);
      expect(read.pack.plan).toEqual(plan);
      expect(read.pack.missing).toEqual([]);
      for (const { asset, bytes } of read.pack.files)
        expect(bytes).toEqual(Uint8Array.from(files.get(asset.sha256) ?? []));
      expect(read.pack.files).toHaveLength(2);
    }
  },
);

test('the same plan gives the same bytes, and a file that is not at hand is said', async () => {
  const first = await writePlanPack(plan, fileOf);
  const again = await writePlanPack(plan, fileOf);
  expect(Buffer.compare(first.bytes, again.bytes)).toBe(0);
  const without = await writePlanPack(plan, async () => null);
  expect(without.missing).toEqual(['Tank house.GLB', 'roof.jpg']);
  const read = await readPlanPack(without.bytes);
  if (!read.ok) throw new Error(read.sentence);
  expect(read.pack.missing).toEqual(['Tank house.GLB', 'roof.jpg']);
});

test('a plan that says the same over and over is still one that its reader takes', async () => {
  const notes = 'stand '.repeat(3300);
  const same = { ...plan, notes, setups: [], pieces: [], cast: [], gear: [], underlay: undefined };
  const { bytes } = await writePlanPack(same, fileOf);
  const read = await readPlanPack(bytes);
  expect(read.ok).toBe(true);
});
