import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { parsePlanText } from '../../../src/core/plan/parse';
import { powerOf } from '../../../src/core/power/powerOf';
import { cable, drawing, generator, lamp, wired } from '../../plans/wired';
import { fakeTerminal } from './fakeTerminal';

let folder = '';
const file = (name: string): string => join(folder, name);

const PLAN = wired([
  generator('genny', { circuits: [{ amps: 20, sockets: 3 }] }),
  drawing('kettle', 1500, 1, { label: '=Kettle' }),
  lamp('head', { dim: 0.5 }),
  cable('cord', 'genny', 'kettle', 10),
]);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  writeFileSync(file('roof.plan.json'), JSON.stringify(PLAN));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function power(...words: string[]): Promise<string> {
  const terminal = fakeTerminal();
  expect(await run(['power', file('roof.plan.json'), ...words], terminal)).toBe(0);
  return terminal.printed();
}

test('prints supplies, circuits, cables, loads and what is said', async () => {
  const printed = (await power('--hours', '9.5')).replaceAll('\u00a0', ' ');
  expect(printed).toContain('120 V, 60 Hz; everything on for 9 h 30 min\n');
  expect(printed).toMatch(/genny +5\.5 kW +15\d\d W/);
  expect(printed).toMatch(/genny +1 +20\.0 A +1 +12\.\d A +7\d % +=Kettle/);
  expect(printed).toMatch(/cord +genny +=Kettle +12 AWG \(3\.31 mm²\) +10\.0 m/);
  expect(printed).toMatch(/head +350 W +18[56] W +0\.95 +no cord/);
  expect(printed).toContain('breaks: head hangs on no cord.');
  expect(printed).toContain('a licensed electrician decide');
});

test('prints the same as JSON and as CSV, where a name that a spreadsheet would run does not', async () => {
  const document = JSON.parse(await power('--json', '--hours', '9.5'));
  expect(document).toMatchObject({
    standclearPower: 1,
    mainsVolts: 120,
    hours: { hours: 9.5, from: 'said' },
    loads: [
      { id: 'kettle', feeding: 'fed', sourceId: 'genny', cableIds: ['cord'] },
      { id: 'head', feeding: 'no cord', sourceId: null },
    ],
  });
  expect(document.loads[0].volts).toBe(powerOf(PLAN).flow.loads.get('kettle')?.volts);
  const lines = (await power('--csv')).trimEnd().split('\r\n');
  const columns = lines[0].split(',').length;
  expect(lines[0]).toContain('kind,id,label,from,to,supply');
  expect(lines.filter((line) => line.startsWith('load,'))).toHaveLength(2);
  expect(lines.find((line) => line.startsWith('load,kettle'))).toContain("'=Kettle");
  expect(lines[1].split(',')).toHaveLength(columns);
});

test('runs cords and writes the plan, which has power then', async () => {
  await power('--connect', file('wired.plan.json'));
  const read = parsePlanText(readFileSync(file('wired.plan.json'), 'utf8'));
  if (!read.ok) throw new Error(read.faults[0].sentence);
  expect(Object.fromEntries(powerOf(read.value).network.feeding)).toEqual({ kettle: 'fed', head: 'fed' });
  expect(read.value.gear).toHaveLength(PLAN.gear.length + 1);
});

test.each([
  [['--hours', 'all night'], '--hours: found "all night", expected hours above 0 and up to 48'],
  [['--hours', '0'], 'expected hours above 0'],
  [['--json', '--csv'], 'Give either --json or --csv, not both.'],
])('%j is refused in a sentence', async (words, message) => {
  const terminal = fakeTerminal();
  expect(await run(['power', file('roof.plan.json'), ...words], terminal)).toBe(2);
  expect(terminal.errors()).toContain(message);
});

test('the plan itself is not written over', async () => {
  const terminal = fakeTerminal();
  const words = ['power', file('roof.plan.json'), '--connect', file('roof.plan.json')];
  expect(await run(words, terminal)).toBe(2);
  expect(terminal.errors()).toContain('--connect names the plan itself');
});
