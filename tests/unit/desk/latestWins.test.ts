import { expect, test } from 'vitest';
import { latestWins } from '../../../src/desk/latestWins';

/** A job that ends when it is told to. */
function held() {
  const ends: (() => void)[] = [];
  const begun: string[] = [];
  const latest: (() => boolean)[] = [];
  const queue = latestWins<string>((request, isLatest) => {
    begun.push(request);
    latest.push(isLatest);
    return new Promise((resolve) => {
      ends.push(resolve);
    });
  });
  const end = async (): Promise<void> => {
    ends.shift()?.();
    await Promise.resolve();
    await Promise.resolve();
  };
  return { queue, begun, latest, end };
}

test('of all that was asked while one job ran, only the newest runs next', async () => {
  const { queue, begun, end } = held();
  for (const request of ['a', 'b', 'c', 'd']) queue.ask(request);
  expect(begun).toEqual(['a']);
  await end();
  expect(begun).toEqual(['a', 'd']);
  await end();
  queue.ask('e');
  expect(begun).toEqual(['a', 'd', 'e']);
});

test('a running job sees that something newer waits, or that it was dropped', async () => {
  const { queue, begun, latest, end } = held();
  queue.ask('a');
  expect(latest[0]?.()).toBe(true);
  queue.ask('b');
  expect(latest[0]?.()).toBe(false);
  queue.drop();
  expect(latest[0]?.()).toBe(false);
  await end();
  expect(begun, 'what was dropped is not run').toEqual(['a']);
  queue.ask('c');
  expect(latest[1]?.()).toBe(true);
});
