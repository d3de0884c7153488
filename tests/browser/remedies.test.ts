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

/** Vera with a key beside the camera's frame, and a backlight whose stand is in it. */
function backlit(): Plan {
  const plan = keyedFace({
    gear: [...keyOn('key', [-2.5, 2.5], [0, 0]), ...keyOn('back', [0.9, -3], [0, 0], 0.05, 2.4)],
    cameras: [
      { id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0, lens: 'long' },
      { id: 'side', label: 'Side', at: [6, 1], headingDegrees: 280, lens: 'long' },
    ],
  });
  return { ...plan, title: 'Backlit', ground: { ...plan.ground, wetness: 'dry' } };
}

/** Runs in the page before its own code: the workers that look for remedies take their time, for ever. */
function patientSearch(): void {
  const { Worker: Real } = window;
  class Silent extends EventTarget {
    postMessage(): void {}
    terminate(): void {}
  }
  Object.assign(window, {
    Worker: function Choosing(url: string | URL, options?: WorkerOptions): unknown {
      return String(url).includes('remedies') ? new Silent() : new Real(url, options);
    },
  });
}

const row = (page: Page, label: string): Locator =>
  page.locator('.findings button[aria-expanded]', { hasText: label }).first();
const remedies = (page: Page): Locator => page.locator('.remedy-list > li');
const card = (page: Page, letter: string): Locator =>
  page.locator('.strip .card').filter({ has: page.locator('b', { hasText: new RegExp(`^${letter}$`) }) });
const standAt = async (page: Page): Promise<readonly number[]> => {
  const stand = (await keptPlan(page)).gear.find(({ id }) => id === 'back-stand');
  return stand?.kind === 'stand' ? stand.at : [];
};

test(
  'a finding is opened to ranked remedies; one is tried in both views, done by one press and undone by one',
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: BEFORE });
    await dropPlan(page, backlit());
    await row(page, 'Stand of back').click();
    await remedies(page).first().waitFor();
    expect(await row(page, 'Stand of back').getAttribute('aria-expanded')).toBe('true');

    // The most trusted first, each with what it costs.
    const heads = await page.locator('.remedy-group h4').allTextContents();
    expect(heads[0]).toBe('By geometry Holds whatever the light.');
    expect(heads.length).toBe(new Set(heads).size);
    const move = remedies(page).filter({ hasText: 'clears it in all setups' }).first();
    expect(await move.textContent()).toMatch(/\d+\u00a0cm, .*Head back goes from close to clear/);
    await screenshot(page, 'remedies');

    // Tried: dashed on the roof with its way, out of the frame's marks; the list that it is tried from stays.
    const before = await standAt(page);
    await expect.poll(() => page.locator('.marks .label', { hasText: 'Stand of back' }).count()).toBe(1);
    await move.getByRole('button', { name: /^Preview: / }).click();
    await page.locator('.proposed-place text', { hasText: /Stand of back, 0\.\d+.m/ }).waitFor();
    await expect.poll(() => page.locator('.gear-layer.proposing .choice.draft').count()).toBe(2);
    await expect.poll(() => page.locator('.as-it-is').count()).toBe(1);
    await page.locator('.marks .label', { hasText: 'Stand of back' }).waitFor({ state: 'detached' });
    await card(page, 'A')
      .locator('.say', { hasText: /clear|0\.\d+.m/ })
      .waitFor();
    await screenshot(page, 'remedies-preview');
    expect(await standAt(page)).toEqual(before);
    await move.getByRole('button', { name: /^Put it back: / }).click();
    await page.locator('.proposed-place').waitFor({ state: 'detached' });
    await page.locator('.marks .label', { hasText: 'Stand of back' }).waitFor();

    // Done by one press, from the keyboard; the finding goes, and one undo brings it back.
    await move.getByRole('button', { name: /^Do it: / }).focus();
    await page.keyboard.press('Enter');
    await row(page, 'Stand of back').waitFor({ state: 'detached' });
    await eventually(() => standAt(page)).not.toEqual(before);
    await page.locator('.toast', { hasText: 'clears it in all setups' }).waitFor();
    await page.locator('body').press('Control+z');
    await row(page, 'Stand of back').waitFor();
    await eventually(() => standAt(page)).toEqual(before);

    // How far a lamp may change is asked beside it, and kept; within nothing, nothing moves.
    await remedies(page).first().waitFor();
    const level = page.locator('.tolerance').getByLabel('level');
    await level.fill('9');
    await level.press('Enter');
    await page.getByText('Up to 6\u00a0stops either way.').waitFor();
    await level.fill('0');
    await level.press('Enter');
    const angle = page.locator('.tolerance').getByLabel('angle');
    await angle.fill('0');
    await angle.press('Enter');
    await remedies(page).filter({ hasText: 'A pan of' }).waitFor();
    await move.waitFor({ state: 'detached' });
    expect(await page.evaluate(() => localStorage.getItem('standclear.tolerance'))).toBe('0 0');
    expect(await seriousViolations(page)).toEqual([]);
  },
  PATIENT.timeout,
);

test(
  'the line of sight is drawn at any moment, and a finding is let show with a reason, and taken back',
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: BEFORE, theme: 'day' });
    await dropPlan(page, backlit());
    await row(page, 'Stand of back').click();
    const why = page.getByRole('button', { name: 'Why: Stand of back' });
    await why.click();
    expect(await why.getAttribute('aria-pressed')).toBe('true');
    await page.locator('.sight-showing .sight-line').waitFor();
    await page
      .locator('.why-told p', { hasText: /^At 0\.0.s A sees the column of Stand of back, / })
      .waitFor();
    await page.getByRole('slider', { name: 'moment of A' }).focus();
    await page.keyboard.press('End');
    await page.locator('.why-told p', { hasText: /^At 2\.0.s A sees/ }).waitFor();
    await screenshot(page, 'remedies-why-day');
    await why.click();
    await page.locator('.sight').waitFor({ state: 'detached' });

    // Without a reason it is not let show.
    const letIt = page.getByRole('button', { name: 'Let it show: Stand of back in A' });
    await letIt.click();
    await page.getByText('Say why it may show, such as: reads as a street lamp.').waitFor();
    await page.getByLabel('it may show in A, since it').fill('reads as a street lamp');
    await page.keyboard.press('Enter');
    await page.locator('.findings .sentence', { hasText: 'Let show: reads as a street lamp.' }).waitFor();
    await card(page, 'A')
      .locator('.say', { hasText: /head back, |1 let show/ })
      .waitFor();
    await page.locator('.tally', { hasText: '1 let show' }).waitFor();
    await page.locator('.let-show-mark').waitFor();
    expect(await page.locator('.marks .label', { hasText: 'Stand of back' }).count()).toBe(0);
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'remedies-let-show-day');
    await page.getByRole('button', { name: 'Take it back: Stand of back in A' }).click();
    await letIt.waitFor();
    await page.locator('.let-show-mark').waitFor({ state: 'detached' });
  },
  PATIENT.timeout,
);

test(
  'by touch on a phone: opened, tried and done',
  async () => {
    const page = await openPage({ width: 390, height: 844, touch: true, before: BEFORE });
    await dropPlan(page, backlit());
    await row(page, 'Stand of back').tap();
    const tried = remedies(page)
      .first()
      .getByRole('button', { name: /^Preview: / });
    await tried.waitFor();
    for (const button of await page.locator('.finding-acts button').all())
      expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(48);
    await page.getByRole('button', { name: 'Why: Stand of back' }).tap();
    await page.locator('.sight-showing').waitFor({ state: 'attached' });
    await tried.scrollIntoViewIfNeeded();
    await screenshot(page, 'remedies-phone');
    await tried.tap();
    await remedies(page)
      .first()
      .getByRole('button', { name: /^Put it back: / })
      .waitFor();
    await remedies(page)
      .first()
      .getByRole('button', { name: /^Do it: / })
      .tap();
    await row(page, 'Stand of back').waitFor({ state: 'detached' });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await screenshot(page, 'remedies-phone-done');
  },
  PATIENT.timeout,
);

test(
  'a search that takes its time says so, and is stopped: for one finding, and for all setups',
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: [...BEFORE, patientSearch] });
    await dropPlan(page, backlit());
    await row(page, 'Stand of back').click();
    const acts = page.locator('.finding-acts');
    await acts.locator('p', { hasText: /^Looks for what clears it, 0.% of the way\./ }).waitFor();
    // Why, and letting it show, do not have to wait for it.
    expect(await acts.getByRole('button', { name: /^(Why|Let it show)/ }).count()).toBe(2);
    await acts.getByRole('button', { name: 'Stop' }).click();
    await acts.getByText('Stopped before the end.').waitFor();
    await acts.getByRole('button', { name: 'Look again' }).click();
    await acts.getByRole('button', { name: 'Stop' }).waitFor();

    await page.getByRole('button', { name: 'Clear all setups' }).click();
    await page.locator('.solve').getByRole('button', { name: 'Start' }).click();
    await page.getByRole('progressbar', { name: 'How far the search is' }).waitFor();
    expect(await page.locator('.solve').getByRole('button', { name: 'Start' }).isDisabled()).toBe(true);
    await page.locator('.solve').getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Stopped before the end: nothing was found so far.').waitFor();
    expect(await page.locator('.solve').getByRole('button', { name: 'Start' }).isDisabled()).toBe(false);
  },
  PATIENT.timeout,
);
