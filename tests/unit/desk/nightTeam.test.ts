import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type Hand, handsFor, NightTeam } from '../../../src/desk/nightTeam';

/** What each task takes by the clock that the team reads, milliseconds. */
let taskMs = 1000;
let now = 0;
beforeEach(() => {
  taskMs = 1000;
  now = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => now);
});
afterEach(() => vi.restoreAllMocks());

/** Hands that note what is theirs; those that are named fail at whatever they are given. */
function staffed(most: number, isCalm: () => boolean = () => true) {
  const begun: number[] = [];
  const givenUp: number[] = [];
  const never = (): Promise<never> => Promise.reject(new Error('not asked here'));
  const hands = new Map<Hand, number>();
  const begin = (place: number): Hand => {
    begun.push(place);
    const hand: Hand = {
      read: never,
      darken: never,
      continuity: never,
      blockingFaults: never,
      notices: never,
      giveUp: () => givenUp.push(place),
      startAnew: () => undefined,
    };
    hands.set(hand, place);
    return hand;
  };
  const team = new NightTeam([begin(0)], begin, most, isCalm);
  const done: (readonly [place: number, task: string])[] = [];
  const share = (tasks: readonly string[], fails: (place: number, task: string) => boolean = () => false) =>
    team.shareOut(tasks, String, async (hand, task) => {
      const place = hands.get(hand) ?? Number.NaN;
      // As a worker answers: later, and whoever was asked first answers first.
      await Promise.resolve();
      now += taskMs;
      await Promise.resolve();
      if (fails(place, task)) throw new Error(`hand ${place} failed at ${task}`);
      done.push([place, task]);
      return task !== 'enough';
    });
  return { team, share, begun, givenUp, done, tasksDone: () => done.map(([, task]) => task).toSorted() };
}

const TASKS = ['a', 'b', 'c', 'd', 'e', 'f'];

test('as many hands as cores read, but for the page’s own where there are more than two, and four at most', () => {
  expect([1, 2, 3, 4, 8, 64].map(handsFor)).toEqual([1, 2, 2, 3, 4, 4]);
});

test('a second hand is begun once what is left is worth it, and every task is done once', async () => {
  const { share, begun, done, tasksDone } = staffed(2);
  expect(begun).toEqual([0]);
  await share(TASKS);
  expect(begun).toEqual([0, 1]);
  expect(tasksDone()).toEqual(TASKS);
  expect(done[0]).toEqual([0, 'a']);
  expect(new Set(done.map(([place]) => place))).toEqual(new Set([0, 1]));
});

test('what is soon done is done by one; a hand that is there takes part from the start', async () => {
  const quick = staffed(2);
  taskMs = 10;
  await quick.share(TASKS);
  expect(quick.begun).toEqual([0]);
  taskMs = 1000;
  await quick.share(TASKS);
  expect(quick.begun).toEqual([0, 1]);
  quick.done.length = 0;
  taskMs = 10;
  await quick.share(['a', 'b']);
  expect(quick.done.map(([place]) => place).toSorted()).toEqual([0, 1]);
});

test('a hand takes what it did last time, after the first of all, and then what others did', async () => {
  const { share, done } = staffed(2);
  await share(TASKS);
  const didBefore = new Map(done.map(([place, task]) => [task, place]));
  done.length = 0;
  // Asked from the other end: by their order alone each hand would get what the other knows.
  await share(['a', 'f', 'e', 'd', 'c', 'b']);
  expect(done[0]).toEqual([0, 'a']);
  const others = done.filter(([place, task]) => didBefore.get(task) !== place);
  expect(others.length).toBeLessThanOrEqual(1);
  expect(done).toHaveLength(TASKS.length);
  done.length = 0;
  const alone = TASKS.filter((task) => didBefore.get(task) === 1);
  await share(['a', ...alone]);
  expect(done.map(([, task]) => task).toSorted()).toEqual(['a', ...alone].toSorted());
  expect(new Set(done.map(([place]) => place))).toEqual(new Set([0, 1]));
});

test('while somebody drags, further hands begin nothing, and come back afterwards', async () => {
  let isCalm = false;
  const { share, begun, tasksDone } = staffed(3, () => isCalm);
  await share(TASKS);
  expect(begun).toEqual([0]);
  isCalm = true;
  await share(TASKS);
  expect(begun).toEqual([0, 1, 2]);
  expect(tasksDone()).toEqual([...TASKS, ...TASKS].toSorted());
});

test('what a further hand fails at is done by another, even where that was through with its own', async () => {
  const { share, done, tasksDone, givenUp } = staffed(2);
  await share(TASKS, (place) => place === 1);
  expect(tasksDone()).toEqual(TASKS);
  expect(done.every(([place]) => place === 0)).toBe(true);
  expect(givenUp).toEqual([]);
});

test('where the first hand fails, all is given up and its reason is told once nobody is at work', async () => {
  const { share, done, givenUp } = staffed(2);
  await expect(share(TASKS, (place, task) => place === 0 && task !== 'a')).rejects.toThrow(
    'hand 0 failed at',
  );
  expect(givenUp).toEqual([0, 1]);
  expect(done.length).toBeLessThan(TASKS.length);
});

test('where nothing further shall be begun, nothing is', async () => {
  const { share, done } = staffed(2);
  await share(['a', 'enough', 'c', 'd', 'e', 'f', 'g']);
  expect(done.length).toBeLessThan(5);
});
