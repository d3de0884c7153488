import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { seriousViolations } from './axe';
import { openPage, screenshot, waitUntilReady } from './harness';
import { shelfContents, titlesKept } from './shelfContents';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

const TITLE = 'Loft Night';
const COPY = `${TITLE}, copy`;
/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 30_000 };

const shown = (page: Page): Promise<string | null> => page.locator('.top h2').textContent();
const entry = (page: Page, title: string) =>
  page.getByRole('dialog').getByRole('listitem', { name: title, exact: true });
const setups = (page: Page): Promise<number> => page.locator('.strip .card').count();

/** The roof in a plan's picture: pixels beside it, and which share of the picture what stands on the deck takes. */
const drawnIn = (image: Locator): Promise<{ left: number; right: number; solid: number }> =>
  image.evaluate(async (element) => {
    if (!(element instanceof HTMLImageElement)) throw new Error('no picture');
    await element.decode();
    const { naturalWidth: width, naturalHeight: height } = element;
    const canvas = Object.assign(document.createElement('canvas'), { width, height });
    const context = canvas.getContext('2d');
    if (!context) throw new Error('no canvas');
    context.drawImage(element, 0, 0);
    const { data } = context.getImageData(0, 0, width, height);
    const red = Array.from({ length: width * height }, (_, pixel) => data[pixel * 4] ?? 0);
    const row = red.slice((height >> 1) * width, ((height >> 1) + 1) * width);
    // The deck is a little lighter than the ground of the picture, and what stands on it much.
    const isDrawn = (value: number): boolean => value > (row[0] ?? 0) + 20;
    const left = row.findIndex(isDrawn);
    const right = width - 1 - row.findLastIndex(isDrawn);
    return { left, right, solid: red.filter((value) => value > 110).length / red.length };
  });

/** Opens the list by the keyboard alone. */
async function openList(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Plans', exact: true }).press('Enter');
  await page.getByRole('dialog', { name: 'Plans on this device' }).waitFor();
}

async function more(page: Page, title: string, word: string): Promise<void> {
  await entry(page, title).locator('summary').press('Enter');
  await entry(page, title).getByRole('button', { name: word }).press('Enter');
}

test('plans are duplicated, renamed, opened, taken out and put back by keys, and gone once the list is closed', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutReports] });
  await openList(page);
  await entry(page, TITLE).getByRole('button', { name: 'Duplicate' }).press('Enter');
  await entry(page, COPY).waitFor();
  await more(page, COPY, 'Rename');
  const title = page.getByRole('textbox', { name: 'title' });
  await title.fill('x'.repeat(81));
  await title.press('Enter');
  await page.locator('dialog .err', { hasText: 'at most 80 characters' }).waitFor();
  await title.fill('Second night');
  await title.press('Enter');
  await entry(page, 'Second night').getByRole('button', { name: 'Second night' }).press('Enter');
  await expect.poll(() => shown(page), PATIENT).toBe('Second night');
  expect(await page.locator('dialog.plans').isVisible()).toBe(false);
  // The way back is in the toast, and is no step of either plan's history.
  await page
    .locator('.toast', { hasText: 'Second night is open.' })
    .getByRole('button', { name: 'Undo' })
    .click();
  await expect.poll(() => shown(page), PATIENT).toBe(TITLE);
  expect(await page.getByRole('button', { name: 'Undo' }).first().isDisabled()).toBe(true);

  await openList(page);
  await more(page, 'Second night', 'Take it out');
  const back = page.getByRole('button', { name: 'Put it back' });
  await back.waitFor();
  expect(await back.evaluate((button) => button === document.activeElement)).toBe(true);
  await back.press('Enter');
  await entry(page, 'Second night').waitFor();
  await more(page, 'Second night', 'Take it out');
  await back.waitFor();
  expect(await titlesKept(page)).toEqual(['Second night']);
  await page.keyboard.press('Escape');
  await expect.poll(() => titlesKept(page), PATIENT).toEqual([]);
});

test('a setup taken out leaves a version behind, which can be opened beside the plan or gone back to', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutReports] });
  const before = await setups(page);
  await page.getByRole('tab', { name: 'Set' }).click();
  await page.locator('.sheet').getByRole('button', { name: 'Take it out', exact: true }).click();
  await expect.poll(() => setups(page), PATIENT).toBe(before - 1);
  await expect.poll(async () => (await shelfContents(page)).versions.length, PATIENT).toBe(1);
  // Over a reload, where the history is gone.
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  expect(await setups(page)).toBe(before - 1);
  await openList(page);
  await more(page, TITLE, 'Earlier versions');
  await page.locator('.versions li', { hasText: '1 setup taken out' }).waitFor();
  expect(await seriousViolations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Open as a copy' }).press('Enter');
  await expect.poll(() => shown(page), PATIENT).toBe(`${TITLE}, earlier version`);
  expect(await setups(page)).toBe(before);
  await page.locator('.toast', { hasText: 'is open.' }).getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => shown(page), PATIENT).toBe(TITLE);

  await openList(page);
  await more(page, TITLE, 'Earlier versions');
  await page.getByRole('button', { name: 'Go back to it' }).press('Enter');
  await page.locator('.toast', { hasText: 'is as it was.' }).waitFor();
  expect(await setups(page)).toBe(before);
  await page.locator('.desk').press('Control+z');
  await expect.poll(() => setups(page), PATIENT).toBe(before - 1);
  const { versions } = await shelfContents(page);
  expect(versions.map(({ reason }) => reason)).toContain('go back to an earlier version');
});

test.each([
  ['night', 1440, 900],
  ['day', 1440, 900],
  ['night', 390, 844],
  ['day', 390, 844],
] as const)(
  'the list of plans by %s at %i × %i holds all in its width and is read aloud',
  async (theme, width, height) => {
    const touch = width < 768;
    const page = await openPage({ width, height, theme, touch, before: [withoutPicture, withoutReports] });
    const press = (name: string) => {
      const button = page.getByRole('button', { name, exact: true }).filter({ visible: true }).first();
      return touch ? button.tap() : button.click();
    };
    if (touch) await page.locator('.more summary').tap();
    await press('Plans');
    await page.getByRole('dialog').waitFor();
    await press('Duplicate');
    await entry(page, COPY).waitFor();
    const { left, right, solid } = await drawnIn(page.locator('dialog .picture img').first());
    expect(Math.abs(left - right)).toBeLessThan(4);
    expect(solid).toBeGreaterThan(0.03);
    await screenshot(page, `plans-${theme}-${width}x${height}`);
    expect(
      await page.locator('dialog.plans').evaluate((dialog) => dialog.scrollWidth - dialog.clientWidth),
    ).toBeLessThanOrEqual(0);
    const least = touch ? 48 : 32;
    const small = await page.locator('dialog.plans button, dialog.plans summary').evaluateAll(
      (targets, pixels) =>
        targets
          .map((target) => ({ name: target.textContent, box: target.getBoundingClientRect() }))
          .filter(({ box }) => box.height > 0 && box.height < pixels)
          .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
      least,
    );
    expect(small).toEqual([]);
    expect(await seriousViolations(page)).toEqual([]);
  },
);
