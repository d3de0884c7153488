import { afterEach, expect, test, vi } from 'vitest';
import { copyText } from '../../../src/desk/share/copying';
import { pageAddress } from '../../../src/desk/share/making';

afterEach(() => vi.unstubAllGlobals());

test('the address of a page from a file is that of the file, without what comes after it', () => {
  vi.stubGlobal('location', new URL('file:///home/night/standclear.html?a=1#x\ny'));
  expect(pageAddress()).toBe('file:///home/night/standclear.html');
});

test('a text that comes to nothing is copied by nobody, and nobody has to hear of it twice', async () => {
  const unheard: unknown[] = [];
  const hear = (reason: unknown): void => void unheard.push(reason);
  process.on('unhandledRejection', hear);
  vi.stubGlobal('navigator', {});
  expect(await copyText(Promise.reject(new Error('no link')))).toBe(false);
  // Node tells of what nobody heard once all that waits is done.
  await new Promise((done) => setTimeout(done, 0));
  process.off('unhandledRejection', hear);
  expect(unheard).toEqual([]);
});
