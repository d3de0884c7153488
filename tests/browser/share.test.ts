import { readFileSync } from 'node:fs';
import readQr from 'jsqr';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { linkOfPlan } from '../../src/exchange/link/link';
import { EVEN_NIGHT, nightRoof } from '../plans/nightRoof';
import { seriousViolations } from './axe';
import { eventually } from './building';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { withPlainFiles } from './plainFiles';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };
const BEFORE = [withoutPicture, withoutDemo, withPlainFiles, withFewWorkers];
const PLAN = { ...nightRoof(EVEN_NIGHT), title: 'Night to share' };

/** Leaves out the workers that read what lenses see, as in `withoutReports`, and keeps those of links and the night. */
function withFewWorkers(): void {
  const { Worker } = window;
  class NoWorker extends EventTarget {
    postMessage(): void {
      setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'left out of this test' })));
    }
    terminate(): void {}
  }
  Object.assign(window, {
    Worker: function start(address: string | URL, how?: WorkerOptions) {
      return /(share|link|night)\.worker/.test(String(address)) ? new Worker(address, how) : new NoWorker();
    },
  });
}

/** A browser that lets no page copy, on a device with a sheet of its own that sends links. */
function withoutClipboard(): void {
  Object.defineProperty(navigator, 'clipboard', { value: undefined });
  Object.defineProperty(navigator, 'share', {
    value: async (data: ShareData) => Object.assign(window, { sent: data }),
  });
}

const field = (page: Page) => page.getByLabel('The link', { exact: true });
const standing = (page: Page) => page.locator('.link-standing');
const pageOf = (page: Page): string => page.url().replace(/#.*/, '');

test(
  'the link is made by a key, copied, shown as a code that reads back, and old after an edit',
  PATIENT,
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: BEFORE });
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await dropPlan(page, PLAN);
    await page.locator('body').press('6');
    expect(await page.getByRole('tab', { name: /Crew/ }).getAttribute('aria-selected')).toBe('true');

    await page.getByRole('button', { name: 'Make the link' }).press('Enter');
    await field(page).waitFor();
    const address = `${pageOf(page)}#${linkOfPlan(PLAN).fragment}`;
    expect(await field(page).inputValue()).toBe(address);
    await eventually(() => page.evaluate(() => navigator.clipboard.readText())).toBe(address);
    await page.getByText('The link is copied.').waitFor();
    expect(await standing(page).textContent()).toBe('The link is copied. It holds the plan as it is now.');
    await page.getByText(/opens here alone/).waitFor();
    expect(await page.getByRole('link', { name: 'Open it as the crew does' }).getAttribute('href')).toBe(
      address,
    );
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'share-desk');

    // What a phone reads off the screen is the link.
    await page.getByRole('button', { name: 'Show it large' }).press('Enter');
    const dialog = page.getByRole('dialog', { name: 'Night to share, for the crew' });
    const shown = PNG.sync.read(await dialog.getByRole('img').screenshot());
    expect(readQr(new Uint8ClampedArray(shown.data), shown.width, shown.height)?.data).toBe(address);
    const [saved] = await Promise.all([
      page.waitForEvent('download'),
      dialog.getByRole('button', { name: 'Save the code' }).press('Enter'),
    ]);
    expect(saved.suggestedFilename()).toBe('night-to-share-code.png');
    const file = PNG.sync.read(readFileSync(await saved.path()));
    expect(readQr(new Uint8ClampedArray(file.data), file.width, file.height)?.data).toBe(address);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });

    // An edit makes it old, taking the edit back makes it good again, and the key makes another from any sheet.
    await page.locator('body').press('5');
    await page
      .getByRole('region', { name: 'Sheets' })
      .getByRole('button', { name: /^B/ })
      .press('Alt+ArrowDown');
    await page.locator('body').press('6');
    await eventually(() => standing(page).textContent()).toMatch(/^The plan has changed since/);
    await page.keyboard.press('Control+z');
    await eventually(() => standing(page).textContent()).toBe(
      'The link is copied. It holds the plan as it is now.',
    );
    await page.keyboard.press('Control+Shift+z');
    await page.locator('body').press('1');
    await page.keyboard.press('Shift+L');
    await eventually(() => standing(page).textContent()).toBe(
      'The link is copied. It holds the plan as it is now.',
    );
    expect(await field(page).inputValue()).not.toBe(address);

    // Another plan has no link yet; one with much in it is too long for one code, and says what it is full of.
    const letters = Array.from({ length: 4000 }, (_, k) =>
      String.fromCodePoint(0x4e00 + ((k * 7919) % 20000)),
    );
    await dropPlan(page, { ...PLAN, title: 'Wordy night', notes: letters.join('') });
    await page.getByRole('button', { name: 'Make the link' }).press('Enter');
    await page.getByText(/^Too long for one code.*The most room goes to notes and/).waitFor();
    await page.getByText(/some chats cut a link over 2,000/).waitFor();
  },
);

test('where no page may copy, the link is marked in its field and sent by the device', PATIENT, async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    theme: 'day',
    before: [...BEFORE, withoutClipboard],
  });
  await dropPlan(page, PLAN);
  await page.getByRole('tab', { name: 'Crew' }).tap();
  const make = page.getByRole('button', { name: 'Make the link' });
  expect((await make.boundingBox())?.height).toBeGreaterThanOrEqual(48);
  await make.tap();
  await page.getByText(/This browser lets no page copy: take the link from its field\./).waitFor();
  await field(page).focus();
  const address = `${pageOf(page)}#${linkOfPlan(PLAN).fragment}`;
  expect(await field(page).evaluate(() => String(document.getSelection()))).toBe(address);
  await page.getByRole('button', { name: 'Send it' }).tap();
  await eventually(() => page.evaluate(() => (window as { sent?: ShareData }).sent)).toEqual({
    title: 'Night to share',
    url: address,
  });
  expect(await seriousViolations(page)).toEqual([]);
  await screenshot(page, 'share-phone');
});
