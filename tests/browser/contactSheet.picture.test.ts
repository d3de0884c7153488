import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Download, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { textsOf } from '../plans/pngTexts';
import { smallRoof } from '../unit/smallRoof';
import { openPage } from './harness';
import { brightness } from './picture';
import { openPlan, withPlainFiles } from './plainFiles';
import { withoutDemo } from './withoutDemo';

/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 240_000 };
const DESK = { width: 1200, height: 720 };

const view = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();

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
    const page = await openPage({ ...DESK, before: [withPlainFiles, withoutDemo] });
    const roof = smallRoof();
    const [, single, still] = roof.setups;
    // A low frame has few pixels: without a graphics card each of them takes its time.
    const first = { ...single, delivery: 4, span: { from: 'end', to: 'end' } };
    await openPlan(page, { ...roof, title: 'Two setups', setups: [first, { ...still, delivery: 4 }] });
    await view(page, 'contact sheet');
    await expect.poll(() => page.locator('.contact-shot').count()).toBe(2);

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
    const texts = textsOf(bytes);
    expect(JSON.parse(texts.Standclear)).toMatchObject({
      setup: 'single',
      focalMm: 85,
      gateMm: [24.89, 18.66],
    });
    expect(texts.Plan).toMatch(/^[0-9A-F]{4}\u00a0[0-9A-F]{4}$/);
    expect(texts.Plan).toBe(textsOf(sheet).Plan);
    expect(texts).toMatchObject({
      Title: 'Two setups',
      Setup: 'A Single on Ana',
      Lens: '85\u00a0mm',
      Gate: 'Full, 24.89 × 18.66\u00a0mm',
      Height: '1.60\u00a0m high',
      Stop: 'T2.8',
      Seconds: '2.0\u00a0s',
      Software: 'Standclear',
    });
  },
);
