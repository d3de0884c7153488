import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { moveItem } from '../../src/core/plan/edits/moveItem';
import { removeItems } from '../../src/core/plan/edits/removeItems';
import { renameItem } from '../../src/core/plan/edits/renameItem';
import { setStop } from '../../src/core/plan/edits/setStop';
import { itemOf } from '../../src/core/plan/items';
import type { Choice } from '../../src/core/plan/merge/differences';
import { mergePlans } from '../../src/core/plan/merge/mergePlans';
import { serialisePlan } from '../../src/core/plan/serialise';
import { linkOfPlan } from '../../src/exchange/link/link';
import { DEMO, readPlan } from '../plans/readPlan';
import { seriousViolations } from './axe';
import { eventually } from './building';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withPlainFiles } from './plainFiles';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

const base = readPlan(DEMO);
const [setup] = base.setups;
/** They move two crates, take a third out and stop the first setup down. */
const theirs = [
  (plan: typeof base) => moveItem(plan, { id: 'crate-2', to: [3, -3] }),
  (plan: typeof base) => setStop(plan, { setupId: setup.id, stop: 8 }),
  (plan: typeof base) => renameItem(plan, { id: 'tank', label: 'Old tank' }),
  (plan: typeof base) => removeItems(plan, { ids: ['crate-3'] }),
].reduce((plan, edit) => edit(plan), base);

const BEFORE = [withoutPicture, withoutReports, withPlainFiles];
const sheet = (page: Page) => page.getByRole('region', { name: 'Compare with a copy' });
const row = (page: Page, name: string) => sheet(page).getByRole('listitem').filter({ hasText: name });

/** Whether the sheet's own words have the focus, and nothing lies over them. */
const hasFocus = (page: Page): Promise<boolean> =>
  sheet(page)
    .locator('h3')
    .evaluate((head) => {
      const { left, top, bottom } = head.getBoundingClientRect();
      return (
        document.activeElement === head && document.elementFromPoint(left + 2, (top + bottom) / 2) === head
      );
    });

/** Opens the sheet by the list of plans. */
async function compare(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Plans', exact: true }).filter({ visible: true }).press('Enter');
  await page.getByRole('button', { name: 'Compare with a file or link' }).press('Enter');
  await sheet(page).waitFor();
}

async function giveFile(page: Page, name: string, text: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Compare with a file', exact: true }).press('Enter'),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

test('theirs comes from a file, item by item by keys, against what both began with, and undo brings mine back', async () => {
  const page = await openPage({ width: 1440, height: 900, before: BEFORE });
  // Mine: the crate goes another way than theirs.
  await page.locator('[data-target="crate-2"]').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowRight');
  await eventually(async () => itemOf(await keptPlan(page), 'crate-2')).not.toEqual(itemOf(base, 'crate-2'));
  const mine = await keptPlan(page);
  await compare(page);
  await expect.poll(() => hasFocus(page)).toBe(true);
  await giveFile(page, 'torn.plan.json', serialisePlan(theirs).slice(0, 900));
  await sheet(page).getByRole('alert').filter({ hasText: 'torn.plan.json was not compared.' }).waitFor();
  await giveFile(page, 'theirs.plan.json', serialisePlan(theirs));
  await row(page, 'Old tank').or(row(page, 'Water tank')).first().waitFor();
  await expect.poll(() => hasFocus(page)).toBe(true);
  // A camera whose stop alone is another one stays where it is: nothing is drawn of it.
  await row(page, 'Setup A').getByRole('radio', { name: 'Theirs' }).focus();
  expect(await page.locator('.proposed-place').count()).toBe(0);
  // The page knows what both began with: only the crate is asked about, and first.
  const clash = sheet(page).getByRole('listitem').first();
  expect(await clash.textContent()).toMatch(/^! Choose: Crate 2 Changed by both\./);
  const take = page.getByRole('button', { name: 'Take it' });
  expect(await take.getAttribute('aria-disabled')).toBe('true');
  await take.press('Enter');
  expect(await keptPlan(page)).toEqual(mine);
  await clash.getByRole('radio', { name: 'Theirs' }).press('Space');
  // Looked at, theirs is drawn on the roof beside mine.
  await page.locator('.sheet-drawing .draft').first().waitFor({ state: 'attached' });
  await row(page, 'Water tank').getByRole('radio', { name: 'Theirs' }).press('ArrowLeft');
  expect(await row(page, 'Water tank').getByRole('radio', { name: 'Yours' }).isChecked()).toBe(true);
  expect(await seriousViolations(page)).toEqual([]);
  await screenshot(page, 'merge-desk');
  await page.getByRole('button', { name: 'Turn to day' }).press('Enter');
  await screenshot(page, 'merge-desk-day');
  await take.press('Enter');
  const choices = new Map<string, Choice>([
    ['item/crate-2', 'theirs'],
    ['item/tank', 'mine'],
  ]);
  const merged = mergePlans(mine, theirs, choices, base).plan;
  await eventually(async () => serialisePlan(await keptPlan(page))).toBe(serialisePlan(merged));
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toMatch(/^tab-/);
  expect(itemOf(merged, 'crate-3')).toBeNull();
  expect(merged.setups[0].stop).toBe(8);
  await page.getByRole('button', { name: 'Undo' }).first().press('Enter');
  await eventually(async () => serialisePlan(await keptPlan(page))).toBe(serialisePlan(mine));
});

test('theirs comes from a link on a phone and is chosen by touch; a cut link says so', async () => {
  const page = await openPage({ width: 390, height: 844, touch: true, before: BEFORE });
  await page.getByText('more', { exact: true }).first().tap();
  await compare(page);
  const link = `https://standclear.example/#${linkOfPlan(theirs).fragment}`;
  const field = sheet(page).getByRole('textbox', { name: 'a link' });
  // On a phone the sheet lies under the roof, out of sight.
  await expect.poll(() => hasFocus(page)).toBe(true);
  await field.fill(link.slice(0, -40));
  await sheet(page).getByRole('button', { name: 'Compare with the link' }).tap();
  await sheet(page).getByRole('alert').filter({ hasText: 'This link' }).waitFor();
  await field.fill(link);
  await sheet(page).getByRole('button', { name: 'Compare with the link' }).tap();
  const theirRadio = row(page, 'Crate 2').locator('label', { hasText: 'Theirs' });
  await theirRadio.tap();
  const box = await theirRadio.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(48);
  expect(await sheet(page).evaluate(({ scrollWidth, clientWidth }) => scrollWidth <= clientWidth)).toBe(true);
  expect(await seriousViolations(page)).toEqual([]);
  await screenshot(page, 'merge-phone');
  await page.getByRole('button', { name: 'Take it' }).tap();
  const merged = mergePlans(base, theirs, new Map<string, Choice>([['item/crate-2', 'theirs']])).plan;
  await eventually(async () => serialisePlan(await keptPlan(page))).toBe(serialisePlan(merged));
});
