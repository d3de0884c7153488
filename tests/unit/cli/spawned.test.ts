import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { VERSION } from '../../../src/cli/version';
import { bundle } from '../../../src/workshop/bundle.mjs';
import { COMMAND_INPUTS, HOUSE } from '../../../src/workshop/house.mjs';
import { smallRoofDocument } from '../smallRoof';
import { fakeTerminal } from './fakeTerminal';

const LAUNCHER = join(HOUSE, 'src/workshop/standclear.mjs');
let folder = '';
const roof = (): string => join(folder, 'roof.plan.json');

function standclear(...words: string[]) {
  const ended = spawnSync(process.execPath, [LAUNCHER, ...words], {
    encoding: 'utf8',
    cwd: HOUSE,
    env: { ...process.env, INIT_CWD: folder },
  });
  return { status: ended.status, printed: ended.stdout, errors: ended.stderr };
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  writeFileSync(roof(), JSON.stringify(smallRoofDocument(0.5)));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('the command in a process of its own', () => {
  test('reads a plan where the person stands and prints the same bytes as in this one', async () => {
    const terminal = fakeTerminal();
    await run(['report', roof(), '--json'], terminal);
    expect(standclear('report', 'roof.plan.json', '--json')).toEqual({
      status: 0,
      printed: terminal.printed(),
      errors: '',
    });
  });

  test('answers 1 for a plan that breaks a wish and 2 for a missing file', () => {
    expect(standclear('check', 'roof.plan.json').status).toBe(1);
    const missing = standclear('check', 'none.plan.json');
    expect(missing).toEqual({
      status: 2,
      printed: '',
      errors: 'standclear: Cannot read "none.plan.json": there is no such file or folder.\n',
    });
    expect(standclear('--version')).toEqual({ status: 0, printed: `${VERSION}\n`, errors: '' });
  });

  test('does not mind a reader that stops early', () => {
    const command = `"${process.execPath}" "${LAUNCHER}" report "${roof()}" --json | head -c 21`;
    expect(execFileSync('sh', ['-c', `${command} 2>&1`], { encoding: 'utf8' })).toBe(
      '{\n  "standclearReport',
    );
  });
});

test('setups read side by side by workers give the same bytes as one after another', async () => {
  const bundled = await bundle({
    name: 'standclear',
    entries: { main: 'src/cli/main.ts', worker: 'src/cli/worker.ts' },
    inputs: COMMAND_INPUTS,
  });
  const alone = fakeTerminal();
  const beside = fakeTerminal({ workerFile: join(bundled, 'worker.mjs') });
  for (const terminal of [alone, beside]) expect(await run(['report', roof(), '--json'], terminal)).toBe(0);
  expect(beside.printed()).toBe(alone.printed());
});
