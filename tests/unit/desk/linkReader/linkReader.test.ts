import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LONGEST_SECONDS, readLink } from '../../../../src/desk/linkReader/linkReader';
import { planOfLink } from '../../../../src/exchange/link/link';
import { withFakeWorkers } from './fakeWorkers';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('a link gives what its reader says of it, and the reader ends', async () => {
  const workers = withFakeWorkers();
  const { ending } = readLink('1abc');
  const [worker] = workers;
  expect(worker.sent, 'nothing is asked before the script is there').toEqual([]);
  worker.say({ kind: 'here' });
  expect(worker.sent).toEqual(['1abc']);
  const reading = planOfLink('2abc');
  worker.say({ kind: 'read', reading });
  expect(await ending).toEqual(reading);
  expect(worker.isEnded).toBe(true);
  expect(vi.getTimerCount(), 'no clock runs on').toBe(0);
});

test('a link that takes too long is given up; the time of a script over a weak network is not the link’s', async () => {
  const workers = withFakeWorkers();
  const { ending } = readLink('1abc');
  const [worker] = workers;
  vi.advanceTimersByTime(LONGEST_SECONDS * 3000);
  expect(worker.isEnded).toBe(false);
  worker.say({ kind: 'here' });
  vi.advanceTimersByTime(LONGEST_SECONDS * 1000 - 1);
  expect(worker.isEnded).toBe(false);
  vi.advanceTimersByTime(1);
  expect(worker.isEnded).toBe(true);
  expect(await ending).toEqual({
    ok: false,
    kind: 'tooSlow',
    sentence: 'This link could not be read within 20\u00a0s. Ask for the plan as a file.',
  });
});

test('a reader that fails says why; one that is stopped ends at once, and what it says then counts no more', async () => {
  const workers = withFakeWorkers();
  const failing = readLink('1abc');
  workers[0].fail('');
  expect(await failing.ending).toMatchObject({
    kind: 'noReader',
    sentence: expect.stringContaining('it did not start'),
  });
  expect(workers[0].isEnded).toBe(true);
  const stopped = readLink('1abc');
  workers[1].say({ kind: 'here' });
  stopped.stop();
  workers[1].say({ kind: 'read', reading: planOfLink('2abc') });
  expect(workers[1].isEnded).toBe(true);
  expect(await stopped.ending).toMatchObject({ ok: false, kind: 'stopped' });
  expect(vi.getTimerCount()).toBe(0);
});
