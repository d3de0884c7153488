import { expect, test } from 'vitest';
import { type Lm63File, readLm63 } from '../../../../src/exchange/lm63/readLm63';

function read(lines: readonly string[], end = '\n', name = 'lamp.ies'): Lm63File {
  const file = readLm63(lines.join(end), name);
  if (!file.ok) throw new Error(file.faults[0].sentence);
  return file.value;
}

const numbers = ['1 1000 1 3 1 1 1 1 2 0', '0.9 0.5 50', '0 45 90', '0', '100 70 0'] as const;

test.each<[string, readonly string[], number, string | undefined]>([
  ['1986', ['A lamp by its label', 'TILT=NONE'], 1986, 'A lamp by its label'],
  ['1991', ['IESNA91', 'A lamp', 'TILT=NONE'], 1991, 'A lamp'],
  ['1995', ['IESNA:LM-63-1995', '[LUMINAIRE] a lamp', 'TILT=NONE'], 1995, 'a lamp'],
  ['2002', ['IESNA:LM-63-2002', '[LUMCAT] K 9', '[MORE] of it', ' tilt = none '], 2002, 'K 9'],
  ['2019', ['IES:LM-63-2019', '[TEST] 1', 'TILT=NONE'], 2019, undefined],
])('%s is told by its first line', (_, header, year, says) => {
  const file = read([...header, ...numbers]);
  expect(file.year).toBe(year);
  expect(file.distribution.says).toBe(says);
});

test('the second factor counts until 1995, and is none since', () => {
  expect(read(['IESNA:LM-63-1995', 'TILT=NONE', ...numbers]).distribution.candela).toEqual([[45, 31.5, 0]]);
  const later = read(['IESNA:LM-63-2002', 'TILT=NONE', ...numbers]);
  expect(later.distribution.candela).toEqual([[90, 63, 0]]);
  expect(later.remarks).toEqual([
    'The number after the ballast factor, 0.5, is none of the factors of 2002 and was left out.',
  ]);
  const latest = read(['IES:LM-63-2019', 'TILT=NONE', ...numbers]);
  expect(latest.distribution.candela).toEqual([[90, 63, 0]]);
  expect(latest.remarks).toEqual([]);
});

test('feet become metres, lumens those of all lamps, minus one none', () => {
  const file = read([
    'IESNA:LM-63-2002',
    'TILT=NONE',
    '2 1000 1 3 1 1 1 1 2 0',
    '1 1 50',
    ...numbers.slice(2),
  ]);
  expect(file.openingMetres).toEqual([0.3048, 0.6096, 0]);
  expect(file.distribution.lumens).toBe(2000);
  expect(file.watts).toBe(50);
  const absolute = read([
    'IESNA:LM-63-2002',
    'TILT=NONE',
    '1 -1 1 3 1 1 2 1 2 0',
    '1 1 0',
    ...numbers.slice(2),
  ]);
  expect(absolute.openingMetres).toEqual([1, 2, 0]);
  expect(absolute.distribution).not.toHaveProperty('lumens');
  expect(absolute.watts).toBeNull();
});

test('numbers may break off and go on anywhere, with commas, any line ends, and the mark of an old end', () => {
  const lines = ['1,1000 1', '3 1', '1 1 1 2 0 0.9', '0.5', '50 0', '45 90 0 100', '70,0', '', '\u001a'];
  for (const end of ['\n', '\r\n', '\r'])
    expect(read(['IESNA:LM-63-1995', 'TILT=NONE', ...lines], end)).toEqual(
      read(['IESNA:LM-63-1995', 'TILT=NONE', ...numbers]),
    );
});

test('a tilt that changes nothing is passed over', () => {
  const tilted = read(['IESNA:LM-63-1995', 'TILT=INCLUDE', '1', '2', '0 90', '1 1.0', ...numbers]);
  expect(tilted).toEqual(read(['IESNA:LM-63-1995', 'TILT=NONE', ...numbers]));
});

test('what was done with a file is said', () => {
  const open = read([
    'IES:LM-63-2019',
    'TILT=NONE',
    '1 -1 1 2 4 1 2 0 0 0',
    '1 1 9',
    '0 45',
    '0 90 180 270',
    '9 1 8 1 9 1 7 1',
  ]);
  expect(open.remarks).toEqual([
    'The table ends at 45°: nothing is taken to shine beyond it.',
    'The row at 360° was missing and is taken to be that at 0°.',
  ]);
  expect(open.distribution.horizontalDegrees).toEqual([0, 90, 180, 270, 360]);
  expect(open.distribution.candela.at(-1)).toEqual([9, 1]);
  const strong = read([
    'IES:LM-63-2019',
    'TILT=NONE',
    '1 100 1 2 1 1 2 0 0 0',
    '1 1 9',
    '0 90',
    '0',
    '1000 0',
  ]);
  expect(strong.remarks).toEqual([
    'The table comes to 2283\u00a0lm, more than the 100\u00a0lm of its bare lamps.',
  ]);
  const turned = read([
    'IES:LM-63-2019',
    'TILT=NONE',
    '1 -1 1 2 2 2 2 0 0 0',
    '1 1 9',
    '0 90',
    '0 90',
    '9 1 8 1',
  ]);
  expect(turned.remarks).toEqual([
    'The table is of type B and was read again by angles off and round the axis.',
  ]);
});

test('the name of a file is kept on one line', () => {
  const header = ['IES:LM-63-2019', 'TILT=NONE', ...numbers];
  expect(read(header, '\n', 'a\u0000\nb\u202e.ies').distribution.source).toBe('a b .ies');
  expect(read(header, '\n', '').distribution.source).toBe('photometric file');
  expect(read(header, '\n', 'x'.repeat(300)).distribution.source).toHaveLength(80);
});
