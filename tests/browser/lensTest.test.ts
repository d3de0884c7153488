import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { alongside } from '../plans/alongside';
import { seriousViolations } from './axe';
import { openPage, screenshot } from './harness';
import { openPlan, withPlainFiles } from './plainFiles';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

const DESK = { width: 1440, height: 900 };
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
  await expect.poll(() => page.locator('.lens-card .held').count()).toBe(3);
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
  await expect.poll(() => page.locator('.proposed-place').count()).toBe(1);
  await distance.getByRole('button', { name: 'Preview' }).click();
  await expect.poll(() => glass.textContent()).toContain('65\u00a0mm');
  await screenshot(page, 'lens-test');
  await distance.getByRole('button', { name: 'Move it there' }).click();
  await expect.poll(() => onCamera(page)).toBe('65\u00a0mm');
});

test('where no worker starts, the lens test and the distance test each say so', async () => {
  const page = await openPage({ ...DESK, before: [withoutPicture, withoutReports] });
  await view(page, 'lens test');
  await page.getByText('The lens test could not be made: left out of this test').waitFor();
  await page
    .getByRole('region', { name: 'Distance test' })
    .getByText('What shows from there could not be read: left out of this test')
    .waitFor();
});
