import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Download, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { serialisePlan } from '../../src/core/plan/serialise';
import { alongside } from '../plans/alongside';
import { textsOf } from '../plans/pngTexts';
import { smallRoof } from '../unit/smallRoof';
import { seriousViolations } from './axe';
import { openPage, screenshot } from './harness';
import { brightness } from './picture';
import { withoutPicture } from './withoutPicture';

/** A browser that opens and saves files in the way that every browser can: its dialogs can be answered here. */
function withPlainFiles(): void {
  for (const name of ['showOpenFilePicker', 'showSaveFilePicker', 'showDirectoryPicker'])
    Reflect.deleteProperty(window, name);
}
/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 240_000 };
const DESK = { width: 1440, height: 900 };

async function openPlan(page: Page, plan: Plan): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  await chooser.setFiles({
    name: 'night.plan.json',
    mimeType: 'application/json',
    buffer: Buffer.from(serialisePlan(plan)),
  });
  await page.getByRole('heading', { name: plan.title }).waitFor();
}

const view = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();
const card = (page: Page, name: string) => page.locator('.lens-card', { hasText: name });
const onCamera = (page: Page): Promise<string | null> =>
  page.locator('.lens-card[aria-current] .lens').textContent();

test('a dolly goes alongside two who walk a metre and a half apart: the 65 holds them, the 100 does not', async () => {
  const page = await openPage({ ...DESK, before: [withoutPicture, withPlainFiles] });
  await openPlan(page, { ...alongside(3.6), title: 'Alongside' });
  await view(page, 'lens test');
  const answer = page.locator('.answer');
  await answer.waitFor();
  expect(await answer.textContent()).toMatch(
    /^65 mm is the tightest that holds Ana and Bea throughout\. 100 mm holds Ana for [0-3]\.\d\u00a0s of 4\.0\u00a0s and Bea for [0-3]\.\d\u00a0s of 4\.0\u00a0s\.$/,
  );
  expect(await card(page, '65\u00a0mm').textContent()).toContain('Ana, held throughout');
  expect(await card(page, '100\u00a0mm').textContent()).toMatch(
    /Bea, held from 0\.\d\u00a0s to \d\.\d\u00a0s/,
  );
  expect(await seriousViolations(page)).toEqual([]);

  // Ana alone.
  await page.getByRole('button', { name: 'Bea', exact: true }).click();
  expect(await page.locator('.lens-card .held').count()).toBe(3);
  await page.getByRole('button', { name: 'Bea', exact: true }).click();

  // Under the pointer the lens is seen, and is not taken.
  const glass = page.locator('.frame-pane .bar');
  const before = await glass.textContent();
  await card(page, '65\u00a0mm').locator('.take').hover();
  await expect.poll(() => glass.textContent()).toContain('65\u00a0mm');
  await page.mouse.move(10, 880);
  await expect.poll(() => glass.textContent()).toBe(before);
  expect(await onCamera(page)).toBe('40\u00a0mm');

  // By the keys alike; Enter takes it, and it can be taken back.
  await page.getByRole('button', { name: 'whole move' }).focus();
  await page.keyboard.press('Tab');
  for (let k = 0; k < 12 && (await glass.textContent())?.includes('65\u00a0mm') !== true; k += 1)
    await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect.poll(() => onCamera(page)).toBe('65\u00a0mm');
  // What was tried holds for whatever lens is on it: nothing is tried again.
  expect(await answer.count()).toBe(1);
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect.poll(() => onCamera(page)).toBe('40\u00a0mm');

  // The same framing on the 100: two and a half times as far.
  const distance = page.getByRole('region', { name: 'Distance test' });
  await distance.getByRole('combobox', { name: 'lens' }).selectOption({ label: '100 mm' });
  const said = await distance.locator('.distance-answer').textContent();
  const [, from, to] = /^From (\d+\.\d\d)\u00a0m to (\d+\.\d\d)\u00a0m, /.exec(said ?? '') ?? [];
  expect(Number(to) / Number(from)).toBeCloseTo(2.5, 1);
  await distance.getByText('The place lies outside the deck.').waitFor();
  expect(await distance.getByRole('button', { name: 'Move it there' }).isDisabled()).toBe(true);
  // On the 65 it stays on the deck.
  await distance.getByRole('combobox', { name: 'lens' }).selectOption({ label: '65 mm' });
  await distance.getByText(/^Findings: /).waitFor();
  expect(await page.locator('.proposed-place').count()).toBe(1);
  await distance.getByRole('button', { name: 'Preview' }).click();
  await expect.poll(() => glass.textContent()).toContain('65\u00a0mm');
  await screenshot(page, 'lens-test');
  await distance.getByRole('button', { name: 'Move it there' }).click();
  await expect.poll(() => onCamera(page)).toBe('65\u00a0mm');
});

async function saved(page: Page, button: string): Promise<readonly [name: string, bytes: Buffer]> {
  const [download]: [Download, unknown] = await Promise.all([
    page.waitForEvent('download', { ...PATIENT }),
    page.getByRole('button', { name: button }).click(),
  ]);
  return [download.suggestedFilename(), readFileSync(await download.path())];
}

/** How much of a rectangle of a picture is neither black nor all alike: the spread of its brightness. */
function spread(png: PNG, rows: readonly [from: number, to: number]): number {
  let [least, most] = [1, 0];
  for (let pixel = rows[0] * png.width; pixel < rows[1] * png.width; pixel += 7) {
    const value = brightness(png, pixel);
    [least, most] = [Math.min(least, value), Math.max(most, value)];
  }
  return most - least;
}

test(
  'two setups go out as one sheet, and each picture by itself with its slate in its file',
  PATIENT,
  async () => {
    const page = await openPage({ ...DESK, before: withPlainFiles });
    const roof = smallRoof();
    const [, single, still] = roof.setups;
    // A low frame has few pixels: without a graphics card each of them takes its time.
    const first = { ...single, delivery: 4, span: { from: 'end', to: 'end' } };
    await openPlan(page, { ...roof, title: 'Two setups', setups: [first, { ...still, delivery: 4 }] });
    await view(page, 'contact sheet');
    expect(await page.locator('.contact-shot').count()).toBe(2);

    const [sheetName, sheet] = await saved(page, 'Save one sheet');
    expect(sheetName).toBe('two-setups-contact-sheet.png');
    const png = PNG.sync.read(sheet);
    expect(png.width).toBe(1920);
    expect(textsOf(sheet)).toMatchObject({
      Title: 'Two setups',
      Setups: 'Single on Ana, Insert of the bulb',
    });
    expect(spread(png, [60, png.height])).toBeGreaterThan(0.15);

    const [zipName, zip] = await saved(page, 'Save each picture');
    expect(zipName).toBe('two-setups-pictures.zip');
    const files = unzipSync(zip);
    expect(Object.keys(files).toSorted()).toEqual([
      'a-single-on-ana-still.png',
      'b-insert-of-the-bulb-still.png',
    ]);
    const bytes = Buffer.from(files['a-single-on-ana-still.png']);
    const picture = PNG.sync.read(bytes);
    // The delivered frame, and the slate under it.
    const frame = 480;
    expect(picture.width).toBe(1920);
    expect(picture.height).toBeGreaterThan(frame + 30);
    expect(picture.height).toBeLessThan(frame + 120);
    expect(spread(picture, [0, frame])).toBeGreaterThan(0.15);
    expect(spread(picture, [frame + 2, picture.height])).toBeGreaterThan(0.5);
    expect(textsOf(bytes)).toEqual({
      Title: 'Two setups',
      Setup: 'A Single on Ana',
      Lens: '85\u00a0mm',
      Height: '1.60\u00a0m high',
      Stop: 'T2.8',
      Seconds: '2.0\u00a0s',
      Software: 'Standclear',
    });
  },
);
