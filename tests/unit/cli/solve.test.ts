import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readPlan } from '../../../src/cli/readPlan';
import { run } from '../../../src/cli/run';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { standAt, stillRoof } from '../clearance/remedies/remedied';
import { seenIn } from '../clearance/solve/solved';
import { fakeTerminal } from './fakeTerminal';

let folder = '';
const file = (name: string): string => join(folder, name);
const other = standAt({ id: 'other', label: 'Other stand', at: [-0.6, 0, -3] });

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  writeFileSync(file('two.plan.json'), serialisePlan(stillRoof([standAt(), other])));
  writeFileSync(file('clear.plan.json'), serialisePlan(stillRoof([standAt({ at: [8, 0, 6] })])));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function solve(name: string, ...words: string[]) {
  const terminal = fakeTerminal({ columns: 100, isTTY: false });
  const status = await run(['solve', file(name), '-o', file('out.plan.json'), ...words], terminal);
  return { status, printed: terminal.printed().replaceAll('\u00a0', ' '), errors: terminal.errors() };
}

test('writes the plan that clears all setups, and a row for each thing that changes', async () => {
  const { status, printed, errors } = await solve('two.plan.json');
  expect([status, errors]).toEqual([0, '']);
  const [head, ...rows] = printed.trimEnd().split('\n');
  expect(head).toMatch(/^item +change +from x, z +to x, z$/);
  expect(rows[0]).toMatch(
    /^Lamp stand +[\d.]+ m to frame right of A +0\.50 m, −4\.00 m +[\d.]+ m, −[\d.]+ m$/,
  );
  expect(rows[1]).toMatch(/^Other stand +[\d.]+ m to frame left of A /);
  expect(rows.at(-1)).toMatch(/^Changing Lamp stand and Other stand, [\d.]+ m in all, clears the setup\.$/);
  expect(seenIn(readPlan(file('out.plan.json')))).toEqual([]);
});

test('moves only what it is told to, says what is left, and answers 1', async () => {
  const { status, printed } = await solve('two.plan.json', '--move', 'stand');
  expect(status).toBe(1);
  expect(printed).toContain('Other stand can be seen in A, and is not among what may move.');
  expect(printed).toContain('By the report of the plan that is written, 1 finding is left.');
  expect(seenIn(readPlan(file('out.plan.json')))).toEqual(['single other']);
});

test('prints all of it as one document', async () => {
  const { printed } = await solve('two.plan.json', '--json', '--move', 'stand', '--move', 'other');
  const document = JSON.parse(printed);
  expect(document).toMatchObject({ standclearSolve: 1, outcome: 'solved', cleared: 1, setups: 1, left: [] });
  expect(document.best.items.map(({ itemId }: { readonly itemId: string }) => itemId)).toEqual([
    'stand',
    'other',
  ]);
});

test('writes a plan that is clear already as it is', async () => {
  const { status, printed } = await solve('clear.plan.json');
  expect([status, printed]).toEqual([
    0,
    'Nothing that should keep out is seen in the setup: there is nothing to solve.\n',
  ]);
  expect(readPlan(file('out.plan.json'))).toEqual(readPlan(file('clear.plan.json')));
});

test('tells a terminal how far it is, and takes the line away again', async () => {
  const terminal = fakeTerminal({ isTTY: true });
  await run(['solve', file('two.plan.json'), '-o', file('out.plan.json')], terminal);
  if (terminal.errors() !== '') expect(terminal.errors().endsWith('\r\u001b[K')).toBe(true);
});

test('writes nothing where it is refused', async () => {
  rmSync(file('out.plan.json'), { force: true });
  const { status, errors } = await solve('two.plan.json', '--move', 'ghost');
  expect([status, errors]).toEqual([2, 'standclear: There is no item “ghost” in this plan.\n']);
  expect(existsSync(file('out.plan.json'))).toBe(false);
  expect(readFileSync(file('two.plan.json'), 'utf8')).toContain('Other stand');
});
