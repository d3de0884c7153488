import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { textWidth } from '../../../src/cli/table/textWidth';
import { reportOf } from '../../../src/core/report/report';
import { planToGlb } from '../../../src/exchange/glb';
import { smallRoof, smallRoofDocument } from '../smallRoof';
import { fakeTerminal } from './fakeTerminal';

type Document = ReturnType<typeof smallRoofDocument>;

const plan = smallRoof();
let folder = '';
const roof = (): string => join(folder, 'roof.plan.json');

/** The roof with some gear gone, or with wishes of its own, as a file. */
function changed(name: string, change: (document: Document) => object): string {
  const file = join(folder, name);
  writeFileSync(file, JSON.stringify(change(smallRoofDocument())));
  return file;
}
const without =
  (...ids: string[]) =>
  (document: Document): object => ({
    ...document,
    gear: document.gear.filter(({ id }) => !ids.includes(id)),
  });

async function answer(words: readonly string[], terminal = fakeTerminal()) {
  const status = await run(words, terminal);
  return { status, printed: terminal.printed(), errors: terminal.errors() };
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  changed('roof.plan.json', (document) => document);
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('report', () => {
  test('prints a table under the letter, name, lens, angles and span of each setup', async () => {
    const { status, printed, errors } = await answer(['report', roof()]);
    expect([status, errors]).toEqual([0, '']);
    const plain = printed.replaceAll('\u00a0', ' ');
    expect(plain).toContain('Small roof\n');
    expect(plain).toContain('A  Master from the stairs  40 mm, 2x squeeze, 58.3° by 26.3°, 0.0 s to 2.0 s\n');
    expect(plain).toMatch(/C {2}Insert of the bulb.*, at 2\.0 s\n/);
    expect(plain).toMatch(/× +showing +[\d.]+ % +Lamp stand 1 +column/);
    expect(plain).toMatch(/^ {2}also in frame: Fence [\d.]+ %, Deck [\d.]+ %, Porch bulb [\d.]+ %$/m);
    expect(plain).toMatch(/^ {2}the rest: 1 clear$/m);
    expect(plain).not.toContain('\u001b');
    expect(plain.trimEnd().split('\n').at(-1)).toBe('× should keep out, and can be seen');
  });

  test.each([48, 72, 120])('keeps its columns aligned within %d characters', async (columns) => {
    const { printed } = await answer(['report', roof()], fakeTerminal({ columns }));
    const lines = printed.split('\n');
    for (const line of lines) expect(textWidth(line), line).toBeLessThanOrEqual(columns);
    const names = lines.find((line) => line.includes('verdict')) ?? '';
    // Sentences of continuity speak of close-ups; a row has its verdict in its column.
    const rows = lines.filter((line) => /(showing|covered|close|mirrored) {2}/.test(line));
    expect(rows.length).toBeGreaterThan(3);
    for (const row of rows)
      expect(row.slice(names.indexOf('verdict'))).toMatch(/^(showing|covered|close|mirrored)/);
  });

  test('prints what breaks a wish before the rest', async () => {
    const { printed } = await answer(['report', roof(), '--setup', 'master']);
    const marks = printed
      .split('\n')
      .filter((line) => line.includes('%  '))
      .map((line) => line.trim().startsWith('×'));
    expect(marks.indexOf(false)).toBeGreaterThan(0);
    expect(marks.lastIndexOf(true)).toBeLessThan(marks.indexOf(false));
  });

  test('--json is the report itself, not rounded', async () => {
    const { printed } = await answer(['report', roof(), '--json']);
    expect(printed).toBe(`${JSON.stringify(reportOf(plan), null, 2)}\n`);
  });

  test('--csv has a line for each item in each setup, then one for each finding of continuity', async () => {
    const { printed } = await answer(['report', roof(), '--csv']);
    const lines = printed.split('\r\n');
    expect(lines[0]).toMatch(
      /^setup,setupLabel,fromSeconds,toSeconds,item,label,kind,wish,verdict,share,spans,/,
    );
    const found = reportOf(plan).setups.flatMap(({ continuity }) => continuity);
    expect(lines).toHaveLength(1 + 3 * (2 + 1 + 4) + found.length + 1);
    expect(lines.slice(1 + 3 * (2 + 1 + 4), -1).every((line) => line.includes(',continuity,'))).toBe(true);
    expect(lines.at(-1)).toBe('');
    expect(
      lines.some((line) =>
        line.startsWith('master,Master from the stairs,0,2,stand-in,Lamp stand 1,stand,keep out,showing,0.'),
      ),
    ).toBe(true);
  });

  test('--setup and --at choose, in the order of the plan', async () => {
    const ids = async (...words: string[]) => {
      const { printed, errors } = await answer(['report', roof(), '--json', ...words]);
      return [
        JSON.parse(printed)
          .setups.map((setup: { id: string }) => setup.id)
          .join(),
        errors,
      ];
    };
    expect(await ids('--setup', 'single', '--setup', 'master')).toEqual(['master,single', '']);
    expect(await ids('--at', '1')).toEqual([
      'master,single',
      'standclear: left out, since they do not cover 1 s: still.\n',
    ]);
    expect(await ids('--at', '2', '--setup', 'still')).toEqual(['still', '']);
  });

  test('--at gives the report of one instant', async () => {
    const { printed } = await answer(['report', roof(), '--json', '--at', '0,5 s', '--setup', 'master']);
    expect(JSON.parse(printed)).toEqual(
      JSON.parse(JSON.stringify(reportOf(plan, { setupIds: ['master'], at: 0.5 }))),
    );
  });

  test('prints names without what would drive the terminal, and keeps them whole in JSON', async () => {
    const label = 'Stand\u009b2J\u202e one';
    const file = changed('evil.plan.json', (document) => ({
      ...document,
      gear: document.gear.map((gear) => (gear.id === 'stand-in' ? { ...gear, label } : gear)),
    }));
    for (const words of [[], ['--csv'], ['--json']]) {
      const { printed } = await answer(['report', file, ...words]);
      for (const line of printed.split(/\r?\n/)) expect(line).not.toMatch(/\p{Cc}|\p{Cf}/u);
      if (words[0] === '--json') expect(JSON.stringify(JSON.parse(printed))).toContain(JSON.stringify(label));
    }
  });
});

describe('check', () => {
  test('answers 1 with a sentence for each thing that should keep out and can be seen', async () => {
    const { status, printed } = await answer(['check', roof()]);
    expect(status).toBe(1);
    expect(printed).toMatch(/^Master from the stairs, Lamp stand 1: the column .*% of the frame.*\.$/m);
    expect(printed).toMatch(
      /^Not clear: 2 items that should keep out can be seen, \d+ findings in 3 setups\.$/m,
    );
  });

  test('answers 0 when all is clear', async () => {
    const { status, printed } = await answer([
      'check',
      changed('clear.plan.json', without('stand-in', 'head-in')),
    ]);
    expect(printed).toBe('Clear: nothing that should keep out can be seen in 3 setups.\n');
    expect(status).toBe(0);
  });

  test('answers 0 for setups that are clear by themselves', async () => {
    expect((await answer(['check', roof(), '--setup', 'still'])).status).toBe(0);
  });

  test('answers 1 when something that must show never does', async () => {
    const file = changed('must.plan.json', (document) => ({
      ...without('stand-in', 'head-in')(document),
      gear: document.gear
        .filter(({ id }) => id === 'bulb' || id === 'stand-out')
        .map((gear) => ({ ...gear, wish: 'must show' })),
    }));
    const { status, printed } = await answer(['check', file]);
    expect(status).toBe(1);
    expect(printed).toBe(
      'Lamp stand 2: it must show, and never does.\nNot clear: 1 item that must show never does.\n',
    );
  });
});

describe('export', () => {
  test('writes the plan at the instant', async () => {
    const file = join(folder, 'roof.glb');
    const { status, printed } = await answer(['export', roof(), '--glb', file, '--at', '1.5']);
    expect(status).toBe(0);
    expect(printed).toMatch(/^Wrote ".*roof\.glb": the plan at 1\.5 s, [\d.]+ MB\.\n$/);
    expect(readFileSync(file).equals(planToGlb(plan, 1.5))).toBe(true);
  });

  test('starts at 0 s where no instant is given', async () => {
    const file = join(folder, 'start.glb');
    await answer(['export', roof(), '--glb', file]);
    expect(readFileSync(file).equals(planToGlb(plan, 0))).toBe(true);
  });
});
