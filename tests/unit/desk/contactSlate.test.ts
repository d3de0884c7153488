import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { layOut } from '../../../src/desk/contactPictures';
import {
  shotFileName,
  shotsOf,
  slateLine,
  slateName,
  slateOf,
  slateTexts,
} from '../../../src/desk/contactSlate';
import { fileWord } from '../../../src/desk/fileWord';
import { fingerprintOf } from '../../../src/exchange/fingerprint';
import { smallRoof } from '../smallRoof';

const plan: Plan = smallRoof();
const [master, , still] = plan.setups;

describe('the slate', () => {
  test('a move has a start, a middle and an end, an instant one moment', () => {
    expect(shotsOf(plan, master).map(({ moment, seconds }) => [moment, seconds])).toEqual([
      ['start', 0],
      ['middle', 1],
      ['end', 2],
    ]);
    expect(shotsOf(plan, still).map(({ moment, seconds }) => [moment, seconds])).toEqual([['still', 2]]);
  });

  test('says setup, lens and squeeze, height, stop and time', () => {
    const [, , end] = shotsOf(plan, master);
    const slate = slateOf(plan, end, 'm');
    expect(slateLine(slate)).toBe('40\u00a0mm, 2× squeeze, 1.60\u00a0m high, T2.8, 2.0\u00a0s');
    const texts = slateTexts(plan, end, slate);
    expect(texts).toMatchObject({
      Setup: 'A Master from the stairs',
      Stop: 'T2.8',
      Gate: 'Full, 24.89 × 18.66\u00a0mm',
      Tilt: '−1.0°',
      Plan: fingerprintOf(plan),
    });
    expect(JSON.parse(texts.Standclear)).toMatchObject({
      setup: 'master',
      seconds: 2,
      focalMm: 40,
      squeeze: 2,
      stop: 2.8,
    });
    expect(fingerprintOf({ ...plan, title: 'Small roof.' })).not.toBe(texts.Plan);
    const [single] = shotsOf(plan, plan.setups[1]);
    expect(slateOf(plan, single, 'ft-in')).toMatchObject({ lens: '85\u00a0mm', height: '5′\u00a03″ high' });
  });

  test('cuts a name between what reads as one letter, keeps its direction, and leaves the letter in any room', () => {
    const shown = (setup: string, most: number): string =>
      slateName({ letter: 'A', setup }, (text) => text.length <= most).replace(/[\u2068\u2069]/g, '');
    expect(shown('Wide, both', 40)).toBe('A  Wide, both');
    expect(shown('Wide, both', 12)).toBe('A  Wide,…');
    expect(shown('👩🏽‍🚒👩🏽‍🚒', 15)).toBe('A  👩🏽‍🚒…');
    expect(shown('e\u0301e\u0301e\u0301', 10)).toBe('A  e\u0301e\u0301…');
    expect(shown('Donaudampfschifffahrt', 3)).toBe('A');
    expect(slateName({ letter: 'A', setup: 'מנורה 2' }, () => true)).toBe('A  \u2068מנורה 2\u2069');
  });

  test('names files by setup and moment, without what a file system minds', () => {
    expect(shotFileName(plan, shotsOf(plan, master)[1])).toBe('a-master-from-the-stairs-middle.png');
    expect(fileWord('  Vera: "über" den/Dächern? ')).toBe('vera-uber-den-dachern');
    expect(fileWord('../..')).toBe('plan');
  });
});

describe('a sheet', () => {
  test('holds every setup under the one before, with room for its slate', () => {
    const { width, height, rows, cell, gap } = layOut([2.39, 1.5], 1920);
    expect(width).toBe(1920);
    expect(3 * cell + 4 * gap).toBeLessThanOrEqual(1920);
    expect(rows[0].height).toBe(Math.round(cell / 2.39));
    expect(rows[1].top).toBeGreaterThan(rows[0].top + rows[0].height);
    expect(height).toBeGreaterThan(rows[1].top + rows[1].height);
  });

  test('of very many setups is made narrower, until a browser can make it', () => {
    const { width, height } = layOut(
      Array.from({ length: 60 }, () => 1.5),
      3840,
    );
    expect(width).toBeLessThan(3840);
    expect(height).toBeLessThanOrEqual(16_000);
    expect(width * height).toBeLessThanOrEqual(64e6);
  });
});
