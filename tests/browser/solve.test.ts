import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { keyedFace, keyOn } from '../plans/keyedFace';
import { seriousViolations } from './axe';
import { eventually } from './building';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };
const BEFORE = [withoutPicture, withoutDemo];

/** Two stands in frame, one in each of two setups, and a third that is locked. */
function crossed(): Plan {
  const plan = keyedFace({
    gear: [
      ...keyOn('back', [0.9, -3], [0, 0], 0.05, 2.4),
      ...keyOn('far', [-3, 1], [0, 0], 0.05, 2.4),
      ...keyOn('key', [-2.5, 3.5], [0, 0]).map((gear) => ({ ...gear, locked: true as const })),
    ],
    cameras: [
      { id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0, lens: 'long' },
      { id: 'side', label: 'Side', at: [6, 0], headingDegrees: 270, lens: 'long' },
    ],
  });
  return { ...plan, title: 'Crossed', ground: { ...plan.ground, wetness: 'dry' } };
}

const button = (page: Page, name: string | RegExp): Locator =>
  page.locator('.solve').getByRole('button', { name, exact: true });
const says = (page: Page): Promise<string[]> => page.locator('.strip .card .say').allTextContents();
const placesOf = async (page: Page): Promise<unknown> =>
  (await keptPlan(page)).gear.map((gear) => ('at' in gear ? gear.at : null));

test(
  'all setups are cleared at once: what may move is chosen, the answer drawn and listed, done and undone as one step',
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: BEFORE });
    // A plan without setups and gear is answered in sentences.
    await page.locator('body').press('3');
    await page.getByRole('button', { name: 'clear all', exact: true }).click();
    await page.getByText('No gear on the roof that should keep out: there is nothing to move.').waitFor();
    await button(page, 'Start').click();
    await page.getByText('This plan has no setups: there is nothing to stay clear of.').waitFor();

    await dropPlan(page, crossed());
    const before = await placesOf(page);
    await page.getByText('What may move, 2 of 2').waitFor();
    await page.getByText('2 locked things stay.').waitFor();
    await button(page, 'None').click();
    await button(page, 'Start').click();
    await page.getByText('Nothing was named that may move.').waitFor();
    await button(page, 'All').click();
    await button(page, 'Start').click();
    await button(page, 'Do it').waitFor();
    expect(await page.locator('.solved li').allTextContents()).toEqual([
      expect.stringMatching(/^Stand of back: /),
      expect.stringMatching(/^Stand of far: /),
    ]);
    expect(await seriousViolations(page)).toEqual([]);

    // Tried: ghosts of all moves, all cards clear, nothing in the plan.
    await button(page, 'Preview: Do it').click();
    await eventually(() => page.locator('.proposed-place').count()).toBe(2);
    await eventually(() => says(page)).toEqual(['clear', 'clear']);
    await screenshot(page, 'solve-preview');
    expect(await placesOf(page)).toEqual(before);
    await button(page, 'Put it back: Do it').click();
    await eventually(() => page.locator('.proposed-place').count()).toBe(0);

    // Done, and undone by one.
    await button(page, 'Do it').click();
    await eventually(() => placesOf(page)).not.toEqual(before);
    await eventually(() => says(page)).toEqual(['clear', 'clear']);
    await button(page, 'Start').click();
    await page.locator('.solve p[role="status"]', { hasText: 'there is nothing to solve' }).waitFor();
    await page.locator('body').press('Control+z');
    await eventually(() => placesOf(page)).toEqual(before);
  },
  PATIENT.timeout,
);

test(
  'on a phone by day; where one thing has to stay it is said what is in the way',
  async () => {
    const page = await openPage({ width: 390, height: 844, touch: true, theme: 'day', before: BEFORE });
    await dropPlan(page, crossed());
    await page.getByRole('button', { name: 'Clear all setups' }).tap();
    await page.getByRole('checkbox', { name: /^Stand of far/ }).uncheck();
    await page.getByText('What may move, 1 of 2').waitFor();
    await button(page, 'Start').tap();
    await page
      .locator('.solve p[role="status"]', {
        hasText: 'Stand of far can be seen in B, and is not among what may move.',
      })
      .waitFor();
    await button(page, 'Preview: Do what can be done').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    const [inner = 0, outer = 0] = await page
      .locator('.sheet-panel')
      .evaluate(({ scrollWidth, clientWidth }) => [scrollWidth, clientWidth]);
    expect(inner).toBeLessThanOrEqual(outer);
    for (const each of await page.locator('.solve .column button:visible').all())
      expect((await each.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    expect(await seriousViolations(page)).toEqual([]);
    await button(page, 'Do what can be done').scrollIntoViewIfNeeded();
    await screenshot(page, 'solve-phone-day');
  },
  PATIENT.timeout,
);
