import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatDegrees, formatHeading, parseDegrees } from '../../../../src/core/units/angles';
import type { UnitFault } from '../../../../src/core/units/faults';
import type { Result } from '../../../../src/core/units/result';
import { formatSeconds, parseSeconds } from '../../../../src/core/units/seconds';
import { formatShare, parseShare } from '../../../../src/core/units/shares';
import {
  formatStopCount,
  formatStopSetting,
  formatStops,
  parseStopSetting,
  parseStops,
} from '../../../../src/core/units/stops';

describe('printing', () => {
  test.each([
    [formatDegrees(39.64), '39.6°'],
    [formatDegrees(-3), '\u22123.0°'],
    [formatHeading(-90), '270°'],
    [formatHeading(359.7), '0°'],
    [formatHeading(720), '0°'],
    [formatSeconds(3.2), '3.2\u00a0s'],
    [formatSeconds(-0.01), '0.0\u00a0s'],
    [formatShare(0.011), '1.1\u00a0%'],
    [formatShare(0.0003), '0.03\u00a0%'],
    [formatShare(0.38), '38\u00a0%'],
    [formatShare(0.0996), '10\u00a0%'],
    [formatShare(0.000996), '0.1\u00a0%'],
    [formatShare(0), '0\u00a0%'],
    [formatShare(1e-7), 'under\u00a00.01\u00a0%'],
    [formatShare(1), '100\u00a0%'],
    [formatStops(1.5), '+1.5\u00a0stops'],
    [formatStops(-1), '\u22121.0\u00a0stop'],
    [formatStops(0), '0.0\u00a0stops'],
    [formatStopCount(-1.2), '1.2\u00a0stops'],
    [formatStopCount(1), '1.0\u00a0stop'],
    [formatStopCount(0.01), '0.0\u00a0stops'],
    [formatStopSetting(2.8), 'T2.8'],
    [formatStopSetting(11), 'T11'],
  ])('%s', (printed, expected) => expect(printed).toBe(expected));
});

/** Of a printed share: two decimals of a per cent below 0.1 %, one below 10 %, none from there on. */
const halfOfTheLastDecimal = (share: number): number =>
  (share < 0.000995 ? 0.00005 : share < 0.0995 ? 0.0005 : 0.005) * 1.0001;

describe('there and back', () => {
  const number = fc.double({ min: -3600, max: 3600, noNaN: true });
  const pairs: readonly [
    name: string,
    values: fc.Arbitrary<number>,
    print: (value: number) => string,
    read: (text: string) => Result<number, UnitFault>,
    within: (value: number) => number,
  ][] = [
    ['degrees', number, formatDegrees, parseDegrees, () => 0.0501],
    ['seconds', number, formatSeconds, parseSeconds, () => 0.0501],
    ['stops', number, formatStops, parseStops, () => 0.0501],
    [
      'stop settings',
      fc.double({ min: 0.5, max: 128, noNaN: true }),
      formatStopSetting,
      parseStopSetting,
      () => 0.0501,
    ],
    [
      'shares',
      fc.double({ min: 0.00005, max: 1, noNaN: true }),
      formatShare,
      parseShare,
      halfOfTheLastDecimal,
    ],
  ];
  test.each(pairs)('%s', (_, values, print, read, within) => {
    fc.assert(
      fc.property(values, (value) => {
        const back = read(print(value));
        expect(back.ok && Math.abs(back.value - value)).toBeLessThanOrEqual(within(value));
      }),
    );
  });
});

describe('refusing', () => {
  test.each([
    [parseDegrees('3 m'), '"3 m" is not a number of degrees: type degrees, such as 12.5.'],
    [parseSeconds('soon'), '"soon" is not a number of seconds: type seconds, such as 3.2.'],
    [parseSeconds('NaN'), '"NaN" is not a number of seconds: type seconds, such as 3.2.'],
    [parseSeconds(''), 'There is no number of seconds: type seconds, such as 3.2.'],
    [parseShare('1/2'), '"1/2" is not a share: type per cent, such as 1.1 %.'],
    [parseStops('T2.8'), '"T2.8" is not a number of stops: type stops, such as −1.5.'],
    [parseStopSetting('0'), '"0" is not a stop: type a stop, such as T2.8.'],
  ])('%#', (read, sentence) => {
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.faults[0].sentence).toBe(sentence);
  });
});
