import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { smallRoofDocument } from '../smallRoof';
import { fakeTerminal } from './fakeTerminal';

let folder = '';
const inFolder = (name: string): string => join(folder, name);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  const roof = smallRoofDocument();
  const save = (name: string, document: unknown): void =>
    writeFileSync(inFolder(name), JSON.stringify(document));
  save('roof.plan.json', roof);
  save('newer.plan.json', { ...roof, standclear: 99 });
  save('odd.plan.json', { ...roof, ground: { ...roof.ground, wetness: 'soaked' }, colour: 'red' });
  save('twice.plan.json', { ...roof, beats: [...roof.beats, roof.beats[0]] });
  save('bare.plan.json', { ...roof, setups: [] });
  save('deckless.plan.json', { ...roof, pieces: roof.pieces.slice(1) });
  save('evil.plan.json', {
    ...roof,
    title: 'a\u001b[2J',
    ground: { surface: '\u009b2J\u202e', wetness: 'dry' },
  });
  writeFileSync(inFolder('notes.txt'), 'Bring the long cable.');
  writeFileSync(inFolder('empty.plan.json'), '');
  writeFileSync(
    inFolder('picture.plan.json'),
    Uint8Array.from({ length: 5000 }, (_, k) => (k * 7919) % 256),
  );
  mkdirSync(inFolder('a-folder'));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Runs a command whose words may name files of the folder as `@name`. */
async function refusal(...words: string[]): Promise<string> {
  const terminal = fakeTerminal();
  const status = await run(
    words.map((word) => (word.startsWith('@') ? inFolder(word.slice(1)) : word)),
    terminal,
  );
  expect(status).toBe(2);
  expect(terminal.printed()).toBe('');
  const errors = terminal.errors();
  expect(errors).toMatch(/^(standclear: .+\n)+$/);
  return errors.replaceAll(folder, '');
}

describe('says in one line what is wrong and answers 2', () => {
  test.each([
    [[], 'Name a command. Type standclear --help'],
    [['reprot'], 'There is no command "reprot": standclear knows report, check, export, open, clear'],
    [['report'], 'Name a plan: standclear report PLAN.'],
    [['report', '@none.plan.json'], 'Cannot read "/none.plan.json": there is no such file or folder.'],
    [['report', '@notes.txt/deeper'], 'part of that path is a file, not a folder.'],
    [['report', '@a-folder'], '"/a-folder" is a folder, expected a plan file.'],
    [['report', '@notes.txt'], 'found something that is not JSON'],
    [
      ['report', '@empty.plan.json'],
      '"/empty.plan.json": The file: found nothing at all, expected a plan in JSON.',
    ],
    [
      ['report', '@picture.plan.json'],
      'The file: found something that is not text, expected a plan in JSON.',
    ],
    [['report', '@newer.plan.json'], 'standclear: found version 99, expected at most 1'],
    [['check', '@twice.plan.json'], 'Beat "Start": found the id "start", which "Start" has too'],
    [
      ['report', '@roof.plan.json', '--setup', 'crane'],
      'There is no setup "crane": this plan has A (master), B (single), C (still).',
    ],
    [['check', '@bare.plan.json', '--setup', 'a'], 'There is no setup "a": this plan has no setups.'],
    [['report', '@roof.plan.json', '--at', 'NaN'], '--at: "NaN" is not a number of seconds'],
    [['report', '@roof.plan.json', '--at', '1e3'], '--at: "1e3" is not a number of seconds'],
    [
      ['report', '@roof.plan.json', '--at', '1.5', '--setup', 'single'],
      '--at 1.5 lies outside: setup single covers 0 to 1 s.',
    ],
    [
      ['report', '@roof.plan.json', '--at', '-1'],
      '--at -1 lies outside: setup master covers 0 to 2 s, setup single',
    ],
    [['report', '@roof.plan.json', '--frames'], 'Unknown option "--frames"'],
    [
      ['export', '@roof.plan.json'],
      'standclear export wants --glb OUT, --usda OUT, --usdz OUT, --fdl OUT or --zip OUT.',
    ],
    [
      ['export', '@roof.plan.json', '--glb', '@no-folder/roof.glb'],
      'Cannot write "/no-folder/roof.glb": there is no such',
    ],
    [['export', '@roof.plan.json', '--usda', '@a', '--zip', '@b'], 'Give either --usda or --zip, not both.'],
    [['export', '@roof.plan.json', '--glb', '@a-folder'], 'Cannot write "/a-folder": it is a folder.'],
    [['export', '@roof.plan.json', '--glb', '@roof.plan.json'], '--glb names the plan itself'],
    [
      ['export', '@roof.plan.json', '--glb', '@o.glb', '--at', '3'],
      '--at 3 lies outside: the action runs from 0 to 2 s.',
    ],
    [['solve', '@roof.plan.json'], 'standclear solve wants --out OUT.'],
    [['solve', '@roof.plan.json', '-o', '@roof.plan.json'], '--out names the plan itself'],
    [['solve', '@roof.plan.json', '-x', '@o.plan.json'], 'Unknown option "-x"'],
    [
      ['solve', '@bare.plan.json', '-o', '@o.plan.json'],
      'This plan has no setups: there is nothing to stay clear of.',
    ],
    [
      ['solve', '@roof.plan.json', '-o', '@o.plan.json', '--move', 'stand-in,ghost'],
      'There is no item “ghost” in this plan.',
    ],
    [
      ['solve', '@roof.plan.json', '-o', '@o.plan.json', '--stops', 'few'],
      '--stops: found "few", expected a number from 0 to 20.',
    ],
    [['clear', '@roof.plan.json'], 'standclear clear wants --height METRES.'],
    [['clear', '@bare.plan.json', '--height', '2'], 'This plan has no setups: expected at least one.'],
    [
      ['clear', '@deckless.plan.json', '--height', '2'],
      'This plan has no deck that something could stand on.',
    ],
    [['clear', '@roof.plan.json', '--height', 'tall'], '--height: "tall" is not a length'],
    [
      ['clear', '@roof.plan.json', '--height', '0'],
      'The height of a stand: found 0 m, expected more than 0 and at most 30 m.',
    ],
    [['clear', '@roof.plan.json', '--height', '31'], 'The height of a stand: found 31 m, expected'],
    [
      ['clear', '@roof.plan.json', '--height', '2', '--setups', 'A,Q'],
      'There is no setup "Q": this plan has A (master), B (single), C (still).',
    ],
    [
      ['clear', '@roof.plan.json', '--height', '2', '--step', '0'],
      'The side of a square: found 0 m, expected at least 0.05 m.',
    ],
    [
      ['clear', '@roof.plan.json', '--height', '2', '--png', '@a-folder'],
      'Cannot write "/a-folder": it is a folder.',
    ],
    [
      ['clear', '@roof.plan.json', '--height', '2', '--png', '@roof.plan.json'],
      '--png names the plan itself',
    ],
  ] as const)('standclear %j', async (words, message) => {
    expect(await refusal(...words)).toContain(message);
  });

  test('names each fault of a plan on a line of its own', async () => {
    const lines = (await refusal('check', '@odd.plan.json')).trimEnd().split('\n');
    expect(lines).toHaveLength(2);
    expect(lines.join('\n')).toContain(
      'ground.wetness: found "soaked", expected dry, damp, wet down or puddled.',
    );
    expect(lines.join('\n')).toContain('colour');
  });

  test.skipIf(!existsSync('/dev/zero'))('gives up on a file without an end', async () => {
    expect(await refusal('check', '/dev/zero')).toBe(
      'standclear: "/dev/zero" has more than 67108864 bytes, expected a plan file.\n',
    );
  });

  test('prints nothing that would drive the terminal', async () => {
    for (const line of (await refusal('report', '@evil.plan.json')).split('\n'))
      expect(line).not.toMatch(/\p{Cc}|\p{Cf}/u);
  });
});

test('a mistake of its own is not taken for a failed check', async () => {
  const terminal = fakeTerminal();
  const broken = () => {
    throw new Error('the paper is out');
  };
  expect(await run(['--help'], { ...terminal, out: { ...terminal.out, write: broken } })).toBe(3);
  expect(terminal.errors()).toMatch(
    /^standclear: a mistake of its own, not of the plan: Error: the paper is out/,
  );
});

test('--help and --version answer 0', async () => {
  for (const words of [['--help'], ['-h'], ['--version'], ['report', '--help'], ['export', '-h']]) {
    const terminal = fakeTerminal();
    expect(await run(words, terminal)).toBe(0);
    expect(terminal.printed()).not.toBe('');
    expect(terminal.errors()).toBe('');
  }
});
