import type { Page } from 'playwright-core';

/**
 * Each sheet of the desk with each way of looking at it: its tab, and the button that shows it. The lens test is left to
 * its own tests, since it shows nothing without its worker.
 */
export const DESK_VIEWS = [
  ['set', 'add'],
  ['set', /^on the roof/],
  ['blocking', 'timeline'],
  ['blocking', 'coverage'],
  ['frames', 'findings'],
  ['frames', 'contact sheet'],
  ['frames', 'clear all'],
  ['light', 'faces'],
  ['light', 'exposure'],
  ['light', 'floor'],
  ['light', 'dark'],
  ['night', 'order'],
  ['night', 'power'],
  ['night', 'packing'],
  ['night', 'sky'],
  ['night', 'cautions'],
  ['crew', null],
] as const;

/** Shows one of them, and waits until it is there. */
export async function showView(page: Page, [tab, word]: (typeof DESK_VIEWS)[number]): Promise<void> {
  await page.locator(`#tab-${tab}`).click();
  const panel = page.locator(`#sheet-panel[aria-labelledby="tab-${tab}"]`);
  await panel.locator('button').first().waitFor();
  if (word === null) return;
  const button = page.locator('.sheet').getByRole('button', { name: word, exact: typeof word === 'string' });
  await button.first().click();
  await page.locator('.sheet button[aria-pressed="true"]', { hasText: word }).first().waitFor();
}
