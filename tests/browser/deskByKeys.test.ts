import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { quickDemo } from '../plans/quickDemo';
import { seriousViolations } from './axe';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

const everySetupIsJudged = (page: Page): Promise<void> =>
  page.locator('.strip .say', { hasText: 'being read' }).first().waitFor({ state: 'detached' });

test('a setup from the strip, the time of its move, an item and its numbers, there and back by keys', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutDemo] });
  await dropPlan(page, quickDemo());
  await everySetupIsJudged(page);
  await screenshot(page, 'desk-night-1440x900');
  const title = page.locator('.frame-pane h2');
  const firstTitle = await title.textContent();
  // The outline of what shows hugs it, and a list that goes on says so.
  expect(await page.locator('.marks .hugging').count()).toBeGreaterThan(0);
  await page.locator('.more-below').first().waitFor();
  const firstFindings = await page.locator('.sheet h3').first().textContent();

  await page.locator('.strip .card').nth(1).click();
  expect(await title.textContent()).not.toBe(firstTitle);
  expect(await page.locator('.sheet h3').first().textContent()).not.toBe(firstFindings);
  await page.keyboard.press('[');
  expect(await title.textContent()).toBe(firstTitle);

  const clock = page.locator('.scrub .clock');
  await page.keyboard.press('End');
  const atEnd = await clock.textContent();
  await page.keyboard.press('Home');
  expect(await clock.textContent()).not.toBe(atEnd);
  await page.getByRole('slider', { name: 'Time in the move' }).focus();
  const atStart = await clock.textContent();
  for (let press = 0; press < 6; press += 1) await page.keyboard.press('ArrowRight');
  expect(await clock.textContent()).not.toBe(atStart);

  await page.locator('.scrub .clock').click();
  const seconds = async (): Promise<number> => Number.parseFloat((await clock.textContent()) ?? '');
  const beforeStep = await seconds();
  await page.keyboard.press('.');
  await page.keyboard.press('.');
  await page.keyboard.press(',');
  expect((await seconds()) - beforeStep).toBeCloseTo(1 / 24, 1);
  expect(await seconds()).not.toBe(beforeStep);

  const beforePlay = (await clock.textContent()) ?? '';
  await page.locator('.desk').press('Space');
  await page.locator('.scrub .clock').filter({ hasNotText: beforePlay }).waitFor();
  await page.locator('.desk').press('Space');
  expect(await page.getByRole('button', { name: 'Play' }).isVisible()).toBe(true);

  await page.getByRole('tab', { name: 'Set' }).click();
  await page.getByRole('searchbox', { name: 'find' }).fill('stand 1');
  await page.locator('.things button', { hasText: 'stand' }).first().click();
  const across = page.getByRole('textbox', { name: 'x, right', exact: true });
  const before = await across.inputValue();
  await page.locator('.desk').press('Shift+ArrowRight');
  const metres = (text: string): number => Number(text.replace('\u2212', '-'));
  expect(metres(await across.inputValue()) - metres(before)).toBeCloseTo(1);
  await page.keyboard.press('Control+z');
  expect(await across.inputValue()).toBe(before);
  await page.keyboard.press('Control+Shift+z');
  expect(await across.inputValue()).not.toBe(before);

  await across.fill('3 m wide');
  await across.press('Enter');
  expect(await page.locator('.err').textContent()).toContain('is not a length');
  await across.press('Escape');
  expect(await page.locator('.err').count()).toBe(0);
  expect(await seriousViolations(page)).toEqual([]);
});
