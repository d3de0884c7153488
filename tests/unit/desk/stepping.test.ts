import { expect, test } from 'vitest';
import { stepping } from '../../../src/desk/workers/stepping';

/** So long that a worker looks up after each step. */
const STEP_MS = 25;

/** Work of so many long steps, which notes each as it is taken. */
function* work(name: string, steps: number, taken: string[]): Generator<number, string, void> {
  for (let step = 0; step < steps; step += 1) {
    const from = performance.now();
    while (performance.now() - from < STEP_MS);
    taken.push(name);
    yield step / steps;
  }
  return `${name} done`;
}

test('of one kind the newest is taken to its end, and what is older or given up is answered with null', async () => {
  const kind = stepping();
  const taken: string[] = [];
  const older = kind.taken(work('older', 4, taken));
  const newer = kind.taken(work('newer', 2, taken));
  expect(await older).toBeNull();
  expect(await newer).toBe('newer done');
  expect(taken.filter((name) => name === 'older').length).toBeLessThan(3);
  const last = kind.taken(work('last', 4, taken));
  kind.giveUp();
  expect(await last).toBeNull();
});

test('while what is urgent is worked at, the rest waits, and goes on afterwards', async () => {
  const urgent = stepping();
  const rest = stepping(urgent);
  const taken: string[] = [];
  const long = rest.taken(work('rest', 4, taken));
  const short = urgent.taken(work('urgent', 3, taken));
  expect(urgent.isAtWork()).toBe(true);
  expect(await short).toBe('urgent done');
  // The next of a row may be on its way.
  expect(urgent.isAtWork()).toBe(true);
  const next = urgent.taken(work('urgent', 1, taken));
  expect(await long).toBe('rest done');
  expect(await next).toBe('urgent done');
  expect(urgent.isAtWork()).toBe(false);
  expect(taken).toEqual(['rest', ...Array(4).fill('urgent'), 'rest', 'rest', 'rest']);
});

test('what waits for the urgent is given up while it waits', async () => {
  const urgent = stepping();
  const rest = stepping(urgent);
  const taken: string[] = [];
  const ended: string[] = [];
  const long = rest.taken(work('rest', 4, taken)).finally(() => ended.push('rest'));
  const short = urgent.taken(work('urgent', 8, taken)).finally(() => ended.push('urgent'));
  rest.giveUp();
  expect(await long).toBeNull();
  await short;
  expect(ended).toEqual(['rest', 'urgent']);
});

test('what fails counts as no work any more', async () => {
  const urgent = stepping();
  const failing = (function* (): Generator<number, never, void> {
    yield 0;
    throw new Error('it fails');
  })();
  await expect(urgent.taken(failing)).rejects.toThrow('it fails');
  await expect.poll(urgent.isAtWork).toBe(false);
});
