import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { planToFdl } from '../../../src/exchange/fdl/fdl';
import { writePlanPack } from '../../../src/exchange/planPack/write';
import { planToUsda } from '../../../src/exchange/usd/usda';
import { planToUsdz } from '../../../src/exchange/usd/usdz';
import { packedPlan } from '../../plans/packed';
import { fakeTerminal } from './fakeTerminal';

const { plan, files } = packedPlan();
const [model, picture] = [...files.values()];
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-files-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const at = (...names: readonly string[]): string => join(folder, ...names);

async function answer(...words: readonly string[]) {
  const terminal = fakeTerminal();
  const status = await run(words, terminal);
  return { status, printed: terminal.printed(), errors: terminal.errors() };
}

test('export writes USD, frame lines and a pack, as their writers make them', async () => {
  writeFileSync(
    at('roof.plan.json'),
    serialisePlan({ ...plan, pieces: plan.pieces.slice(0, 4), underlay: undefined }),
  );
  const own = { ...plan, pieces: plan.pieces.slice(0, 4) };
  delete own.underlay;
  const written = async (option: string, ...more: readonly string[]): Promise<Buffer> => {
    const { status, printed, errors } = await answer(
      'export',
      at('roof.plan.json'),
      option,
      at('out'),
      ...more,
    );
    expect(status, errors).toBe(0);
    expect(printed).toMatch(/^Wrote ".*out": .*, [\d.]+ MB\.\n$/);
    return readFileSync(at('out'));
  };
  expect(Buffer.compare(await written('--usda', '--at', '1'), planToUsda(own, 1))).toBe(0);
  expect(Buffer.compare(await written('--usdz'), planToUsdz(own, 0))).toBe(0);
  expect((await written('--fdl')).toString()).toBe(await planToFdl(own));
  expect(Buffer.compare(await written('--zip'), (await writePlanPack(own, async () => null)).bytes)).toBe(0);
});

test('a pack goes to another folder with its files, and opens there as it was', async () => {
  writeFileSync(at('roof.plan.json'), serialisePlan(plan));
  writeFileSync(at('Tank house.GLB'), model);
  writeFileSync(at('roof.jpg'), picture);
  expect((await answer('export', at('roof.plan.json'), '--zip', at('roof.standclear.zip'))).errors).toBe('');

  const opened = await answer('open', at('roof.standclear.zip'), '-o', at('there', 'deep'));
  expect(opened.status, opened.errors).toBe(0);
  expect(opened.printed).toMatch(/^Wrote ".*roof\.plan\.json" and 2 files beside it\.\n$/);
  expect(readdirSync(at('there', 'deep')).sort()).toEqual(['Tank house.GLB', 'roof.jpg', 'roof.plan.json']);
  expect(readFileSync(at('there', 'deep', 'roof.plan.json'), 'utf8')).toBe(serialisePlan(plan));
  expect(Buffer.compare(readFileSync(at('there', 'deep', 'Tank house.GLB')), model)).toBe(0);

  // Nothing is written over.
  const again = await answer('open', at('roof.standclear.zip'), '-o', at('there', 'deep'));
  expect(again.status).toBe(2);
  expect(again.errors).toContain('there is a file of that name, which is left alone');
});

test('what is not beside the plan is said, and a pack is no plan', async () => {
  writeFileSync(at('roof.plan.json'), serialisePlan(plan));
  writeFileSync(at('roof.jpg'), 'another');
  const packed = await answer('export', at('roof.plan.json'), '--zip', at('roof.zip'));
  expect(packed.status).toBe(0);
  expect(packed.errors).toContain('"Tank house.GLB" is not beside the plan, and not in the pack.');
  expect(packed.errors).toContain('is another file than the one that the plan was made with');
  expect((await answer('report', at('roof.zip'))).errors).toContain(
    'is a file pack: standclear open takes it apart.',
  );
  const opened = await answer('open', at('roof.plan.json'), '-o', at('there'));
  expect(opened.status).toBe(2);
  expect(opened.errors).toContain('no directory at its end');
});

test('a name that would lead out of the folder is not written', async () => {
  const pieces = plan.pieces.map((piece) =>
    piece.kind === 'model' ? { ...piece, asset: { ...piece.asset, name: '../out.glb' } } : piece,
  );
  const { bytes } = await writePlanPack({ ...plan, pieces }, async ({ sha256 }) => files.get(sha256) ?? null);
  writeFileSync(at('roof.zip'), bytes);
  const opened = await answer('open', at('roof.zip'), '-o', at('there'));
  expect(opened.status).toBe(0);
  expect(opened.errors).toContain('"../out.glb" is no name for a file, and was not written.');
  expect(readdirSync(folder).sort()).toEqual(['roof.zip', 'there']);
});
