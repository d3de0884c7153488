import { expect, test } from 'vitest';
import { BODIES } from '../../../src/core/kit/bodies';
import { LENSES } from '../../../src/core/kit/lenses';
import { readOwnKit } from '../../../src/core/kit/ownKit';
import { bodiesCsv, idFrom, lensesCsv, readBodiesCsv, readLensesCsv } from '../../../src/exchange/kitFileCsv';

const HEAD = 'label,focalMm,squeeze,widestStop,narrowestStop,closeFocusMetres,imageCircleMm';

test('what is built in goes out and comes back', () => {
  expect(readLensesCsv(lensesCsv(LENSES))).toEqual({ entries: LENSES, faults: [] });
  expect(readBodiesCsv(bodiesCsv(BODIES))).toEqual({ entries: BODIES, faults: [] });
});

test('a broken row is named by its line and column, and the others are read', () => {
  const file = `${HEAD}\n"Prime, 40",40,1,1.4,22,0.4,46\n\n"two\nlines",0,1,1.4,22,0.4,46\n75,75,1,x,22,0.6,`;
  const { entries, faults } = readLensesCsv(file);
  expect(entries.map(({ id, label }) => [id, label])).toEqual([['prime-40', 'Prime, 40']]);
  expect(faults.map(({ sentence }) => sentence)).toEqual([
    'Line 4, focalMm: found "0", expected 1 to 3000.',
    'Line 6, widestStop: found "x", expected 0.5 to 64.',
  ]);
});

test('more rows than a kit may have are not read one by one', () => {
  const rows = (count: number): string => `a,40,1,1.4,22,0.4,46\n`.repeat(count);
  expect(readLensesCsv(`${HEAD}\n${rows(4000)}`).entries).toHaveLength(4000);
  const { entries, faults } = readLensesCsv(`${HEAD}\n${rows(500_000)}`);
  expect(entries).toEqual([]);
  expect(faults.map(({ sentence }) => sentence)).toEqual([
    'Line 1: found 10500078 letters, expected a table of at most 8388608.',
  ]);
  expect(readLensesCsv(`${HEAD}\n${rows(4001)}`).faults.map(({ sentence }) => sentence)).toEqual([
    'Line 4002: found one row more, expected a table of at most 4001 rows.',
  ]);
});

test('the largest kit of bodies comes back from its table', () => {
  const [body] = BODIES;
  const modes = Array.from({ length: 40 }, (_, k) => ({
    ...body.modes[0],
    id: `mode-${k}`,
    label: `Mode ${k}`,
  }));
  const largest = Array.from({ length: 100 }, (_, k) => ({
    ...body,
    id: `body-${k}`,
    label: `Body ${k}`,
    modes,
  }));
  expect(readBodiesCsv(bodiesCsv(largest))).toEqual({ entries: largest, faults: [] });
});

test('semicolons with decimal commas, as some spreadsheets write them, are read', () => {
  const file = `\ufeff${HEAD.replaceAll(',', ';')}\r\nPrime;40;1,33;1,4;22;0,35;\r\n`;
  const { entries, faults } = readLensesCsv(file);
  expect(faults).toEqual([]);
  expect(entries[0]).toMatchObject({ squeeze: 1.33, widestStop: 1.4, closeFocusMetres: 0.35 });
  expect(entries[0]).not.toHaveProperty('imageCircleMm');
});

test.each([
  ['', 'Line 1: found nothing, expected a first row with the names of the columns.'],
  ['label,focal\na,1', 'Line 1, "focal": found a column that is not known, expected set, label,'],
  ['label\na', 'Line 1, focalMm: found nothing, expected a column of that name.'],
  [`${HEAD}\na,40,1,1.4,22,0.4,46,9`, 'Line 2: found 8 cells, expected 7, as in the first row.'],
  [`${HEAD}\na,40,1,4,2,0.4,46`, 'Line 2, narrowestStop: found 2, expected 4 or more, the widest.'],
  [
    `${HEAD}\n"a,40,1,4,22,0.4,46`,
    'Line 2: found a quotation mark that is not closed, expected one that is.',
  ],
  [
    `${HEAD},id\na,40,1,4,22,0.4,46,x\nb,40,1,4,22,0.4,46,x`,
    'Line 3, id: found "x", expected an id of its own.',
  ],
  [`${HEAD}\n${'a'.repeat(90)},40,1,4,22,0.4,46`, 'expected a name of at most 80 characters.'],
])('of %j it is said what is wrong', (file, sentence) => {
  const { faults } = readLensesCsv(file);
  expect(faults.map((fault) => fault.sentence).join(' ')).toContain(sentence);
});

test('rows of one name are one body with several modes', () => {
  const file =
    'body,mode,gateWidthMm,gateHeightMm\nOwn,open gate,28.25,18.17\nOwn,crop,400,9\nOwn,16:9,26,14.6\n';
  const { entries, faults } = readBodiesCsv(file);
  expect(entries).toHaveLength(1);
  expect(entries[0].modes.map(({ id, gateMm }) => [id, gateMm])).toEqual([
    ['open-gate', [28.25, 18.17]],
    ['16-9', [26, 14.6]],
  ]);
  expect(faults.map(({ sentence }) => sentence)).toEqual([
    'Line 3, gateWidthMm: found "400", expected 1 to 200.',
  ]);
});

test.each([
  ['{', 'The file: found something that is not JSON, expected a kit in JSON.'],
  ['7', 'The file: found 7, expected a kit in JSON.'],
  ['{"standclearKit":2,"bodies":[],"lenses":[]}', 'standclearKit: found 2, expected version 1.'],
  [
    '{"standclearKit":1,"bodies":[],"lenses":[],"heads":[]}',
    'heads: found a field that a kit does not have, expected it to be left out.',
  ],
])('of the kit %j it is said what is wrong', (file, sentence) => {
  const read = readOwnKit(file);
  expect(read.ok ? [] : read.faults.map((fault) => fault.sentence)).toEqual([sentence]);
});

test('an id is made of the name, and is one of its own', () => {
  expect(idFrom('  Großer Kasten 40 mm ', new Set())).toBe('gro-er-kasten-40-mm');
  expect(idFrom('40', new Set(['40', '40-2']))).toBe('40-3');
  expect(idFrom('東京', new Set())).toBe('own');
});
