import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { linkOfPlan } from '../../src/exchange/link/link';
import { EVEN_NIGHT, nightRoof } from '../plans/nightRoof';
import { eventually } from './building';
import { openPage, screenshot, waitUntilReady } from './harness';
import { keptPlan } from './keptPlan';
import { shelfContents, titlesKept } from './shelfContents';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };
const TITLE = 'Loft Night';
/** Where the first stand begins, and a step of the keys, metres. */
const AT = -6.85;
const STEP = 0.1;

async function across(page: Page): Promise<number> {
  const stand = (await keptPlan(page)).gear.find(({ id }) => id === 'stand-1');
  return stand && 'at' in stand ? stand.at[0] : Number.NaN;
}

/** Runs in the page before its own code: a clock that can be set. It is kept over a reload. */
function withAClock(): void {
  if (location.protocol === 'about:') return;
  const { Date: True } = window;
  const ahead = (): number => Number(sessionStorage.getItem('clock ahead') ?? 0);
  class Clock extends True {
    constructor(...at: readonly unknown[]) {
      if (at.length === 0) super(True.now() + ahead());
      else super(...(at as [number]));
    }
    static override now(): number {
      return True.now() + ahead();
    }
  }
  Object.assign(window, { Date: Clock });
}

const DAY = 24 * 3_600_000;

/** Sets the page's clock so much ahead of the true one, milliseconds. */
const setClock = (page: Page, ahead: number): Promise<void> =>
  page.evaluate((by) => sessionStorage.setItem('clock ahead', String(by)), ahead);

test(
  'a clock that jumps a year ahead, a day back and to 1970 costs no edit, no version and no plan of the list',
  PATIENT,
  async () => {
    const page = await openPage({
      width: 1440,
      height: 900,
      before: [withAClock, withoutPicture, withoutReports],
    });
    const setups = (): Promise<number> => page.locator('.strip .card').count();
    const begun = await setups();
    // What a person does at each time: an edit, and one before which a version is kept.
    const times = [0, 365 * DAY, -DAY, -Date.now()];
    for (const [k, ahead] of times.entries()) {
      await setClock(page, ahead);
      await page.locator('.desk').press('Escape');
      await page.locator('[data-target="stand-1"]').focus();
      await page.keyboard.press('Enter');
      await page.keyboard.press('ArrowRight');
      await page.getByRole('tab', { name: 'Set' }).click();
      await page.keyboard.press('Escape');
      await page.locator('.sheet').getByRole('button', { name: 'Take it out', exact: true }).first().click();
      await eventually(setups).toBe(begun - k - 1);
      await eventually(() => across(page)).toBeCloseTo(AT + (k + 1) * STEP);
      await eventually(async () => (await shelfContents(page)).versions.length).toBe(k + 1);
    }
    // In 1970 the page is loaded again, and the day after it is now again.
    for (const ahead of [-Date.now(), 0]) {
      await setClock(page, ahead);
      await page.reload({ waitUntil: 'commit' });
      await waitUntilReady(page);
      expect(await setups()).toBe(begun - times.length);
      expect(await titlesKept(page)).toEqual([TITLE]);
      await page.getByRole('button', { name: 'Plans', exact: true }).click();
      const entry = page.locator('dialog.plans .plan', { hasText: TITLE });
      await entry.locator('summary').press('Enter');
      await entry.getByRole('button', { name: 'Earlier versions' }).press('Enter');
      // The newest first, as they were made, whatever time each is said to be of.
      const versions = page.locator('.versions li');
      await versions.first().waitFor();
      const said = await versions.allInnerTexts();
      expect(said.map((each) => /(\d+) setups? taken out/.exec(each)?.[1])).toEqual(['1', '2', '3', '4']);
      for (const each of said)
        expect(each).toMatch(
          /^(Just now|\d+ minutes? ago|Today at \d\d:\d\d|\d+ [A-Z][a-z]+ (\d{4} )?at \d\d:\d\d)\n/,
        );
      if (ahead === 0) {
        await screenshot(page, 'versions-of-a-wrong-clock');
        await versions.last().getByRole('button', { name: 'Go back to it' }).press('Enter');
        await eventually(setups).toBe(begun);
      } else await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
    }
  },
);

test(
  'the line of now on the crew sheet is there on its night alone, whatever the device’s clock was before',
  PATIENT,
  async () => {
    const inThatNight = Date.UTC(2026, 10, 20, 19, 40) - Date.now();
    const page = await openPage({
      width: 390,
      height: 844,
      touch: true,
      address: `#${linkOfPlan(nightRoof(EVEN_NIGHT)).fragment}`,
      before: [withAClock, withoutPicture],
    });
    await page
      .getByRole('navigation', { name: 'Crew sheet' })
      .getByRole('button', { name: 'Times', exact: true })
      .tap();
    await page.locator('.timeline').waitFor();
    const now = page.locator('.time-now');
    for (const [ahead, shown] of [
      [inThatNight, 1],
      [inThatNight - DAY, 0],
      [inThatNight, 1],
      [-Date.now(), 0],
      [inThatNight + DAY, 0],
      [inThatNight, 1],
    ] as const) {
      await setClock(page, ahead);
      // As a phone that comes out of a pocket.
      await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
      await eventually(() => now.count()).toBe(shown);
      expect(await page.locator('.timeline').getByText('now', { exact: true }).count()).toBe(shown);
    }
  },
);
