import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import UnsteadyReporter, { judgeUnsteady, UNSTEADY_FILE } from '../../../src/workshop/unsteady.mjs';

const named = process.env[UNSTEADY_FILE];
let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-unsteady-'));
  process.env[UNSTEADY_FILE] = join(folder, 'unsteady.json');
});

afterEach(() => {
  if (named === undefined) delete process.env[UNSTEADY_FILE];
  else process.env[UNSTEADY_FILE] = named;
  rmSync(folder, { recursive: true });
});

/** A test as the runner tells it once it has ended. */
const ended = (fullName: string, flaky: boolean, ...messages: string[]) => ({
  fullName,
  diagnostic: () => ({ flaky }),
  result: () => ({ errors: messages.map((message) => ({ message })) }),
});
const file = (relativeModuleId: string, ...tests: ReturnType<typeof ended>[]) => ({
  relativeModuleId,
  children: { allTests: () => tests },
});

function written(...files: ReturnType<typeof file>[]): unknown {
  new UnsteadyReporter().onTestRunEnd(files);
  return JSON.parse(readFileSync(join(folder, 'unsteady.json'), 'utf8'));
}

test('what passed at its second try is written with what it failed with first, and nothing else', () => {
  const calls = `${'waiting for the button '.repeat(30)}`;
  expect(
    written(
      file('desk.test.ts', ended('steady', false), ended('failed twice', false, 'a', 'b')),
      file('night.test.ts'),
      file(
        'crew.test.ts',
        ended('the list > is long', true, '\u001b[31mthe page was not clean:\u001b[39m\n  a fault', 'later'),
        ended('slow', true, calls),
        ended('says nothing', true),
      ),
    ),
  ).toEqual([
    { file: 'crew.test.ts', test: 'the list > is long', message: 'the page was not clean: a fault' },
    { file: 'crew.test.ts', test: 'slow', message: `${calls.slice(0, 300)}…` },
    { file: 'crew.test.ts', test: 'says nothing', message: 'no message' },
  ]);
});

test('a run of steady tests writes that there are none', () => {
  expect(written(file('desk.test.ts', ended('steady', false)))).toEqual([]);
});

test('two unsteady tests are named and let pass, a third fails the stage', () => {
  const one = { file: 'crew.test.ts', test: 'the list', message: 'a fault' };
  const line = 'unsteady: crew.test.ts > the list, failed first with: a fault';
  expect(judgeUnsteady([])).toEqual({ lines: [], tooMany: false });
  expect(judgeUnsteady([one, one])).toEqual({ lines: [line, line], tooMany: false });
  expect(judgeUnsteady([one, one, one])).toEqual({
    lines: [line, line, line, '3 tests of one stage needed a second try, at most 2 may'],
    tooMany: true,
  });
});

test('without a file to write it says what it lacks', () => {
  delete process.env[UNSTEADY_FILE];
  expect(() => written()).toThrow('UNSTEADY_FILE names no file to write');
});
