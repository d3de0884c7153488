import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { parsePlanText } from '../../../src/core/plan/parse';
import { planTextIn } from '../../../src/exchange/html/planInFile';
import { smallRoofDocument } from '../smallRoof';
import { fakeTerminal } from './fakeTerminal';

let folder = '';
const file = (name: string): string => join(folder, name);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  writeFileSync(file('roof.plan.json'), JSON.stringify(smallRoofDocument()));
  writeFileSync(file('far.plan.json'), JSON.stringify({ ...smallRoofDocument(), title: '\u{13000}' }));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function pack(name: string, ...words: string[]): Promise<readonly [number, string, string]> {
  const terminal = fakeTerminal();
  const status = await run(['pack', file(name), ...words], terminal);
  return [status, terminal.printed(), terminal.errors()];
}

test('writes a PDF file and says how many pages it has', async () => {
  const [status, printed, errors] = await pack('roof.plan.json', '-o', file('out.pdf'), '--paper', 'Letter');
  expect([status, errors]).toEqual([0, '']);
  expect(printed).toMatch(/^Wrote ".*out\.pdf": \d+ pages, 0\.\d\d MB\.\n$/);
  expect(readFileSync(file('out.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
});

test('says what it cannot print', async () => {
  const [status, , errors] = await pack('far.plan.json', '-o', file('far.pdf'));
  expect(status).toBe(0);
  expect(errors).toMatch(/^standclear: One letter is in no font of the pack .*: U\+13000\.\n$/);
});

test('writes the crew sheet as one file, with the plan in it', async () => {
  const [status, printed, errors] = await pack('roof.plan.json', '--html', file('crew.html'));
  expect([status, errors]).toEqual([0, '']);
  expect(printed).toMatch(/^Wrote ".*crew\.html": the crew sheet without pictures, 0\.\d\d MB\.\n$/);
  const read = parsePlanText(planTextIn(readFileSync(file('crew.html'), 'utf8')) ?? '');
  expect(read).toEqual(parsePlanText(readFileSync(file('roof.plan.json'), 'utf8')));
});

test.each([
  [[], /found neither --out nor --html/],
  [
    ['-o', 'OUT', '--address', 'javascript:1'],
    /--address: found "javascript:1", expected one that begins with https:\/\/ or http:\/\/\.$/m,
  ],
  [['-o', 'OUT', '--paper', 'a3'], /--paper: found "a3", expected a4 or letter\./],
  [['-o', 'OUT', '--lengths', 'ells'], /--lengths: found "ells", expected m or ft-in\./],
  [['-o', 'OUT', '--height', '0'], /--height: found "0", expected a length above 0/],
  [['-o', 'OUT', '--height', 'tall'], /--height: /],
  [['-o', 'PLAN'], /--out names the plan itself/],
  [['-o', 'NOWHERE'], /Cannot write /],
])('ends with 2 where the words are at fault: %j', async (words, said) => {
  const places: Readonly<Record<string, string>> = {
    OUT: file('never.pdf'),
    PLAN: file('roof.plan.json'),
    NOWHERE: join(folder, 'nowhere', 'out.pdf'),
  };
  const [status, printed, errors] = await pack(
    'roof.plan.json',
    ...words.map((word) => places[word] ?? word),
  );
  expect([status, printed]).toEqual([2, '']);
  expect(errors).toMatch(said);
});
