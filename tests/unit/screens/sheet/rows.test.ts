import { expect, test } from 'vitest';
import { itemsOf, kindOf } from '../../../../src/core/plan/items';
import { foundItems, idsBetween, inListOrder, matches } from '../../../../src/screens/sheet/list/rows';
import { DEMO, readPlan } from '../../../plans/readPlan';

const items = inListOrder(itemsOf(readPlan(DEMO)));
const labelsFound = (search: string): readonly string[] =>
  foundItems(items, search).map(({ record }) => record.label);

test('gear comes first, set pieces last, and nothing is lost', () => {
  expect(items[0]?.section).toBe('gear');
  expect(items.at(-1)?.section).toBe('piece');
  expect(items.length).toBe(itemsOf(readPlan(DEMO)).length);
});

test('a search finds by name and by kind, every word of it, in any order', () => {
  expect(labelsFound('stand 2')).toContain('Lamp stand 2');
  expect(labelsFound('2 STAND')).toContain('Lamp stand 2');
  expect(labelsFound('stand 2')).not.toContain('Lamp stand 1');
  expect(foundItems(items, 'fence').every((item) => kindOf(item) === 'fence')).toBe(true);
  expect(foundItems(items, '  ')).toBe(items);
});

test('hidden and locked things are found by these words', () => {
  const [first, ...rest] = items;
  if (!first) throw new Error('the demo is empty');
  const hidden = { ...first, record: { ...first.record, hidden: true } } as typeof first;
  expect(foundItems([hidden, ...rest], 'hidden').map(({ record }) => record.id)).toEqual([first.record.id]);
});

test('a number is a number of its own', () => {
  expect(matches(['2'], ['Panel, 200 W'])).toBe(false);
  expect(matches(['200'], ['Panel, 200 W'])).toBe(true);
  expect(matches(['2'], ['Lamp stand 2'])).toBe(true);
});

test('Shift chooses from row to row, and the pressed one is chosen last', () => {
  const ids = ['a', 'b', 'c', 'd'];
  expect(idsBetween(ids, 'b', 'd')).toEqual(['b', 'c', 'd']);
  expect(idsBetween(ids, 'd', 'b')).toEqual(['d', 'c', 'b']);
  expect(idsBetween(ids, null, 'c')).toEqual(['c']);
  expect(idsBetween(ids, 'gone', 'c')).toEqual(['c']);
});
