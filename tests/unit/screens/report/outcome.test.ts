import { expect, test } from 'vitest';
import type { ItemReport, NightReport } from '../../../../src/core/report/types';
import { outcomeOf } from '../../../../src/screens/report/outcome';
import { itemReport, setupReport } from './itemReport';

const stand = (verdict: ItemReport['verdict']) => itemReport({ id: 'stand', label: 'Lamp stand 2', verdict });
const head = (verdict: ItemReport['verdict']) => itemReport({ id: 'head', label: 'Head 3', verdict });

function night(...setups: readonly (readonly ItemReport[])[]): NightReport {
  return {
    title: 'Night',
    setups: setups.map((items, place) => ({ ...setupReport(...items), id: 'ab'.charAt(place) })),
    notices: [],
  };
}

const outcome = (before: NightReport, after: NightReport) =>
  outcomeOf(before, after, (id) => id.toUpperCase());

test('what came into a frame is told before what left one', () => {
  const told = outcome(
    night([stand('showing')], [head('clear')]),
    night([stand('clear')], [head('mirrored')]),
  );
  expect(told).toEqual({
    sentence: 'That puts Head 3 in the way of B.',
    isWorse: true,
    setupId: 'b',
    itemId: 'head',
  });
});

test('an item that left every frame is out of the way in all setups', () => {
  const told = outcome(
    night([stand('showing')], [stand('showing')]),
    night([stand('clear')], [stand('covered')]),
  );
  expect(told?.sentence).toBe('Lamp stand 2 is out of the way in all setups.');
});

test('an item that left one frame of two is told for that one', () => {
  const told = outcome(
    night([stand('showing')], [stand('showing')]),
    night([stand('clear')], [stand('showing')]),
  );
  expect(told?.sentence).toBe('Lamp stand 2 is out of the way of A.');
});

test('several items are told together', () => {
  const told = outcome(night([stand('showing'), head('mirrored')]), night([stand('clear'), head('clear')]));
  expect(told?.sentence).toBe('Lamp stand 2 and Head 3 are out of the way in all setups.');
});

test('what is only nearer or farther is no news', () => {
  expect(outcome(night([stand('clear')]), night([stand('close')]))).toBeNull();
});

test('what is let show, or is not any more, has gone nowhere', () => {
  const letShow = { ...stand('showing'), accepted: { reason: 'Reads as a street lamp' } };
  expect(outcome(night([stand('showing')]), night([letShow]))).toBeNull();
  expect(outcome(night([letShow]), night([stand('showing')]))).toBeNull();
  expect(outcome(night([stand('clear')]), night([letShow]))).toBeNull();
});

test('a setup that is told otherwise is left out, and what stays in its way is not out of all', () => {
  const [before, after] = [
    night([stand('showing')], [stand('showing')]),
    night([stand('clear')], [stand('clear')]),
  ];
  const letter = (id: string): string => id.toUpperCase();
  expect(outcomeOf(before, after, letter, 'a')?.setupId).toBe('b');
  const still = night([stand('showing')], [stand('clear')]);
  expect(outcomeOf(before, still, letter, 'a')?.sentence).toBe('Lamp stand 2 is out of the way of B.');
  expect(outcomeOf(before, still, letter, 'b')).toBeNull();
});
