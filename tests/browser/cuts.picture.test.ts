import type { Locator } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { openPage, screenshot } from './harness';
import { brightness, style, untilStill } from './picture';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 240_000 };
const [ACROSS, DOWN] = [12, 5];

/** Mean brightness of each of so many parts of a picture, its edges left out. */
async function parts(place: Locator): Promise<readonly number[]> {
  const picture = PNG.sync.read(await place.screenshot());
  const sums = new Float64Array(ACROSS * DOWN);
  const counts = new Float64Array(ACROSS * DOWN);
  for (let y = 2; y < picture.height - 2; y += 1) {
    for (let x = 2; x < picture.width - 2; x += 1) {
      const part =
        Math.floor((y * DOWN) / picture.height) * ACROSS + Math.floor((x * ACROSS) / picture.width);
      sums[part] += brightness(picture, y * picture.width + x);
      counts[part] += 1;
    }
  }
  return Array.from(sums, (sum, k) => sum / counts[k]);
}

const apart = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, k) => sum + Math.abs(value - b[k]), 0) / a.length;

test(
  'four panes each show their own setup, as it is seen alone, and nothing is drawn once they rest',
  async () => {
    const page = await openPage({ width: 1000, height: 640, before: withoutReports });
    await style(page, '.picture svg, .pane-choose, .toast, .hint { opacity: 0 !important }');
    await page.getByRole('button', { name: 'four up' }).click();
    await untilStill(page);
    const panes = page.locator('.pane figure.picture');
    expect(await panes.count()).toBe(4);
    const seen: (readonly number[])[] = [];
    for (let k = 0; k < 4; k += 1) seen.push(await parts(panes.nth(k)));
    await screenshot(page, 'cuts-four');

    await page.getByRole('button', { name: 'one up' }).click();
    const frame = page.locator('figure.picture');
    const alone: (readonly number[])[] = [];
    for (let k = 0; k < 4; k += 1) {
      await page.locator('.strip .card').nth(k).click();
      // The panes were seen at the first setup's first moment: there the others stand at the nearest end of their spans.
      await page.getByRole('slider', { name: 'Time in the move' }).press('Home');
      await untilStill(page);
      alone.push(await parts(frame));
    }
    for (let k = 0; k < 4; k += 1) {
      const distances = alone.map((each) => apart(seen[k], each));
      // C begins before that moment, so its legs are not quite where they were.
      expect(distances.indexOf(Math.min(...distances))).toBe(k);
      if (k !== 2) expect(distances[k]).toBeLessThan(0.02);
    }
    const drawn = await untilStill(page);
    await page.mouse.move(300, 20);
    expect(await untilStill(page)).toBe(drawn);
  },
  PATIENT.timeout,
);
