import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { HOUSE } from '../../../src/workshop/house.mjs';
import { DEMO, readPlan } from '../../plans/readPlan';
import { smallRoof } from '../smallRoof';
import { fakeTerminal } from './fakeTerminal';

const small = smallRoof();
let folder = '';
const at = (name: string): string => join(folder, name);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  writeFileSync(at('roof.plan.json'), serialisePlan(small));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function answer(...words: string[]) {
  const terminal = fakeTerminal();
  const status = await run(words, terminal);
  return { status, printed: terminal.printed(), errors: terminal.errors() };
}

test('a plan goes into a link and comes back, as a whole address, its end alone, printed or as a file', async () => {
  const linked = await answer(
    'link',
    at('roof.plan.json'),
    '--address',
    'https://standclear.example/app/#old',
  );
  expect([linked.status, linked.printed.split('\n').length]).toEqual([0, 2]);
  expect(linked.printed).toMatch(/^https:\/\/standclear\.example\/app\/#1[\w-]+\n$/);
  expect(linked.errors).toMatch(/The link has \d+ characters\. Whoever has it can read the whole plan\./);
  expect(linked.errors).not.toContain('cut links');
  const link = linked.printed.trim();
  const bare = link.slice(link.indexOf('#') + 1);
  for (const word of [link, bare, `#${bare}`]) {
    const opened = await answer('open', word);
    expect(opened, word).toEqual({ status: 0, printed: serialisePlan(small), errors: '' });
  }
  expect(await answer('open', link, '-o', at('back.plan.json'))).toMatchObject({ status: 0, printed: '' });
  expect(readFileSync(at('back.plan.json'), 'utf8')).toBe(serialisePlan(small));
});

test('a link is read from the input in a process of its own', async () => {
  const { printed } = await answer('link', at('roof.plan.json'));
  const launcher = join(HOUSE, 'src/workshop/standclear.mjs');
  const ended = spawnSync(process.execPath, [launcher, 'open', '-'], { encoding: 'utf8', input: printed });
  expect([ended.status, ended.stderr, ended.stdout]).toEqual([0, '', serialisePlan(small)]);
});

test('a long link is printed with a warning, and drawn as one code', async () => {
  const demo = join(HOUSE, DEMO);
  const { status, printed, errors } = await answer(
    'link',
    demo,
    '--address',
    'https://standclear.example/',
    '--qr',
    at('demo.svg'),
  );
  expect(status, errors).toBe(0);
  expect(printed.trim().length).toBeGreaterThan(2000);
  expect(errors).toContain('Some chat programs cut links above 2000 characters');
  expect(readFileSync(at('demo.svg'), 'utf8')).toMatch(
    /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 \d+ \d+"/,
  );
  expect(await answer('open', printed.trim())).toMatchObject({ printed: serialisePlan(readPlan(DEMO)) });
});

test.each([
  [['open', 'https://standclear.example/'], 'This address holds no plan.'],
  [['open', `https://standclear.example/#2${'A'.repeat(40)}`], 'comes from a newer version of the page'],
  [['open', `#1${'A'.repeat(40)}`], 'This link was changed on its way'],
  [['open', 'roof.standclear.zip'], 'standclear open wants --out FOLDER for a file pack.'],
  [
    ['link', '@', '--address', 'the office'],
    '--address: found "the office", expected the address of the page',
  ],
  [['link', '@', '--address', 'javascript:alert(1)'], 'expected one that begins with https:// or http://.'],
  [['link', '@', '--qr', '@'], '--qr names the plan itself'],
])('%j is refused in a sentence', async (words, message) => {
  const { status, printed, errors } = await answer(
    ...words.map((word) => (word === '@' ? at('roof.plan.json') : word)),
  );
  expect([status, printed]).toEqual([2, '']);
  expect(errors).toContain(message);
});
