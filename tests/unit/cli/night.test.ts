import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { packingOf } from '../../../src/core/night/packing/packingOf';
import { EVEN_NIGHT, nightRoof } from '../../plans/nightRoof';
import { smallRoofDocument } from '../smallRoof';
import { fakeTerminal } from './fakeTerminal';

const NIGHT = { ...EVEN_NIGHT, costs: { lens: 3 }, order: ['single', 'master', 'still'] };
let folder = '';
const file = (name: string): string => join(folder, name);

function write(name: string, night: object, place: object = {}): void {
  const document = smallRoofDocument();
  const plan = { ...document, place: { ...document.place, ...place }, night };
  writeFileSync(file(name), JSON.stringify(plan));
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  write('roof.plan.json', NIGHT);
});
afterAll(() => rmSync(folder, { recursive: true }));

async function night(...words: string[]): Promise<string> {
  const terminal = fakeTerminal();
  const status = await run(['night', file('roof.plan.json'), ...words], terminal);
  expect([status, terminal.errors()]).toEqual([0, '']);
  return terminal.printed().replaceAll('\u00a0', ' ');
}

test('prints what happens when, and what to pack', async () => {
  const text = await night();
  expect(text).toMatch(/^Small roof\nEveryone wraps at \d\d:\d\d\.\n/);
  expect(text).toMatch(/18:30 +30 min +shoot +B Single on Ana\n/);
  expect(text).toMatch(/change +A Master from the stairs +lens\n/);
  expect(text).toMatch(/Sunset\n/);
  expect(text).toMatch(/\n {2}18:\d\d +sun −\d+\.\d° +[\d.]+ lux from the sky\n/);
  expect(text).toMatch(/Grip\n +2 +Tall stand/);
});

test('suggests the order that costs least', async () => {
  // With the two long lenses beside each other one change of lenses is saved.
  const text = await night('--suggest');
  expect(text).toMatch(
    /^No order is better: A, [BC], [BC]\. Everyone wraps at \d\d:\d\d, \d+ min sooner than the order/,
  );
  const document = JSON.parse(await night('--suggest', '--json'));
  expect(document.order).toEqual(['single', 'master', 'still']);
  expect(document.suggested).toMatchObject({ isExact: true, conflict: null });
  expect(document.suggested.wrap.minutes).toBeLessThan(document.wrap.minutes);
});

test('one document holds all of it', async () => {
  const document = JSON.parse(await night('--json'));
  expect(document).toMatchObject({
    standclearNight: 1,
    title: 'Small roof',
    call: { minutes: 1080, time: '18:00', utc: '2026-11-20T18:00:00Z' },
    suggested: null,
    darkFrom: null,
  });
  const packing = JSON.stringify(packingOf(nightRoof(NIGHT))).replaceAll('\u00a0', ' ');
  expect(document.packing).toEqual(JSON.parse(packing));
  expect(document.stretches.at(-1)).toMatchObject({ doing: 'strike', setupId: null });
});

test('the tables are read by another reader', async () => {
  const { data, errors } = Papa.parse<string[]>((await night('--csv')).trimEnd());
  expect(errors).toEqual([]);
  const shots = data.filter((row) => row[0] === 'order' && row[4] === 'shoot');
  expect(shots.map((row) => row[5])).toEqual(['B', 'A', 'C']);
  expect(data.find((row) => row[0] === 'packing' && row[2] === 'Tall stand')?.slice(3, 6)).toEqual([
    '2',
    '0',
    'pieces',
  ]);
});

test('says from when what shows is lost in the dark, where it is asked', async () => {
  const { darkFrom } = JSON.parse(await night('--dark', '--json'));
  expect(darkFrom).toContainEqual({
    setupId: 'master',
    itemId: 'stand-in',
    minutes: null,
    isFromSunset: false,
  });
  expect(await night('--dark')).toContain(
    'Lamp stand 1 shows in Master from the stairs and reads however dark it gets.',
  );
});

test('writes a calendar, and never over the plan', async () => {
  expect(await night('--ics', file('night.ics'))).toMatch(/^Everyone wraps at \d\d:\d\d\.\n$/);
  const text = readFileSync(file('night.ics'), 'utf8');
  expect(text).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]*SUMMARY:B: Single on Ana\r\n[\s\S]*END:VCALENDAR\r\n$/);
  const terminal = fakeTerminal();
  const status = await run(['night', file('roof.plan.json'), '--ics', file('roof.plan.json')], terminal);
  expect(status).toBe(2);
  expect(terminal.errors()).toContain('--ics names the plan itself');
});

test('a clock that is not that of the zone is told beside the answer, and what is out of range is refused', async () => {
  const said = async (name: string): Promise<readonly [number, string]> => {
    const terminal = fakeTerminal();
    return [await run(['night', file(name), '--csv'], terminal), terminal.errors().replaceAll('\u00a0', ' ')];
  };
  write('summer.plan.json', NIGHT, { date: '2026-07-01' });
  expect(await said('summer.plan.json')).toEqual([
    0,
    'standclear: In Europe/Lisbon the clocks are +1 h ahead of universal time that day, and the night takes 0 h. Set night.utcOffsetHours.\n',
  ]);
  write('change.plan.json', { ...NIGHT, utcOffsetHours: 1 }, { date: '2026-10-24' });
  expect((await said('change.plan.json'))[1]).toContain('the clocks are changed that night, at 02:00 to 0 h');
  write('nowhere.plan.json', NIGHT, { timeZone: 'Atlantis/Port' });
  expect((await said('nowhere.plan.json'))[1]).toContain('The time zone "Atlantis/Port" is not known here');
  write('wrong.plan.json', { call: '25:00', order: ['single', 'gone'] });
  expect(await said('wrong.plan.json')).toEqual([
    2,
    expect.stringContaining('night.call: found "25:00", expected a time by the clock such as 22:30.'),
  ]);
  write('gone.plan.json', { order: ['single', 'gone', 'single'] });
  const [status, errors] = await said('gone.plan.json');
  expect(status).toBe(2);
  expect(errors).toContain('night.order[1]: found "gone", expected the id of a setup.');
  expect(errors).toContain('The order of the night "single": found the id "single", which "single" has too');
});
