import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { awakeStore, keepAwake } from '../../../../src/desk/crew/awake';

/** A screen that is kept awake by as many as hold it, in a browser's own time. */
class Screen {
  holders = 0;
  refuses = false;
  request = async (): Promise<{ release: () => Promise<void> }> => {
    await Promise.resolve();
    if (this.refuses) throw new Error('the battery is low');
    this.holders += 1;
    return {
      release: async () => {
        this.holders -= 1;
      },
    };
  };
}

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
let screen = new Screen();
let page = Object.assign(new EventTarget(), { visibilityState: 'visible' });

beforeEach(() => {
  screen = new Screen();
  page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  vi.stubGlobal('navigator', { wakeLock: screen });
  vi.stubGlobal('document', page);
});
afterEach(async () => {
  await keepAwake(false);
  vi.unstubAllGlobals();
});

test('the screen is kept awake while it is asked for, and asked for again when the page comes back', async () => {
  await keepAwake(true);
  expect(screen.holders).toBe(1);
  expect(awakeStore.getState().on).toBe(true);
  // Out of sight the browser lets go by itself.
  screen.holders = 0;
  page.visibilityState = 'hidden';
  page.dispatchEvent(new Event('visibilitychange'));
  await settled();
  expect(screen.holders).toBe(0);
  page.visibilityState = 'visible';
  page.dispatchEvent(new Event('visibilitychange'));
  await settled();
  expect(screen.holders).toBe(1);
  await keepAwake(false);
  expect(screen.holders).toBe(0);
  page.dispatchEvent(new Event('visibilitychange'));
  await settled();
  expect(screen.holders).toBe(0);
});

test('pressed twice before the browser has answered, it is let go of', async () => {
  const asked = keepAwake(true);
  await keepAwake(false);
  await asked;
  await settled();
  expect(screen.holders).toBe(0);
});

test('where the phone refuses, the button says that it is off', async () => {
  screen.refuses = true;
  await keepAwake(true);
  expect(awakeStore.getState().on).toBe(false);
});
