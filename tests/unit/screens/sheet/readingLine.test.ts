import { expect, test } from 'vitest';
import { savedSentence } from '../../../../src/desk/keepingStore';
import { readingLine } from '../../../../src/screens/sheet/readingLine';

const QUIET = { trouble: null, instantTrouble: null, silent: false, reading: null, stopped: false };
const READING = { done: 1, of: 4 };

test('a failed instant hides nothing of the night: how far it is goes before, why there is none first of all', () => {
  expect(readingLine(QUIET)).toBeNull();
  expect(readingLine({ ...QUIET, instantTrouble: 'Why.' })).toEqual({ kind: 'trouble', sentence: 'Why.' });
  const reading = { ...QUIET, instantTrouble: 'Why.', reading: READING };
  expect(readingLine(reading)).toEqual({ kind: 'reading', ...READING });
  expect(readingLine({ ...reading, trouble: 'Night.' })).toEqual({ kind: 'trouble', sentence: 'Night.' });
  expect(readingLine({ ...QUIET, silent: true, reading: READING })).toEqual({ kind: 'silent' });
  expect(readingLine({ ...QUIET, stopped: true })).toEqual({ kind: 'stopped' });
});

test('a plan is said to be saved only where all of it is: on the device, or in a file', () => {
  const device = 'The plan is saved on this device.';
  const not = 'The plan is not yet saved: save it as a file.';
  expect(savedSentence({ state: 'kept', saved: 'shelf' })).toBe(device);
  expect(savedSentence({ state: 'kept', saved: 'nobody' })).toBe(not);
  for (const state of ['full', 'refused', 'held', 'newer', 'starting'] as const) {
    expect(savedSentence({ state, saved: 'shelf' })).toBe(not);
    expect(savedSentence({ state, saved: 'nobody' })).toBe(not);
    expect(savedSentence({ state, saved: 'file' })).toBe('The plan is saved as a file.');
  }
});
