import { describe, expect, test } from 'vitest';
import { cautionsOf } from '../../../../src/core/cautions/cautions';
import { sourceLines } from '../../../../src/core/cautions/sourceLines';
import { unnotedWords } from '../../../../src/screens/header/waiting';
import { sourceShort } from '../../../../src/screens/sheet/night/cautions/sourceWords';
import {
  AREA_LOAD,
  FOOT_LOAD,
  printIn,
  readIn,
  WIND,
} from '../../../../src/screens/sheet/night/cautions/units';
import {
  bagsWords,
  countSentence,
  figureLines,
  keyFigure,
} from '../../../../src/screens/sheet/night/cautions/words';
import { DECK, flagOn, parapet, roof, standAt } from '../../cautions/roof';

const NBSP = '\u00a0';
const plan = roof({
  pieces: [DECK, parapet(0.9)],
  gear: [standAt('stand', [0, 0, 0]), flagOn('flag', 'stand')],
  more: { cautions: { wind: { metresPerSecond: 12 } } },
});
const cautions = cautionsOf(plan);
const wind = cautions.find(({ id }) => id === 'wind/stand');

describe('amounts in either unit', () => {
  test('are shown in the unit that goes with the lengths', () => {
    expect(printIn(WIND, 'm', 12)).toBe('12.0');
    expect(printIn(WIND, 'ft-in', 12)).toBe('26.8');
    // 20 and 100 pounds over a square foot, as the codes say them in both.
    expect(printIn(AREA_LOAD, 'ft-in', 0.96)).toBe('20');
    expect(printIn(AREA_LOAD, 'ft-in', 4.79)).toBe('100');
    expect(printIn(FOOT_LOAD, 'ft-in', 4.4482216)).toBe('1000');
  });

  test('are read with either unit behind them, or with the one that is shown', () => {
    expect(readIn(WIND, 'm', '12')).toBe(12);
    expect(readIn(WIND, 'm', '25 mph')).toBeCloseTo(11.176, 9);
    expect(readIn(WIND, 'ft-in', '25')).toBeCloseTo(11.176, 9);
    expect(readIn(WIND, 'ft-in', '7,5 m/s')).toBe(7.5);
    expect(readIn(AREA_LOAD, 'm', '20 lbf/ft²')).toBeCloseTo(0.958, 3);
    expect(readIn(AREA_LOAD, 'ft-in', '1.5 kN/m²')).toBe(1.5);
    for (const text of ['', 'windy', '12 knots', '12 kN']) expect(readIn(WIND, 'm', text)).toBeNull();
  });
});

test('figures of one name are one line, with what they are held against; a row tells the one that is held', () => {
  const [first, ...others] = figureLines(wind?.figures ?? [], 'm');
  expect(first).toMatch(
    /^tips in a wind of \d\.\d\u00a0m\/s, \d+\u00a0mph, Beaufort\u00a0\d, [a-z ]+, held against 18\.4\u00a0m\/s$/,
  );
  expect(others.some((line) => line.startsWith('lower or strike above'))).toBe(true);
  const edge = cautions.find(({ id }) => id.startsWith('edge-open'));
  expect(edge && keyFigure(edge, 'm')).toBe(
    `height of what stands along it 0.90${NBSP}m, held against 1.10${NBSP}m`,
  );
  expect(edge && keyFigure(edge, 'ft-in')).toContain('″');
  expect(edge && keyFigure({ ...edge, figures: [] }, 'm')).toBeNull();
});

test('each caution says where its figures come from', () => {
  expect(sourceShort(['guardrail', 'unprotected-edge'])).toBe(
    'US workplace rule 29 CFR 1926.502(b)(1) and 1 more',
  );
  expect(sourceShort(['generator-exhaust'])).toBe('Portable generators (esfi.org)');
  expect(sourceShort([])).toBe('common practice, or what the plan itself says');
  expect(sourceLines(['standard-air'])[0]).toMatch(/from memory\)\.$/);
  for (const { sources } of cautions) {
    expect(sourceShort(sources)).not.toBe('');
    expect(sourceLines(sources).every((line) => line.endsWith('.'))).toBe(true);
  }
});

test('the counts go down with notes, and what holds waits for none', () => {
  const holding = cautions.filter(({ standing }) => standing === 'holds').length;
  const open = unnotedWords(cautions, new Set());
  expect(open.count).toBe(cautions.length - holding);
  expect(open.breaks).toBe(true);
  expect(unnotedWords(cautions, new Set(['wind/stand'])).count).toBe(open.count - 1);
  expect(unnotedWords(cautions, new Set(cautions.map(({ id }) => id))).count).toBe(0);
  expect(countSentence(cautions, new Set())).toMatch(/None is noted\.$/);
  expect(countSentence(cautions, new Set(['wind/stand']))).toMatch(/ 1 noted\.$/);
  expect(countSentence([], new Set())).toMatch(/^Nothing on this roof/);
});

test('bags are added, or laid in place of lighter ones', () => {
  expect(bagsWords({ count: 6, kilograms: 10, added: 5 }, true)).toBe(`Add 5 bags of 10${NBSP}kg`);
  expect(bagsWords({ count: 1, kilograms: 12.5, added: 1 }, false)).toBe(`Add 1 bag of 12.5${NBSP}kg`);
  expect(bagsWords({ count: 4, kilograms: 20, added: 4 }, true)).toBe(
    `Lay 4 bags of 20${NBSP}kg in place of those`,
  );
});
