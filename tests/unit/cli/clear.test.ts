import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { clearGround } from '../../../src/core/clearance/ground/clearGround';
import { GROUND_STATES } from '../../../src/core/clearance/ground/types';
import { textsOf } from '../../plans/pngTexts';
import { smallRoof, smallRoofDocument } from '../smallRoof';
import { fakeTerminal } from './fakeTerminal';

let folder = '';
const file = (name: string): string => join(folder, name);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  writeFileSync(file('roof.plan.json'), JSON.stringify(smallRoofDocument()));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function clear(...words: string[]): Promise<string> {
  const terminal = fakeTerminal();
  const status = await run(['clear', file('roof.plan.json'), '--step', '0.5', ...words], terminal);
  expect([status, terminal.errors()]).toEqual([0, '']);
  return terminal.printed();
}

function groundOf(heightMetres: number, setupIds: readonly string[]) {
  const answer = clearGround(smallRoof(), { setupIds, of: { heightMetres }, stepMetres: 0.5 });
  if ('why' in answer) throw new Error(answer.why);
  return answer.ground;
}

test('says how much of the deck stays clear, of setups by letter or id', async () => {
  const { states } = groundOf(2.4, ['master', 'still']);
  const share = Math.round((100 * states.filter((state) => state === 1).length) / states.length);
  const sentence = `${share} % of Deck stays clear of A, C for a stand of 2.4 m.\n`;
  expect(await clear('--height', '2.4', '--setups', 'still,a')).toBe(sentence);
  expect(await clear('--height', '2.4', '--setup', 'C', '--setup', 'master')).toBe(sentence);
  expect(await clear('--height', '2.4', '--setup', 'a', '--setups', 'c')).toBe(sentence);
});

test('prints the squares row by row', async () => {
  const document = JSON.parse(await clear('--height', '2', '--setups', 'A', '--json'));
  const ground = groundOf(2, ['master']);
  expect(document).toMatchObject({
    standclearGround: 1,
    setups: ['master'],
    columns: 40,
    rows: 32,
    stepMetres: 0.5,
  });
  expect(document.states.flat()).toEqual([...ground.states].map((state) => GROUND_STATES[state]));
  expect(document.limitMetres.flat()).toEqual(
    [...ground.limitMetres].map((metres) => (Number.isFinite(metres) ? metres : null)),
  );
});

test('draws what is worse darker, as from above, and reads in another reader', async () => {
  const sentence = await clear('--height', '2.4', '--setups', 'A', '--png', file('ground.png'));
  const bytes = readFileSync(file('ground.png'));
  const { width, height, data } = PNG.sync.read(bytes);
  const ground = groundOf(2.4, ['master']);
  const side = width / ground.columns;
  expect(height).toBe(ground.rows * side);
  const brightness = (square: number): number => {
    const x = ((square % ground.columns) + 0.5) * side;
    const y = (Math.floor(square / ground.columns) + 0.5) * side;
    const at = (Math.floor(y) * width + Math.floor(x)) * 4;
    return data[at] + data[at + 1] + data[at + 2];
  };
  const byState = new Map([...ground.states.entries()].map(([square, state]) => [state, brightness(square)]));
  const order = [...byState].sort(([a], [b]) => a - b).map(([, light]) => light);
  expect(order.length).toBeGreaterThan(2);
  expect(order).toEqual([...order].sort((a, b) => b - a));
  expect(textsOf(bytes)).toMatchObject({ Title: 'Small roof', Description: sentence.trim() });
});
