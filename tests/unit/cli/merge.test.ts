import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { renameItem } from '../../../src/core/plan/edits/renameItem';
import { parsePlanText } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { linkOfPlan } from '../../../src/exchange/link/link';
import { smallRoof } from '../smallRoof';
import { fakeTerminal } from './fakeTerminal';

const base = smallRoof();
const stand = base.gear.find(({ kind }) => kind === 'stand')?.id ?? '';
const piece = base.pieces[1].id;
const mine = moveItem(renameItem(base, { id: piece, label: 'My fence' }), { id: stand, to: [1, 1] });
const theirs = moveItem(base, { id: stand, to: [2, 2] });
const apart = renameItem(base, { id: stand, label: 'Their stand' });
let folder = '';
const at = (name: string): string => join(folder, name);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  for (const [name, plan] of Object.entries({ base, mine, theirs, apart }))
    writeFileSync(at(name), serialisePlan(plan));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function answer(...words: string[]) {
  const terminal = fakeTerminal();
  const status = await run(['merge', ...words], terminal);
  return { status, printed: terminal.printed().replaceAll('\u00a0', ' '), errors: terminal.errors() };
}
const written = (): Plan => {
  const read = parsePlanText(readFileSync(at('out'), 'utf8'));
  if (!read.ok) throw new Error(read.faults[0].sentence);
  return read.value;
};
const labelOf = (plan: Plan, id: string): string | undefined =>
  [...plan.pieces, ...plan.gear].find((item) => item.id === id)?.label;

test('what both changed answers 1 and writes nothing, until it is said whose is taken', async () => {
  const asked = await answer(at('mine'), at('theirs'), '--base', at('base'), '-o', at('out'));
  expect(asked.status).toBe(1);
  expect(asked.printed).toMatch(
    /^ {2}! .*: Changed by both\. place 1\.00 m, 0\.00 m, 1\.00 m, theirs 1\.41 m/m,
  );
  expect(asked.errors).toMatch(/marked !: say --take mine or --take theirs\. Nothing was written\.$/m);
  expect(() => readFileSync(at('out'))).toThrow();
  const taken = await answer(
    at('mine'),
    at('theirs'),
    '--base',
    at('base'),
    '--take',
    'theirs',
    '-o',
    at('out'),
  );
  expect(taken.status).toBe(0);
  expect(labelOf(written(), piece)).toBe('My fence');
  const moved = written().gear.find(({ id }) => id === stand);
  expect(moved && 'at' in moved ? [moved.at[0], moved.at[2]] : null).toEqual([2, 2]);
});

test('what goes together is merged, from a link as from a file, and told as JSON', async () => {
  const link = `https://standclear.example/#${linkOfPlan(apart).fragment}`;
  const merged = await answer(at('mine'), link, '--base', at('base'), '-o', at('out'), '--json');
  expect(merged.status).toBe(0);
  expect([labelOf(written(), piece), labelOf(written(), stand)]).toEqual(['My fence', 'Their stand']);
  const document = JSON.parse(merged.printed);
  expect(document.standclearMerge).toBe(1);
  expect(document.differences).toContainEqual(
    expect.objectContaining({ key: `item/${stand}`, standing: 'both', choice: 'both', section: 'Grip' }),
  );
});

test('without what both began with nothing of theirs comes unasked', async () => {
  expect((await answer(at('base'), at('theirs'), '-o', at('out'))).errors).toContain('Without --base');
  expect(written()).toEqual(base);
  expect((await answer(at('base'), at('theirs'), '--take', 'theirs', '-o', at('out'))).status).toBe(0);
  expect(written()).toEqual(theirs);
  expect((await answer(at('base'), at('base'))).printed).toBe('Nothing differs.\n');
});

test('says what it cannot read and does not write over what it reads', async () => {
  expect(await answer(at('mine'))).toMatchObject({
    status: 2,
    errors: expect.stringContaining('reads two plans'),
  });
  expect((await answer(at('mine'), at('theirs'), '--take', 'ours')).errors).toContain(
    'expected mine or theirs',
  );
  expect((await answer(at('mine'), at('theirs'), '-o', at('theirs'))).errors).toContain(
    'names the plan itself',
  );
  expect((await answer(at('mine'), at('theirs'), '--base', at('base'), '-o', at('base'))).errors).toContain(
    'names the plan itself',
  );
  expect((await answer(at('mine'), 'https://standclear.example/')).errors).toContain(
    'This address holds no plan.',
  );
  expect((await answer(at('mine'), '#1abcdefghijklmnopqrstuvw')).errors).toContain('This link');
});
