import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { quickDemo } from '../plans/quickDemo';
import { DESK_VIEWS, showView } from './deskViews';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { clippedWords, sidewaysScrolls } from './measured';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** `Source:` WCAG 2.2, success criterion 1.4.12: a reader's own spacing, put on by the page's own means. */
const SPACING =
  '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }';

const setSpacing = (page: Page): Promise<void> =>
  page.evaluate((rules) => {
    const spaced = new CSSStyleSheet();
    spaced.replaceSync(rules);
    document.adoptedStyleSheets.push(spaced);
  }, SPACING);

/** Words in sight that end in an ellipsis for want of room, and are told nowhere else; a line each. */
const endingEarly = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('body *')].flatMap((each) => {
      const { textOverflow, overflowX } = getComputedStyle(each);
      const isCut =
        textOverflow === 'ellipsis' && overflowX !== 'visible' && each.scrollWidth > each.clientWidth;
      if (!isCut || each.clientWidth < 2 || !each.checkVisibility() || each.closest('[title]')) return [];
      return [`${each.tagName.toLowerCase()}.${each.className} “${each.textContent?.trim().slice(0, 50)}”`];
    }),
  );

const CHARTS = '.coverage-scroll, .timeline, .strip';

test.each([
  [1440, 900],
  [390, 844],
])(
  'with a reader’s own spacing of text at %i × %i the desk loses no word and no control',
  async (width, height) => {
    const page = await openPage({
      width,
      height,
      touch: width < 500,
      before: [withoutPicture, withoutDemo],
    });
    await dropPlan(page, quickDemo());
    const noMore = page.getByRole('button', { name: 'No more' });
    await noMore.waitFor();
    await noMore.click();
    // What has just been opened is said over the sheet's foot for a while, and would count as lying over its controls.
    await page.locator('.toasts').getByRole('button', { name: 'Put away' }).click();
    await expect.poll(() => page.locator('.reading').count(), { timeout: 300_000 }).toBe(0);
    await setSpacing(page);
    const faults: string[] = [];
    for (const view of DESK_VIEWS) {
      await showView(page, view);
      const named = view.filter(Boolean).join(', ');
      const found = [
        // What is only read out there is a pixel wide.
        ...(await clippedWords(page)).filter((fault) => !fault.includes('span.word-of')),
        ...(await sidewaysScrolls(page, CHARTS)),
        ...(await endingEarly(page)),
      ];
      faults.push(...found.map((fault) => `${named}: ${fault}`));
      await screenshot(page, `spaced-${width}-${named.replaceAll(/\W+/g, '-')}`);
    }
    expect(faults).toEqual([]);
  },
  600_000,
);
