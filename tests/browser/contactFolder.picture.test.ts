import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { textsOf } from '../plans/pngTexts';
import { smallRoof } from '../unit/smallRoof';
import { folderIn, withFolder } from './chosenFolder';
import { openPage } from './harness';
import { openPlan } from './plainFiles';
import { withoutDemo } from './withoutDemo';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 240_000 };

const said = (page: Page, words: RegExp) => page.locator('.toasts').getByText(words);
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

/** Told once the bar of the pictures has been there, however short: the page is busy with drawing meanwhile. */
const barAppears = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const watch = new MutationObserver(() => {
          if (!document.querySelector('progress[aria-label="Drawing the pictures"]')) return;
          watch.disconnect();
          resolve();
        });
        watch.observe(document.body, { childList: true, subtree: true });
      }),
  );

/** Presses Stop as soon as the second picture is said to be drawn. */
const stopAtSecond = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const watch = new MutationObserver(() => {
          const row = document.querySelector('.save-pictures .drawing');
          const stop = row?.querySelector('button');
          if (!stop || !row?.textContent?.includes('picture 2 of 3')) return;
          watch.disconnect();
          stop.click();
          resolve();
        });
        watch.observe(document.body, { childList: true, subtree: true, characterData: true });
      }),
  );

test(
  'each picture goes into a chosen folder, a stop leaves what is written, and a lost permission is said',
  PATIENT,
  async () => {
    const page = await openPage({
      width: 1000,
      height: 640,
      before: [withFolder, withoutReports, withoutDemo],
    });
    page.context().setDefaultTimeout(120_000);
    const roof = smallRoof();
    const [, , still] = roof.setups;
    // Low frames have few pixels: without a graphics card each of them takes its time.
    const setups = ['one', 'two', 'three'].map((id) => ({ ...still, id, label: `Still ${id}`, delivery: 5 }));
    await openPlan(page, { ...roof, title: 'Three stills', setups });
    await press(page, 'contact sheet');

    // The permission goes after the first: the sentence says what is there and why the rest is not.
    await page.evaluate(() => {
      if (window.folder) window.folder.lostFrom = 1;
    });
    const bar = barAppears(page);
    await press(page, 'Save each picture');
    await bar;
    await said(
      page,
      /^1 of 3 pictures is in Stills\. The next could not be written: the browser no longer lets the page write there\.$/,
    ).waitFor();
    const lost = await folderIn(page);
    expect(Object.keys(lost.files)).toEqual(['a-still-one-still.png']);
    // Nothing half written stays.
    expect(lost.removed).toEqual(['b-still-two-still.png']);
    await page.getByRole('button', { name: 'Save each picture' }).isEnabled();

    // Stopped as soon as the second has begun: the first stays, and it is said.
    await page.evaluate(() => {
      if (!window.folder) return;
      window.folder.lostFrom = -1;
      window.folder.removed.length = 0;
    });
    const stop = stopAtSecond(page);
    await press(page, 'Save each picture');
    await stop;
    await said(page, /^Stopped: [12] of 3 pictures (is|are) in Stills\.$/).waitFor();
    const stopped = Object.keys((await folderIn(page)).files);
    expect(stopped).toContain('a-still-one-still.png');
    expect(stopped.length).toBeLessThan(3);

    // Left alone all of them are written, whole, each with its slate.
    await press(page, 'Save each picture');
    await said(page, /^Saved as 3 pictures in Stills\.$/).waitFor();
    const { files } = await folderIn(page);
    expect(Object.keys(files).toSorted()).toEqual([
      'a-still-one-still.png',
      'b-still-two-still.png',
      'c-still-three-still.png',
    ]);
    const bytes = Buffer.from(files['c-still-three-still.png'], 'base64');
    expect(PNG.sync.read(bytes).width).toBe(1920);
    expect(textsOf(bytes)).toMatchObject({ Title: 'Three stills', Setup: 'C Still three' });
  },
);
