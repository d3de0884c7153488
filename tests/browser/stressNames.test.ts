import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { hardNamed } from '../plans/longNames';
import { quickDemo } from '../plans/quickDemo';
import { DESK_VIEWS, showView } from './deskViews';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { clippedWords, sidewaysScrolls } from './measured';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

const plan = hardNamed(quickDemo());

/** What has text, none of which can be seen, for names in it: what a person would take for an empty row. */
const unseenNames = (page: Page): Promise<string[]> =>
  page.locator('.sheet-panel, .strip, .lettering').evaluateAll((places) =>
    places
      .flatMap((place) => [...place.querySelectorAll('*')])
      .filter(({ childElementCount, textContent }) => {
        const text = childElementCount === 0 ? (textContent ?? '') : '';
        return /[\u200b\u2800]/.test(text) && /^[\s\u200b\u2800]*$/.test(text);
      })
      .map(({ parentElement }) => parentElement?.outerHTML ?? ''),
  );

test('the longest names, in one word and from right to left, stay in their room on every sheet, on the roof and in the frame', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutDemo] });
  await dropPlan(page, plan);
  // What has just been opened is said over the sheet's foot for a while.
  await page.locator('.toasts').getByRole('button', { name: 'Put away' }).click();
  await page.locator('.strip .card svg[role="img"]').first().waitFor({ timeout: 240_000 });
  for (const view of DESK_VIEWS) {
    const name = view.filter(Boolean).join(', ');
    await showView(page, view);
    // What a worker tells comes later, and brings names of its own.
    const awaited = page.locator('.sheet').getByText(/is being (read|worked out)/);
    await expect.poll(() => awaited.count(), { timeout: 240_000 }).toBe(0);
    expect(await unseenNames(page), name).toEqual([]);
    expect(await clippedWords(page), name).toEqual([]);
    expect(await sidewaysScrolls(page, '.coverage-scroll, .timeline'), name).toEqual([]);
  }
  await showView(page, ['frames', 'findings']);
  // Lettering on the roof and in the frame lies within the drawing, and no name takes half of it.
  for (const [drawing, share] of [
    ['.sheet-drawing', 0.5],
    ['.picture > svg', 0.6],
  ] as const) {
    const outside = await page
      .locator(drawing)
      .first()
      .evaluate((svg, most) => {
        const pane = svg.getBoundingClientRect();
        return [...svg.querySelectorAll('text')].flatMap((each) => {
          const { left, right, width } = each.getBoundingClientRect();
          const isOut = left < pane.left - 2 || right > pane.right + 2 || width > most * pane.width;
          return isOut && width > 0 ? [`${each.textContent}: ${left} to ${right}`] : [];
        });
      }, share);
    expect(outside, drawing).toEqual([]);
  }
  await screenshot(page, 'desk-hard-names');
}, 600_000);
