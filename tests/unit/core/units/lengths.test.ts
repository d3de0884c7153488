import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatArea, formatLength, METRES_PER_INCH, parseLength } from '../../../../src/core/units/lengths';
import type { Result } from '../../../../src/core/units/result';

const readValue = (read: Result<number, unknown>): number => (read.ok ? read.value : Number.NaN);

test('an area is read in square metres to a tenth, or in whole square feet', () => {
  expect(formatArea(24, 'm')).toBe('24.0\u00a0m²');
  // An acre is 43,560 square feet by definition. Source: common practice, no source.
  expect(formatArea(4046.8564224, 'ft-in')).toBe('43560\u00a0ft²');
});

describe('formatLength', () => {
  test.each([
    [3.2, '3.20\u00a0m'],
    [-0.4, '\u22120.40\u00a0m'],
    [0, '0.00\u00a0m'],
    [-0.001, '0.00\u00a0m'],
    [1234.567, '1234.57\u00a0m'],
  ])('%d in metres', (metres, text) => expect(formatLength(metres, 'm')).toBe(text));

  test('takes a count of decimals', () =>
    expect(formatLength(3.25, 'm', { decimals: 1 })).toBe('3.3\u00a0m'));

  test.each([
    [14 * 12 + 1.25, '14′\u00a01¼″'],
    [6.5, '6½″'],
    [0.75, '¾″'],
    [0, '0″'],
    [-0.1, '0″'],
    [12, '1′\u00a00″'],
    [11.9, '1′\u00a00″'],
    [12.25, '1′\u00a0¼″'],
    [-30, '\u22122′\u00a06″'],
  ])('%d inches in feet and inches', (inches, text) => {
    expect(formatLength(inches * METRES_PER_INCH, 'ft-in')).toBe(text);
  });

  test('throws on what is not a length at all', () => {
    expect(() => formatLength(Number.NaN, 'm')).toThrow('finite');
    expect(() => formatLength(Number.POSITIVE_INFINITY, 'ft-in')).toThrow('finite');
  });
});

describe('parseLength', () => {
  test.each([
    ['3.2', 3.2],
    ['3,2', 3.2],
    [' 3.2 m ', 3.2],
    ['3.20\u00a0m', 3.2],
    ['320 cm', 3.2],
    ['3200mm', 3.2],
    ['0.5 km', 500],
    ['-3,2 m', -3.2],
    ['\u22123.2 m', -3.2],
    ['.5', 0.5],
    ['10\'6"', 126 * METRES_PER_INCH],
    ["10'6", 126 * METRES_PER_INCH],
    ["10' 6''", 126 * METRES_PER_INCH],
    ['10′ 6½″', 126.5 * METRES_PER_INCH],
    ['10’ 6 ½”', 126.5 * METRES_PER_INCH],
    ['126 in', 126 * METRES_PER_INCH],
    ['126"', 126 * METRES_PER_INCH],
    ['10 ft 6 1/2 in', 126.5 * METRES_PER_INCH],
    ['10 ft', 120 * METRES_PER_INCH],
    ['10.5 feet', 126 * METRES_PER_INCH],
    ['½ in', 0.5 * METRES_PER_INCH],
    ['1/4"', 0.25 * METRES_PER_INCH],
    ['-2\' 6"', -30 * METRES_PER_INCH],
    ['6′-3″', 75 * METRES_PER_INCH],
  ])('reads %s', (text, metres) => expect(readValue(parseLength(text))).toBeCloseTo(metres, 12));

  test('takes a bare number in the system that is shown', () => {
    expect(readValue(parseLength('10', 'ft-in'))).toBeCloseTo(3.048, 12);
    expect(readValue(parseLength('10 m', 'ft-in'))).toBe(10);
  });

  test.each([
    '',
    '  ',
    'wide',
    '3.2.1',
    '1,234.5',
    '3 m 20',
    '6 7',
    '1/0 in',
    '--3',
    'm',
    "'",
    '9'.repeat(400),
  ])('refuses %j and says what it understands', (text) => {
    const read = parseLength(text);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.faults[0].sentence).toMatch(/length: type metres, such as 3\.2 m/);
  });

  test('never throws and never gives what is not finite', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[-\d., '"½inftcm/]{0,20}$/)), (text) => {
        const read = parseLength(text);
        return !read.ok || Number.isFinite(read.value);
      }),
    );
  });
});

describe('there and back', () => {
  const metres = fc.double({ min: -5000, max: 5000, noNaN: true });
  test('through metres, within half of the last decimal', () => {
    fc.assert(
      fc.property(metres, (length) => {
        expect(Math.abs(readValue(parseLength(formatLength(length, 'm'))) - length)).toBeLessThan(0.00501);
      }),
    );
  });
  test('through feet and inches, within an eighth of an inch', () => {
    fc.assert(
      fc.property(metres, (length) => {
        const back = readValue(parseLength(formatLength(length, 'ft-in'), 'ft-in'));
        expect(Math.abs(back - length)).toBeLessThan(0.12501 * METRES_PER_INCH);
      }),
    );
  });
  test('what was printed once prints the same again', () => {
    fc.assert(
      fc.property(metres, fc.constantFrom('m' as const, 'ft-in' as const), (length, system) => {
        const text = formatLength(length, system);
        expect(formatLength(readValue(parseLength(text, system)), system)).toBe(text);
      }),
    );
  });
});
