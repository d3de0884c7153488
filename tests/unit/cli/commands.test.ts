import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { textWidth } from '../../../src/cli/table/textWidth';
import { reportOf } from '../../../src/core/report/report';
import { formatLight } from '../../../src/core/units/illuminance';
import { formatLength } from '../../../src/core/units/lengths';
import { formatSeconds } from '../../../src/core/units/seconds';
import { formatShare } from '../../../src/core/units/shares';
import { planToGlb } from '../../../src/exchange/glb';
import { planFrom } from '../../plans/bare';
import { keyedFace, keyOn } from '../../plans/keyedFace';
import { smallRoof, smallRoofDocument } from '../smallRoof';
import { fakeTerminal } from './fakeTerminal';

type Document = ReturnType<typeof smallRoofDocument>;

/** What is printed of half a second is soon reckoned. */
const END_SECONDS = 0.5;
const plan = smallRoof(END_SECONDS);
let folder = '';
const roof = (): string => join(folder, 'roof.plan.json');

/** The roof with some gear gone, or with wishes of its own, as a file. */
function changed(name: string, change: (document: Document) => object): string {
  const file = join(folder, name);
  writeFileSync(file, JSON.stringify(change(smallRoofDocument(END_SECONDS))));
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
    expect(plain).toContain('A  Master from the stairs  40 mm, 2x squeeze, 58.3° by 26.3°, 0.0 s to 0.5 s\n');
    expect(plain).toMatch(/C {2}Insert of the bulb.*, at 0\.5 s\n/);
    expect(plain).toMatch(/× +showing +[\d.]+ % +Lamp stand 1 +column/);
    expect(plain).toMatch(/^ {2}also in frame: Fence [\d.]+ %, Deck [\d.]+ %, Porch bulb [\d.]+ %$/m);
    expect(plain).toMatch(/^ {2}the rest: 1 clear$/m);
    expect(plain).not.toContain('\u001b');
    expect(plain).toMatch(/\n× should keep out, and can be seen\n/);
    expect(plain).toMatch(/\nCautions\nbreaks: /);
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

  test('prints under each setup its faces, what breaks or is said of its light and its cuts, and how much holds', async () => {
    const { printed } = await answer(['report', roof()], fakeTerminal({ columns: 400 }));
    const parts = printed.split(/\n(?=[A-C] {2})/).slice(1);
    const holds = (word: string, all: readonly { readonly standing: string }[]): string => {
      const count = all.filter(({ standing }) => standing === 'holds').length;
      return count === 0 ? '' : `${word}: ${count} ${count === 1 ? 'holds' : 'hold'}\n`;
    };
    const { setups } = reportOf(plan);
    expect(parts).toHaveLength(setups.length);
    setups.forEach(({ light, continuity }, k) => {
      // Levels stand in their own columns.
      const told = light.sentences.filter(({ about }) => about !== 'level');
      for (const { standing, name, colon, text } of told)
        if (standing !== 'holds')
          expect(parts[k]).toContain(`  ${standing}: ${name}${colon ? ':' : ''} ${text}\n`);
      for (const { standing, sentence } of continuity)
        if (standing !== 'holds') expect(parts[k]).toContain(`  ${standing}: ${sentence}\n`);
      expect(parts[k]).toContain(holds('light', told));
      expect(parts[k]).toContain(holds('continuity', continuity));
      const shown = light.levels.flatMap(({ faces }) => faces.filter(({ isShown }) => isShown));
      expect(parts[k].match(/\u00a0:\u00a01/g)?.length ?? 0).toBe(shown.length);
    });
    expect(setups.flatMap(({ continuity }) => continuity).length).toBeGreaterThan(0);
  });

  test('prints which lamps light a face that shows, by their shares and ways, and how soft its key is', async () => {
    const keyed = keyedFace({
      gear: keyOn('key', [-2.5, 2.5], [0, 0]),
      cameras: [{ id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0 }],
    });
    const file = changed('keyed.plan.json', () => keyed);
    const { printed } = await answer(['report', file], fakeTerminal({ columns: 400 }));
    const [{ light }] = reportOf(keyed).setups;
    const [{ seconds, faces }] = light.levels;
    const face = faces.find(({ isShown, key }) => isShown && key !== null);
    if (!face?.key?.shadowEdgeMetres) throw new Error('no face with a key shows at the first beat');
    const who = keyed.cast.find(({ id }) => id === face.performerId)?.label;
    const [strongest] = face.given;
    const lamp = keyed.gear.find(({ id }) => id === strongest.itemId)?.label;
    const line = printed
      .split('\n')
      .find((each) => each.includes(`light on ${who} at ${formatSeconds(seconds)}: `));
    expect(line).toContain(`${lamp} ${formatShare(strongest.share)}, `);
    expect(line).toContain(`, ${formatLength(strongest.metres, 'm')}`);
    expect(line).toContain(`a shadow ${formatLength(face.key.shadowEdgeMetres, 'm')} soft`);

    const { printed: csv } = await answer(['report', file, '--csv']);
    const rows = Papa.parse<Readonly<Record<string, string>>>(csv, { header: true }).data;
    const given = rows.filter(
      ({ light: of, performers }) => of === 'given' && performers === face.performerId,
    );
    expect(given[0]).toMatchObject({
      item: strongest.itemId,
      plane: strongest.plane,
      lux: String(strongest.lux),
      share: String(strongest.share),
      metres: String(strongest.metres),
      bearingDegrees: String(strongest.bearingDegrees),
      elevationDegrees: String(strongest.elevationDegrees),
      shadowEdgeMetres: String(strongest.shadowEdgeMetres),
    });
    const level = rows.find(({ light: of }) => of === 'level');
    expect(level?.shadowEdgeMetres).toBe(String(face.key.shadowEdgeMetres));
  });

  test('prints what the meters read through each setup, beat by beat', async () => {
    const probes = [{ id: 'tank', label: 'At the tank', at: [0, 1.5, 0], normal: 'up' }];
    const file = changed('metered.plan.json', (document) => ({ ...document, probes }));
    const metered = planFrom(JSON.parse(readFileSync(file, 'utf8')));
    const { printed } = await answer(['report', file], fakeTerminal({ columns: 200 }));
    const read = reportOf(metered).setups.flatMap(({ light }) =>
      light.levels.flatMap(({ seconds, probes }) =>
        probes.map(({ lux }) => [formatSeconds(seconds), formatLight(lux, 'lx')]),
      ),
    );
    expect(read.length).toBeGreaterThan(0);
    const lines = printed.split('\n').filter((line) => line.trim().startsWith('At the tank'));
    expect(lines.map((line) => line.trim().split(/ {2,}/).slice(1, 3))).toEqual(read);
    expect(printed).toMatch(/\n {2}meter +at +lux +stops\n/);
  });

  test('--json is the report itself, not rounded, with the night as `night --json` has it', async () => {
    const { printed } = await answer(['report', roof(), '--json']);
    const night = JSON.parse((await answer(['night', roof(), '--json'])).printed) as object;
    expect(printed).toBe(`${JSON.stringify({ ...reportOf(plan), night }, null, 2)}\n`);
    expect(night).toHaveProperty('wrap');
  });

  test('--csv has a line for each item, then for each finding of continuity, then for all of the light, then for each caution', async () => {
    const { printed } = await answer(['report', roof(), '--csv']);
    const lines = printed.split('\r\n');
    expect(lines[0]).toMatch(
      /^setup,setupLabel,fromSeconds,toSeconds,item,label,kind,wish,verdict,share,spans,/,
    );
    const { setups, cautions } = reportOf(plan);
    const found = setups.flatMap(({ continuity }) => continuity);
    const [items, told] = [1 + 3 * (2 + 1 + 4), 1 + 3 * (2 + 1 + 4) + found.length];
    expect(lines.slice(items, told).every((line) => line.includes(',continuity,'))).toBe(true);
    const rows = setups.flatMap(({ light }) => [
      1,
      ...light.levels.flatMap(({ faces }) => faces),
      ...light.levels.flatMap(({ faces }) => faces.flatMap(({ given }) => given)),
      ...light.highlights,
      ...light.reads.flatMap(({ parts }) => parts),
      ...light.sentences,
    ]);
    const lit = told + rows.length;
    expect(lines.slice(told, lit).every((line) => line.includes(',light,'))).toBe(true);
    expect(cautions.length).toBeGreaterThan(0);
    expect(lines.slice(lit, -1).every((line) => line.includes(',caution,'))).toBe(true);
    expect(lines).toHaveLength(lit + cautions.length + 1);
    expect(lines.at(-1)).toBe('');
    expect(
      lines.some((line) =>
        line.startsWith(
          'master,Master from the stairs,0,0.5,stand-in,Lamp stand 1,stand,keep out,showing,0.',
        ),
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
    expect(await ids('--at', '0.25')).toEqual([
      'master,single',
      'standclear: left out, since they do not cover 0.25 s: still.\n',
    ]);
    expect(await ids('--at', '0.5', '--setup', 'still')).toEqual(['still', '']);
  });

  test('--at gives the report of one instant', async () => {
    const { printed } = await answer(['report', roof(), '--json', '--at', '0,2 s', '--setup', 'master']);
    expect(JSON.parse(printed)).toMatchObject(
      JSON.parse(JSON.stringify(reportOf(plan, { setupIds: ['master'], at: 0.2 }))),
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

  test('says what is accepted with its reason, and does not fail on it', async () => {
    const shows = ['master', 'single'].map((setup) => ({ setup, reason: 'It passes for a post.' }));
    const accepting = (...ids: string[]) =>
      changed('accepted.plan.json', (document) => ({
        ...document,
        gear: document.gear.map((gear) => (ids.includes(gear.id) ? { ...gear, shows } : gear)),
      }));
    const all = await answer(['check', accepting('stand-in', 'head-in')]);
    expect(all.printed).toMatch(
      /^Accepted: Master from the stairs, Lamp stand 1: the column .*\. It may show: It passes for a post\.$/m,
    );
    expect(all.printed).toMatch(
      /^Clear: nothing else that should keep out can be seen in 3 setups; \d+ findings accepted\.$/m,
    );
    expect(all.status).toBe(0);
    expect((await answer(['check', accepting('stand-in', 'head-in'), '--strict'])).status).toBe(0);
    const one = await answer(['check', accepting('stand-in')]);
    expect(one.printed).toMatch(
      /^Not clear: 1 item that should keep out can be seen, \d+ findings? in 3 setups; \d+ findings? accepted\.$/m,
    );
    expect(one.status).toBe(1);
  });

  test('takes setups by their letters too', async () => {
    expect((await answer(['check', roof(), '--setup', 'c'])).status).toBe(0);
  });

  test('answers 0 for setups that are clear by themselves', async () => {
    expect((await answer(['check', roof(), '--setup', 'still'])).status).toBe(0);
  });

  describe('where something is lost in the dark', () => {
    const dim = (document: Document): Record<string, unknown> & Pick<Document, 'gear'> => {
      const { dark: _, ...rest } = document;
      return { ...rest, gear: document.gear.filter(({ id }) => id !== 'head-in') };
    };

    test('warns, and answers 0 unless it is to be strict', async () => {
      const file = changed('dark.plan.json', dim);
      const { status, printed } = await answer(['check', file]);
      const plain = printed.replaceAll('\u00a0', ' ');
      expect(plain).toMatch(
        /^Warning: Master from the stairs, Lamp stand 1: the column is lost in the dark, [\d.]+ stops from what is behind it, [\d.]+ stops under grey\.$/m,
      );
      expect(plain).toMatch(
        /^Clear: nothing that should keep out can be seen in 3 setups; warning: 1 item that should keep out is only lost in the dark\.$/m,
      );
      expect(status).toBe(0);
      const strict = await answer(['check', file, '--strict']);
      expect(strict.printed).toMatch(/^Not clear: 1 item that should keep out is only lost in the dark\.$/m);
      expect(strict.status).toBe(1);
    });

    test('says of what must show that it is', async () => {
      const file = changed('dark-must.plan.json', (document) => ({
        ...dim(document),
        gear: dim(document).gear.map((gear) => ({
          ...gear,
          wish: gear.id === 'stand-in' ? 'must show' : 'either',
        })),
      }));
      const words = 'Lamp stand 1: it must show, and is lost in the dark wherever it is in frame.';
      const { status, printed } = await answer(['check', file]);
      expect(printed).toContain(`Warning: ${words}\n`);
      expect(status).toBe(0);
      expect((await answer(['check', file, '--strict'])).status).toBe(1);
      expect((await answer(['report', file])).printed).toContain(words.replace(': it', ''));
    });

    test('a plan without a lamp that is lit loses nothing', async () => {
      const file = changed('unlit.plan.json', (document) => ({
        ...dim(document),
        gear: document.gear.map((gear) => ('dim' in gear ? { ...gear, dim: 0 } : gear)),
      }));
      const { status, printed } = await answer(['check', file]);
      expect(printed).toMatch(/^Master from the stairs, Lamp stand 1: the column /m);
      expect(status).toBe(1);
    });
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
    const { status, printed } = await answer(['export', roof(), '--glb', file, '--at', '0.4']);
    expect(status).toBe(0);
    expect(printed).toMatch(/^Wrote ".*roof\.glb": the plan at 0\.4 s, [\d.]+ MB\.\n$/);
    expect(readFileSync(file).equals(planToGlb(plan, 0.4))).toBe(true);
  });

  test('starts at 0 s where no instant is given', async () => {
    const file = join(folder, 'start.glb');
    await answer(['export', roof(), '--glb', file]);
    expect(readFileSync(file).equals(planToGlb(plan, 0))).toBe(true);
  });
});
