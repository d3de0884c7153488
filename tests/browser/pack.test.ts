import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { EVEN_NIGHT, nightRoof } from '../plans/nightRoof';
import { readPdf } from '../unit/exchange/pdf/readPdf';
import { seriousViolations } from './axe';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { withPlainFiles } from './plainFiles';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };
const BEFORE = [withoutPicture, withoutDemo, withPlainFiles, withOnlyThePack];

/** Leaves out the workers that read what lenses see, as in `withoutReports`, and keeps those of the night and the pack. */
function withOnlyThePack(): void {
  const { Worker } = window;
  class NoWorker extends EventTarget {
    postMessage(): void {
      setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'left out of this test' })));
    }
    terminate(): void {}
  }
  Object.assign(window, {
    Worker: function start(address: string | URL, how?: WorkerOptions) {
      return /(night|pack)\.worker/.test(String(address)) ? new Worker(address, how) : new NoWorker();
    },
  });
}

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();

test(
  'the pack is saved on the paper that is chosen, by a finger too; stopped, nothing is',
  PATIENT,
  async () => {
    const page = await openPage({ width: 390, height: 844, touch: true, before: BEFORE });
    await dropPlan(page, { ...nightRoof(EVEN_NIGHT), title: 'Night of the pack' });
    await page.locator('body').press('5');
    const save = page.getByRole('button', { name: 'Save the pack', exact: true });
    await save.waitFor();
    const height = await save.evaluate((element) => element.getBoundingClientRect().height);
    expect(height).toBeGreaterThanOrEqual(48);
    // In line with the ways to look above it, also when the night's figure has come between.
    await page.locator('.wrap-figure').filter({ hasText: /\d/ }).waitFor();
    const [bar, paper] = await Promise.all([
      page.locator('.night-bar .seg').boundingBox(),
      page.getByLabel('Paper of the pack').boundingBox(),
    ]);
    expect(paper?.x).toBeCloseTo(bar?.x ?? Number.NaN, 0);
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'pack-phone');

    const downloads: string[] = [];
    page.on('download', (download) => downloads.push(download.suggestedFilename()));
    await press(page, 'Save the pack');
    await page.getByRole('progressbar', { name: 'Making the pack' }).waitFor();
    await press(page, 'Stop');
    await save.waitFor();
    expect(downloads).toEqual([]);

    await page.getByLabel('Paper of the pack').selectOption({ label: 'Letter' });
    // What is said of it goes again after a while.
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByText('Saved as night-of-the-pack-pack.pdf.').waitFor(),
      press(page, 'Save the pack'),
    ]);
    expect(download.suggestedFilename()).toBe('night-of-the-pack-pack.pdf');
    const bytes = readFileSync(await download.path());
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    const { title, pages } = await readPdf(bytes);
    expect(title).toBe('Night of the pack');
    expect(pages[0].text).toContain('Night of the pack');
    expect([pages[0].width, pages[0].height]).toEqual([612, 792]);
    expect(downloads).toHaveLength(1);
  },
);
