import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { wetnessAt } from '../../src/core/plan/wetness';
import { eventually, onGridAlone, pixelOf, pressAt } from './building';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

const CORNERS = [
  [6.5, -2],
  [9, -2],
  [9, 0.5],
] as const;

const areasOf = async (page: Page): Promise<number> => (await keptPlan(page)).ground.areas?.length ?? 0;

test('a dry patch is drawn, made damp by numbers and by the menu, shaped, moved and taken out by keys, and all undone', async () => {
  const page = await openPage({
    width: 1440,
    height: 900,
    before: [onGridAlone, withoutPicture, withoutReports],
  });
  await page.getByRole('tab', { name: /Set/ }).click();
  await page.getByRole('button', { name: 'dry area', exact: true }).click();
  for (const spot of CORNERS) await pressAt(page, spot);
  await page.keyboard.press('e');
  const area = page.locator('.sheet-drawing').getByRole('button', { name: 'Dry area 1 of the ground' });
  await eventually(() => area.getAttribute('aria-pressed')).toBe('true');
  await eventually(() => areasOf(page)).toBe(1);
  expect(wetnessAt(await keptPlan(page), [8.5, -1.5])).toBe('dry');
  await page.keyboard.press('Escape');

  // The panel of what is chosen: how wet, what it is called, how long its edges are.
  await page.getByLabel('wetness').selectOption('damp');
  await page.getByRole('textbox', { name: 'name', exact: true }).fill('By the bulbs');
  await page.keyboard.press('Enter');
  const named = page
    .locator('.sheet-drawing')
    .getByRole('button', { name: 'By the bulbs, damp area of the ground' });
  await named.waitFor();
  await screenshot(page, 'wet-area-panel');

  // By keys: a press of Enter on it goes on to its corners; Delete takes out what is chosen.
  await named.focus();
  await page.keyboard.press('Shift+ArrowUp');
  await eventually(async () => (await keptPlan(page)).ground.areas?.[0].outline[0]).toEqual([6.5, -3]);
  await page.keyboard.press('Enter');
  await eventually(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toContain(
    'Corner 1 of 3 of by the bulbs',
  );

  // On the ground of it the menu speaks of the area.
  const { x, y } = await pixelOf(page, [8.4, -2.6]);
  await page.mouse.click(x, y, { button: 'right' });
  await page.getByRole('menuitem', { name: 'How wet this area is' }).click();
  await page.getByRole('menuitem', { name: 'Let it stand in puddles' }).click();
  await eventually(async () => wetnessAt(await keptPlan(page), [8.5, -2.5])).toBe('puddled');
  await page.keyboard.press('Delete');
  await eventually(() => areasOf(page)).toBe(0);
  for (let step = 0; step < 6; step += 1) await page.keyboard.press('Control+z');
  await eventually(() => areasOf(page)).toBe(0);
  await page.keyboard.press('Control+Shift+z');
  await eventually(() => areasOf(page)).toBe(1);
});
