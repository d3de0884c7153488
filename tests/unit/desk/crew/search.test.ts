import { afterEach, expect, test, vi } from 'vitest';
import { cautionsOf } from '../../../../src/core/cautions/cautions';
import type { PackingLine } from '../../../../src/core/night/packing/types';
import { placeFrom } from '../../../../src/desk/crew/place';
import { entriesOf, found } from '../../../../src/desk/crew/search';
import { themeNow, themeOfHour } from '../../../../src/desk/crew/themeOfHour';
import { DEMO, readPlan } from '../../../plans/readPlan';

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const plan = readPlan(DEMO);
const entries = entriesOf(plan, [], []);

test('a search needs all words in any order, passes over marks on letters, and has names first', () => {
  expect(found(entries, '  ')).toEqual([]);
  const labels = (text: string) => found(entries, text).map(({ label }) => label);
  expect(labels('2 STAND lamp')).toEqual(['Lamp stand 2']);
  expect(labels('lámp')[0]).toBe('Lamp stand 1');
  expect(labels('feet')[0]).toBe('C, Vera, feet to face');
  expect(labels('no such thing')).toEqual([]);
});

test('each entry leads to where it is', () => {
  const [setup] = found(entries, 'last wide');
  expect(setup.to).toEqual({ tab: 'setups', setupId: 'last-wide' });
  const [stand] = found(entries, 'lamp stand 3');
  expect(stand.to).toMatchObject({
    tab: 'overhead',
    itemId: plan.gear.find((g) => g.label === 'Lamp stand 3')?.id,
  });
});

test('what is carried and what to be careful with lead to lists of their own', () => {
  const caution = cautionsOf(plan)[0];
  const line: PackingLine = {
    department: 'grip',
    label: 'Wheelbarrow',
    count: 1,
    unit: 'pieces',
    spared: null,
    spare: 0,
    detail: '',
    itemIds: [],
  };
  const [byWord, carried] = ['caution', 'wheelbarrow'].map(
    (text) => found(entriesOf(plan, [line], [caution]), text)[0],
  );
  expect(byWord).toMatchObject({ label: caution.sentence, to: { tab: 'lists', list: 'cautions' } });
  expect(carried.to).toEqual({ tab: 'lists', list: 'packing' });
  expect(placeFrom({ tab: 'lists', list: 'cautions' })?.list).toBe('cautions');
});

test('a place out of a strange history is none, or holds nothing but text', () => {
  expect(placeFrom(null)).toBeNull();
  expect(placeFrom({ tab: 'elsewhere' })).toBeNull();
  expect(placeFrom({ tab: 'power', setupId: 7, itemId: 'a', frameOpen: 1 })).toEqual({
    tab: 'power',
    list: 'packing',
    setupId: null,
    itemId: 'a',
    frameOpen: false,
    searchOpen: false,
    moreOpen: false,
  });
});

test('the theme is day from sunrise to sunset at the place', () => {
  // Sunset at the demo's place on 27 November: 17:08 universal time, as its night has it.
  const at = (time: string) => themeOfHour(plan.place, Date.parse(`2026-11-27T${time}:00Z`));
  expect([at('12:00'), at('17:06'), at('17:10'), at('23:00')]).toEqual(['day', 'day', 'night', 'night']);
});

test('where no plan says a place yet, the theme is that of the device’s own hours', () => {
  vi.stubGlobal('localStorage', { getItem: () => null });
  vi.useFakeTimers({ toFake: ['Date'] });
  const atHour = (hour: number) => {
    vi.setSystemTime(new Date(2026, 10, 27, hour));
    return themeNow(null);
  };
  expect([2, 12, 16, 22].map(atHour)).toEqual(['night', 'day', 'day', 'night']);
});
