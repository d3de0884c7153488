import { describe, expect, test } from 'vitest';
import { cameraWords, performerWords } from '../../../../src/core/continuity/readingWords';
import { deliveryWord, readAspect } from '../../../../src/core/optics/deliveries';
import { fieldWord, numberWord, printed, readLegal } from '../../../../src/screens/sheet/camera/legal';

describe('a typed number within limits', () => {
  const focal = { what: 'Focal lengths', limits: [1, 3000], unit: 'mm' } as const;

  test.each([
    ['40', 40],
    ['40 mm', 40],
    ['1,250', 1250],
    ['27,5', 27.5],
  ])('%j is read', (text, value) => expect(readLegal(text, focal)).toEqual({ ok: true, value }));

  test.each([
    ['0', 1],
    ['5,000', 3000],
    ['-3', 1],
    ['forty', null],
  ])('%j is refused, and the nearest that would do is offered', (text, nearest) => {
    const read = readLegal(text, focal);
    expect(read).toMatchObject({ ok: false, nearest });
    expect(read.ok ? '' : read.sentence).toContain('Focal lengths run from 1\u00a0mm to 3,000\u00a0mm.');
  });

  test('is printed with thousands apart and no noughts at its end', () => {
    expect([4000, 1e6, 2.5, 0.001, -0.05, 100].map((value) => numberWord(value))).toEqual([
      '4,000',
      '1,000,000',
      '2.5',
      '0.001',
      '−0.05',
      '100',
    ]);
  });

  test('stands in one go in a field of ISO numbers or kelvin, as it does wherever else it is written', () => {
    const kelvin = { unit: 'K', inOneGo: true } as const;
    expect([800, 2500, 12_800].map((iso) => fieldWord(iso, { inOneGo: true }))).toEqual([
      '800',
      '2500',
      '12800',
    ]);
    expect(printed(5600, kelvin)).toBe('5600\u00a0K');
    expect(fieldWord(2.125, { decimals: 2 })).toBe('2.13');
  });
});

describe('aspect ratios', () => {
  test.each([
    ['2.39', 2.39],
    ['2.39:1', 2.39],
    ['9:16', 9 / 16],
    ['16 x 9', 16 / 9],
    ['4×5', 0.8],
  ])('%j is read', (text, aspect) => expect(readAspect(text)).toBeCloseTo(aspect, 12));

  test.each(['', 'wide', '1:2:3', '9:0', '9:'])('%j is none', (text) => expect(readAspect(text)).toBeNull());

  test('have the names of the trade where they have one', () => {
    expect([2.39, 1.78, 9 / 16, 1.9, 0.5625, 4 / 3].map(deliveryWord)).toEqual([
      '2.39',
      '16:9',
      '9:16',
      '1.9',
      '9:16',
      '4:3',
    ]);
  });
});

describe('the reading of the camera in words', () => {
  const reading = {
    heightMetres: 1.2,
    tiltDegrees: -1.26,
    rollDegrees: 0,
    bearingDegrees: 359.97,
    focalMm: 50,
    performers: [],
  };

  test('says heights in metres or in feet and inches, and on which side', () => {
    expect(cameraWords(reading, 'm')).toEqual({
      'lens height': '1.20\u00a0m',
      tilt: '−1.3°',
      roll: '0.0°',
      bearing: '0.0°',
      'focal length': '50\u00a0mm',
    });
    expect(cameraWords(reading, 'ft-in')['lens height']).toContain('3′');
    const performer = {
      performerId: 'a',
      label: 'A',
      tapeMetres: 3.048,
      axisMetres: 3,
      offAxisDegrees: -12.34,
      offFaceDegrees: 0.01,
    };
    expect(performerWords(performer, 'm')).toEqual({
      tape: '3.05\u00a0m',
      axis: '3.00\u00a0m',
      'off axis': '12.3° left',
      'off the face': '0.0°',
    });
    expect(performerWords(performer, 'ft-in').tape).toContain('10′');
    expect(performerWords(null, 'm').tape).toBe('not there');
  });
});
