import { strToU8, type Zippable, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { serialisePlan } from '../../../../src/core/plan/serialise';
import { readDirectory } from '../../../../src/exchange/planPack/directory';
import { readPlanPack } from '../../../../src/exchange/planPack/read';
import { entryOf, writePlanPack } from '../../../../src/exchange/planPack/write';
import { packedPlan } from '../../../plans/packed';

const { plan, files } = packedPlan();
const text = strToU8(serialisePlan(plan));
const whole = (await writePlanPack(plan, async ({ sha256 }) => files.get(sha256) ?? null)).bytes;

/** The one sentence that a pack is refused with. */
async function refusal(zip: Uint8Array): Promise<string> {
  const read = await readPlanPack(zip);
  if (read.ok) throw new Error('The pack was read');
  expect(read.sentence).toMatch(/^\S[^\n]*[.]$/);
  return read.sentence;
}

const zipped = (more: Zippable): Uint8Array => zipSync({ 'plan.json': text, ...more });

/** A pack with some numbers of its directory entry for a file written over: [place within the entry, value, bytes]. */
function directoryWith(
  zip: Uint8Array,
  name: string,
  changes: readonly (readonly [number, number, 2 | 4])[],
) {
  const bytes = Uint8Array.from(zip);
  const view = new DataView(bytes.buffer);
  const label = strToU8(name);
  for (let at = 0; at + 46 < bytes.length; at += 1) {
    if (view.getUint32(at, true) !== 0x02014b50) continue;
    if (!label.every((letter, k) => bytes[at + 46 + k] === letter)) continue;
    for (const [place, value, size] of changes)
      if (size === 2) view.setUint16(at + place, value, true);
      else view.setUint32(at + place, value, true);
    return bytes;
  }
  throw new Error(`${name} is not in the directory`);
}

describe('names', () => {
  test.each([
    ['../plan.json', 'leads out of it'],
    ['files/../../x', 'leads out of it'],
    ['./plan.json', 'leads out of it'],
    ['/etc/passwd', 'no place within it'],
    ['C:\\x', 'expected a plain name'],
    ['files/a\u0000b', 'expected a plain name'],
    ['notes.txt', 'its plan does not name'],
    [`files/${'0'.repeat(64)}.glb`, `called "files/${'0'.repeat(64)}.glb", which its plan does not name`],
  ])('%j is refused', async (name, why) => {
    expect(await refusal(zipped({ [name]: strToU8('x') }))).toContain(why);
  });

  test('the same name twice is refused', async () => {
    // A file of another name as long, written over in both places.
    const zip = Buffer.from(zipped({ 'plan.jsox': strToU8('{}') }));
    for (let at = zip.indexOf('plan.jsox'); at >= 0; at = zip.indexOf('plan.jsox'))
      zip.write('plan.json', at);
    expect(await refusal(zip)).toContain('two files called "plan.json"');
  });
});

describe('sizes', () => {
  test('more than 200 files are refused', async () => {
    const many = Object.fromEntries(Array.from({ length: 200 }, (_, k) => [`files/${k}`, strToU8('x')]));
    expect(await refusal(zipped(many))).toContain('has 201 files');
  });

  test('a file that would unpack to more than a hundred times its size is refused before it is unpacked', async () => {
    const bomb = zipSync({ 'plan.json': [new Uint8Array(20_000_000), { level: 9 }] });
    expect(bomb.length).toBeLessThan(40_000);
    expect(await refusal(bomb)).toContain('more than 100 times its size');
  });

  test('one that says it is smaller than it is is stopped while it unpacks', async () => {
    const bomb = zipSync({ 'plan.json': [new Uint8Array(20_000_000), { level: 9 }] });
    const lying = directoryWith(bomb, 'plan.json', [[24, 5000, 4]]);
    expect(await refusal(lying)).toContain('unpacks to more than the 5000 bytes');
  });

  test('more than a gigabyte together is refused, said or not', async () => {
    const stored = zipSync({ 'plan.json': [text, { level: 0 }] });
    const huge = directoryWith(stored, 'plan.json', [
      [20, 0x50000000, 4],
      [24, 0x50000000, 4],
    ]);
    expect(await refusal(huge)).toContain('more than 1073741824 bytes together');
    expect(await refusal(directoryWith(stored, 'plan.json', [[24, 0xffffffff, 4]]))).toContain(
      'four gigabytes',
    );
  });

  test('a stored file that is as large as another number says is refused before it is copied', async () => {
    const stored = zipSync({ 'plan.json': [text, { level: 0 }] });
    expect(await refusal(directoryWith(stored, 'plan.json', [[24, text.length - 1, 4]]))).toContain(
      'expected as many',
    );
  });

  test('no pack is written that is refused where it is read', async () => {
    const [piece] = plan.pieces.filter(({ kind }) => kind === 'model');
    if (piece?.kind !== 'model') throw new Error('the plan has no model');
    const withModels = (count: number): Plan => ({
      ...plan,
      pieces: Array.from({ length: count }, (_, k) => ({
        ...piece,
        id: `model-${k}`,
        asset: { ...piece.asset, sha256: k.toString(16).padStart(64, '0') },
      })),
    });
    const write = (count: number) => writePlanPack(withModels(count), async () => Uint8Array.of(1));
    expect(readDirectory((await write(198)).bytes)).toHaveLength(200);
    await expect(write(199)).rejects.toThrow('are 201 files, a pack holds at most 200.');
  });

  test('files that share their bytes are refused', async () => {
    const one = zipSync({ 'plan.json': [text, { level: 0 }], 'files/a': [text, { level: 0 }] });
    expect(await refusal(directoryWith(one, 'files/a', [[42, 10, 4]]))).toContain('lie over each other');
  });
});

describe('contents', () => {
  const [model] = [...files.keys()];
  const asset = { sha256: model, name: 'Tank house.GLB', bytes: files.get(model)?.length ?? 0 };

  test('a file that is not the one that the plan names is refused by name', async () => {
    const other = Uint8Array.from(files.get(model) ?? []);
    other[40] ^= 1;
    expect(await refusal(zipped({ [entryOf(asset)]: other }))).toBe(
      '"Tank house.GLB" in the pack is another file than the one that the plan was made with.',
    );
    expect(await refusal(zipped({ [entryOf(asset)]: other.subarray(1) }))).toContain('the plan says');
  });

  test('a plan with a fault is refused in the words of the plan', async () => {
    expect(await refusal(zipSync({ 'plan.json': strToU8('{"standclear": 1}') }))).toContain(
      'plan.json in the pack: ',
    );
    expect(await refusal(zipSync({ 'other.json': text }))).toContain('has no plan.json');
  });

  test('a changed letter, an encrypted file, another method are found', async () => {
    const spoilt = Uint8Array.from(zipSync({ 'plan.json': [text, { level: 0 }] }));
    spoilt[Buffer.from(spoilt).indexOf('Small roof')] += 1;
    expect(await refusal(spoilt)).toContain('its check is wrong');
    expect(await refusal(directoryWith(zipped({}), 'plan.json', [[8, 1, 2]]))).toContain('encrypted');
    expect(await refusal(directoryWith(zipped({}), 'plan.json', [[10, 93, 2]]))).toContain('method 93');
  });

  test('a pack that was cut anywhere, or is none, is refused with a sentence', async () => {
    for (let k = 0; k < 60; k += 1) await refusal(whole.subarray(0, Math.floor((whole.length * k) / 60)));
    await refusal(new TextEncoder().encode('{"standclear": 1}'));
  });
});
