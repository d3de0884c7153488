import { expect, test } from 'vitest';
import { LONGEST_LM63, readLm63 } from '../../../../src/exchange/lm63/readLm63';

const FILE: readonly string[] = [
  'IESNA:LM-63-2002',
  '[TEST] by hand',
  'TILT=NONE',
  '1 -1 2 3 2 1 2 0.1 0.1 0',
  '1 1 50',
  '0 45 90',
  '0 90',
  '100 70 0',
  '100 60 0',
];

/** The file with one line in place of another. */
const withLine = (number: number, line: string): string => FILE.with(number - 1, line).join('\n');

function sentenceOf(text: string): string {
  const read = readLm63(text, 'lamp.ies');
  return read.ok ? `read: ${JSON.stringify(read.value.distribution)}` : read.faults[0].sentence;
}

test('the file itself is read', () => {
  expect(sentenceOf(FILE.join('\n'))).toContain('"candela":[[200,140,0],[200,120,0]]');
});

test.each<[string, string, string]>([
  [
    'nothing',
    '',
    'Line 1: found nothing, expected a photometric file, such as one that begins with IESNA:LM-63-2002.',
  ],
  [
    'bytes of something else',
    '\u0000\u0001PNG',
    'Line 1: found something that is not text, expected a photometric file as LM-63 has it.',
  ],
  [
    'an edition that there is not',
    withLine(1, 'IESNA:LM-63-2050'),
    'Line 1: found "IESNA:LM-63-2050", expected LM-63 of 1986, 1991, 1995, 2002 or 2019, such as IESNA:LM-63-2002.',
  ],
  [
    'no tilt',
    'a letter\nto somebody\n',
    'Line 2: found the end of the file, expected a line TILT=NONE before the numbers.',
  ],
  [
    'a tilt in another file',
    withLine(3, 'TILT=lamp.tlt'),
    'Line 3: found "TILT=lamp.tlt", expected TILT=NONE or TILT=INCLUDE.',
  ],
  [
    'a lamp that depends on its tilt',
    withLine(3, 'TILT=INCLUDE\n1\n3\n0 45 90\n1 0.9 0.8'),
    'Line 3: found a lamp that gives 0.8 to 1 of its light as it is tilted, expected one whose light does not depend on its tilt.',
  ],
  [
    'a word among the numbers',
    withLine(4, '1 -1 two 3 2 1 2 0.1 0.1 0'),
    'Line 4: found "two", expected the candela multiplier, 0 to 1,000,000.',
  ],
  [
    'a count that no memory holds',
    withLine(4, '1 -1 1 999999999 2 1 2 0 0 0'),
    'Line 4: found "999999999", expected the number of vertical angles, a whole number of 2 to 361.',
  ],
  [
    'a count with a fraction',
    withLine(4, '1 -1 1 3 1.5 1 2 0 0 0'),
    'Line 4: found "1.5", expected the number of horizontal angles, a whole number of 1 to 361.',
  ],
  [
    'an unknown type',
    withLine(4, '1 -1 1 3 2 4 2 0 0 0'),
    'Line 4: found "4", expected the type, 1 for C, 2 for B, 3 for A, a whole number of 1 to 3.',
  ],
  [
    'angles that go back',
    withLine(6, '0 45 40'),
    'Line 6: found a vertical angle 40, expected more than 45, the one before: angles go up.',
  ],
  [
    'an angle twice',
    withLine(7, '90 90'),
    'Line 7: found a horizontal angle 90, expected more than 90, the one before: angles go up.',
  ],
  [
    'a part of a turn',
    withLine(7, '0 120'),
    'Line 7: found horizontal angles from 0 to 120, expected 0 alone, 0 to 90, 0 to 180, 90 to 270 or 0 to 360.',
  ],
  [
    'light that is less than none',
    withLine(9, '100 -60 0'),
    'Line 9: found "-60", expected candela, 0 to 100,000,000.',
  ],
  ['no number', withLine(8, '100 NaN 0'), 'Line 8: found "NaN", expected candela, 0 to 100,000,000.'],
  [
    'a number without end',
    withLine(8, '100 1e999 0'),
    'Line 8: found "1e999", expected candela, 0 to 100,000,000.',
  ],
  ['hexadecimal', withLine(8, '0x64 70 0'), 'Line 8: found "0x64", expected candela, 0 to 100,000,000.'],
  [
    'a table that breaks off',
    FILE.slice(0, 8).join('\n'),
    'Line 8: found the end of the file, expected candela, 0 to 100,000,000.',
  ],
  [
    'more candela than angles',
    withLine(9, '100 60 0 5'),
    'Line 9: found "5", expected the end of the file after the last candela.',
  ],
  [
    'no light',
    withLine(4, '1 -1 0 3 2 1 2 0.1 0.1 0'),
    'Line 7: found candela that come to 0 with their factors, expected some light.',
  ],
  [
    'factors that make it a sun',
    withLine(4, '1 -1 1e6 3 2 1 2 0.1 0.1 0'),
    'Line 8: found 100000000 candela with its factors, expected at most 100000000.',
  ],
])('%s is a sentence', (what, text, sentence) => {
  if (what === 'factors that make it a sun') {
    expect(sentenceOf(text)).toContain('read');
    expect(sentenceOf(text.replace('100 70 0', '101 70 0'))).toBe(
      'Line 8: found 101000000 candela with its factors, expected at most 100000000.',
    );
  } else expect(sentenceOf(text)).toBe(sentence);
});

test('text that would run down a page or turn its direction comes as one short line', () => {
  const sentence = sentenceOf(`IES\u202e\u2028${'x'.repeat(5000)}`);
  expect(sentence).not.toMatch(/[\p{Cc}\p{Cf}\u2028]/u);
  expect(sentence.length).toBeLessThan(200);
});

test.each([
  ['a line without end', 'x'.repeat(1_000_000)],
  ['nothing but line feeds', '\n'.repeat(1_000_000)],
  ['keywords without end', '[MORE] and more\n'.repeat(60_000)],
  ['lines of old systems', `IESNA:LM-63-2002\r${'TILT\r'.repeat(200_000)}`],
  ['numbers without end', `IESNA:LM-63-2002\nTILT=NONE\n${'1 '.repeat(500_000)}`],
  ['one number without end', `IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 ${'1'.repeat(900_000)}`],
  ['more than a file may hold', ' '.repeat(LONGEST_LM63 + 1)],
])('a megabyte of %s is a sentence, and holds nobody up for long', { timeout: 10_000 }, (_, text) => {
  expect(sentenceOf(text)).toMatch(/^(Line \d+|The file): found [^\n]{1,120}, expected [^\n]+\.$/);
});
