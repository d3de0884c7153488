import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { keyedFace, keyOn } from '../plans/keyedFace';
import { seriousViolations } from './axe';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };

const card = (page: Page, letter: string) =>
  page.locator('.strip .card').filter({ has: page.locator('b', { hasText: new RegExp(`^${letter}$`) }) });
const chosen = (page: Page): Promise<string | null> =>
  page.locator('.strip .card[aria-current] .cap b').textContent();
const press = (page: Page, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();
const finding = (page: Page, text: string) => page.locator('.continuity li button', { hasText: text });
const glass = (page: Page) => page.locator('.frame-pane .glass');

/** A wide and a second setup for which Vera was turned and the lamp was not. */
function flipped(): Plan {
  const wide = { id: 'wide', label: 'Wide', at: [0, 6] as [number, number], headingDegrees: 0 };
  const plan = keyedFace({
    gear: keyOn('1', [-2.5, 2.5], [0, 0]),
    cameras: [
      { ...wide, lens: 'wide' },
      {
        ...wide,
        id: 'second',
        label: 'Second',
        lens: 'wide',
        cheats: [{ performer: 'vera', mark: 'v1', at: [0.1, 0], headingDegrees: 260 }],
      },
    ],
  });
  return { ...plan, title: 'Flipped' };
}

test(
  'a director reads who is covered, sees two singles side by side, and mends what does not cut',
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: withoutPicture });
    // What breaks is counted on the strip.
    await card(page, 'G').locator('.breaks', { hasText: '2 break' }).waitFor();
    expect(await card(page, 'E').locator('.breaks').count()).toBe(0);

    // The chart: by its key; bars by the arrows; a bar is gone to.
    await page.locator('body').press('c');
    await page.locator('.coverage-bar').first().waitFor();
    const table = page.locator('.coverage table');
    expect(await table.locator('tbody tr').first().textContent()).toMatch(/^Nunono setupno setupA, /);
    expect(await page.locator('.coverage .sentence').first().textContent()).toBe(
      'No setup has Nuno, Vera or Rui from “Nuno at the loft with the bird”, 0.0\u00a0s, to 5.0\u00a0s.',
    );
    await page.locator('.coverage-bar', { hasText: 'E' }).first().focus();
    await page.keyboard.press('ArrowDown');
    const focused = page.locator('.coverage-bar:focus');
    const said = (await focused.getAttribute('aria-label')) ?? '';
    expect(said).toMatch(/^[A-H] .*, Vera, /);
    await page.keyboard.press('Enter');
    expect(await chosen(page)).toBe(/^([A-H]) /.exec(said)?.[1]);
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'cuts-coverage');

    // Beside each other, at one time of the action; a press on the other looks through it.
    await page.locator('body').press('3');
    await card(page, 'D').click();
    await card(page, 'E').click({ modifiers: ['Shift'] });
    expect(
      await page
        .locator('.pane-head select')
        .evaluateAll((all) =>
          all.map((each) => each instanceof HTMLSelectElement && each.selectedOptions[0].textContent),
        ),
    ).toEqual(['D Nuno over Vera', 'E Vera over Nuno']);
    expect(await page.locator('.pair-words').textContent()).toMatch(/^E matches D, but /);
    await press(page, 'Look through E');
    expect(await chosen(page)).toBe('E');
    expect(await page.locator('.pane[aria-current]').getAttribute('aria-label')).toContain('Setup E');
    await page.locator('body').press('Shift+Digit4');
    await expect.poll(() => page.locator('.pane').count()).toBe(4);
    await page.locator('body').press('Shift+Digit1');
    expect(await page.locator('.pane').count()).toBe(0);

    // The singles: matched, tried first, done in one step, taken back.
    await finding(page, 'E matches D').click();
    const rows = page.locator('.match-table tbody tr');
    const texts = (k: number): Promise<string[]> => rows.nth(k).locator('td').allTextContents();
    const [model, now, then] = await texts(2);
    expect(then).toBe(model);
    expect(now).not.toBe(model);
    const before = await glass(page).textContent();
    await press(page, 'Preview: Match E to setup D');
    await expect.poll(() => glass(page).textContent()).not.toBe(before);
    await page.locator('.proposed-place .camera-body').waitFor();
    await press(page, 'Put it back: Match E to setup D');
    await expect.poll(() => glass(page).textContent()).toBe(before);
    expect(await page.locator('.proposed-place').count()).toBe(0);
    await press(page, 'Match E to setup D');
    await page.locator('.toast', { hasText: 'E frames as D does.' }).waitFor();
    expect(await glass(page).textContent()).not.toBe(before);
    await page.locator('body').press('Control+z');
    await expect.poll(() => glass(page).textContent()).toBe(before);

    // A dirty single: a share that can be had, and one that cannot.
    await finding(page, 'Nuno’s shoulder').click();
    const share = page.getByRole('textbox', { name: 'share of the frame' });
    await share.fill('20');
    await share.press('Enter');
    await press(page, 'Make it dirty by 20\u00a0%');
    await page.locator('.toast', { hasText: /Nuno takes 20\s% of the frame/ }).waitFor();
    await page.locator('body').press('Control+z');
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'cuts-findings');
  },
  PATIENT.timeout,
);

test(
  'a key that has flipped: its stand goes round the face with all that it carries, in one step that can be taken back',
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutDemo] });
    const plan = flipped();
    await dropPlan(page, plan);
    await card(page, 'B').click();
    const turn = page.getByRole('button', { name: /^Turn the key \d+° to camera (left|right) about Vera$/ });
    await turn.waitFor();
    await turn.click();
    await page.locator('.toast', { hasText: 'Head 1 has gone round Vera.' }).waitFor();
    await expect.poll(async () => (await keptPlan(page)).gear).not.toEqual(plan.gear);
    const turned = await keptPlan(page);
    expect(turned.setups).toEqual(plan.setups);
    await finding(page, 'B has Vera’s key on the left').waitFor({ state: 'detached' });
    await page.locator('body').press('Control+z');
    await expect.poll(async () => (await keptPlan(page)).gear).toEqual(plan.gear);
  },
  PATIENT.timeout,
);
