import { expect, test } from 'vitest';
import { besidePlace, type Slots, settledSlots, withSetupAt } from '../../../src/desk/compare/slots';

const PLAN = ['a', 'b', 'c', 'd', 'e'];
const EMPTY: Slots = { setupIds: [], at: 0 };
const of = (letters: string, at: number): Slots => ({ setupIds: [...letters], at });

test('panes are filled with what follows in the plan, round its end', () => {
  expect(settledSlots(PLAN, 'd', 4, EMPTY)).toEqual(of('deab', 0));
  expect(settledSlots(PLAN, 'a', 1, EMPTY)).toEqual(of('a', 0));
  expect(settledSlots(['a', 'b'], 'b', 4, EMPTY)).toEqual(of('ba', 0));
});

test('a setup in a pane is looked through where it is; another takes the place of the one before', () => {
  expect(settledSlots(PLAN, 'c', 2, of('ac', 0))).toEqual(of('ac', 1));
  expect(settledSlots(PLAN, 'e', 2, of('ac', 1))).toEqual(of('ae', 1));
});

test('with fewer panes the one that is looked through stays', () => {
  expect(settledSlots(PLAN, 'd', 2, of('abcd', 3))).toEqual(of('ad', 1));
  expect(settledSlots(PLAN, 'c', 1, of('abcd', 2))).toEqual(of('c', 0));
});

test('a setup that has gone leaves its place; nothing changed gives the same panes', () => {
  expect(settledSlots(['a', 'c', 'd'], 'a', 2, of('ab', 0))).toEqual(of('ac', 0));
  const before = of('ab', 0);
  expect(settledSlots(PLAN, 'a', 2, before)).toBe(before);
});

test('a setup put into a pane changes places with itself elsewhere, and what is looked through keeps to its setup', () => {
  expect(withSetupAt(of('abcd', 0), 2, 'e')).toEqual(of('abed', 0));
  expect(withSetupAt(of('abcd', 0), 2, 'a')).toEqual(of('cbad', 2));
  expect(withSetupAt(of('ab', 0), 0, 'e')).toEqual(of('eb', 0));
  expect(besidePlace(of('ab', 0))).toBe(1);
  expect(besidePlace(of('ab', 1))).toBe(0);
});
