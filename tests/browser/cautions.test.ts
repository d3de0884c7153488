import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { DECK, flagOn, HOUSE, parapet, roof, standAt } from '../unit/cautions/roof';
import { seriousViolations } from './axe';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

const eventually = <Value>(read: () => Promise<Value>) => expect.poll(read, { timeout: 30_000 });

/** A flag on a stand in the middle of a roof whose parapet is too low, and a generator near its edge. */
const windyRoof = (): Plan => ({
  ...roof({
    pieces: [DECK, parapet(0.9), HOUSE],
    gear: [
      standAt('stand', [0, 0, 0], { label: 'Flag stand', heightMetres: 1.6 }),
      flagOn('flag', 'stand', { label: 'Flag', size: [0.45, 0.3] }),
      {
        id: 'generator',
        label: 'Generator',
        kind: 'generator',
        at: [8.5, 0, 4],
        headingDegrees: 0,
        size: [0.7, 0.6, 0.5],
      },
    ],
  }),
  title: 'Windy roof',
});

const sheet = (page: Page): Locator => page.locator('.cautions-view');
const row = (page: Page, words: string | RegExp): Locator =>
  sheet(page).locator('.caution-rows > li > button').filter({ hasText: words });
const field = (page: Page, label: string): Locator =>
  sheet(page).getByRole('textbox', { name: label, exact: true });
const waiting = (page: Page): Locator => page.locator('.top .cautions-waiting');
const numberWaiting = async (page: Page): Promise<number> =>
  Number(/\d+/.exec((await waiting(page).textContent()) ?? '')?.[0]);

async function turnDay(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Turn to day' }).click();
  await page.locator('html[data-theme="day"]').waitFor({ state: 'attached' });
}

test('a flag in the forecast wind is told to tip, bags hold it, another caution is noted, and both are undone', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutDemo] });
  await dropPlan(page, windyRoof());
  await waiting(page).click();
  await row(page, 'Flag stand with Flag tips in a gust of about').waitFor();
  await sheet(page).getByText('local code and a licensed or competent person').first().waitFor();
  expect(await row(page, /no wind is forecast/).count()).toBe(1);

  await field(page, 'wind').fill('12');
  await field(page, 'wind').press('Enter');
  await row(page, 'which is forecast. Put at least').waitFor();
  expect(await field(page, 'gust').getAttribute('placeholder')).toBe('18.4');
  const before = await numberWaiting(page);

  await row(page, 'Flag stand with Flag').click();
  await page.locator('.caution-open .wind').waitFor();
  await page.locator('.caution-open text', { hasText: /tips in .*Beaufort.*breeze/ }).waitFor();
  await sheet(page).getByText('Aeronautical Engineer’s Data Book').last().waitFor();
  await screenshot(page, 'cautions-wind');
  expect(await seriousViolations(page)).toEqual([]);
  const add = sheet(page).getByRole('button', { name: /^Add \d+ bags of 10\skg on Flag stand/ });
  const count = Number(/Add (\d+)/.exec((await add.textContent()) ?? '')?.[1]);
  await add.click();
  await row(page, 'Flag stand with Flag stands in gusts of 18.4\u00a0m/s').waitFor();
  await eventually(async () => {
    const stand = (await keptPlan(page)).gear.find(({ id }) => id === 'stand');
    return stand?.kind === 'stand' ? stand.bags : null;
  }).toEqual({ count, kilograms: 10 });
  await eventually(() => numberWaiting(page)).toBe(before - 1);

  await row(page, /Edge: .* of the edge of Deck/).click();
  await page.locator('.caution-open .edge').waitFor();
  await sheet(page).getByRole('button', { name: 'Note it' }).click();
  await sheet(page).getByText('Write what is done about it').waitFor();
  const note = sheet(page).getByRole('textbox', { name: 'what is done about it, or why it is accepted' });
  await note.fill('Line with flags 2 m in, key grip watches it');
  await note.press('Enter');
  await sheet(page).getByText('Noted: Line with flags 2 m in').waitFor();
  expect(await row(page, /Edge: .* of the edge of Deck/).count()).toBe(1);
  await eventually(() => numberWaiting(page)).toBe(before - 2);
  await turnDay(page);
  await screenshot(page, 'cautions-noted-day');
  expect(await seriousViolations(page)).toEqual([]);

  await sheet(page).getByRole('button', { name: 'Take the note back' }).click();
  await note.waitFor();
  await page.getByRole('button', { name: 'Undo', exact: true }).first().click();
  await sheet(page).getByText('Noted: Line with flags 2 m in').waitFor();
  for (const _ of ['the note', 'the bags']) await page.locator('.top button[aria-label="Undo"]').click();
  await row(page, 'which is forecast. Put at least').waitFor();
  await eventually(() => numberWaiting(page)).toBe(before);

  // The stand's own panel says it too, and has the same act.
  await page.getByRole('tab', { name: /Set/ }).click();
  await page.getByRole('searchbox', { name: 'find' }).fill('Flag stand');
  await page.locator('.things .thing', { hasText: 'Flag stand' }).first().click();
  const inWind = page.locator('.item-panel .stand-in-wind');
  await inWind.getByText('Flag stand with Flag tips in a gust of about').waitFor();
  await inWind.getByRole('button', { name: /^Add \d+ bags/ }).click();
  await inWind.getByText('Flag stand with Flag stands in gusts of 18.4\u00a0m/s').waitFor();
});

test('on a phone the count leads to the list; a way out is put by keys and renamed; a sign on the roof opens its caution', async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    before: [withoutPicture, withoutDemo],
  });
  await dropPlan(page, windyRoof());
  await waiting(page).tap();
  await row(page, 'Edge: ').first().waitFor();
  await eventually(async () => ((await row(page, 'Edge: ').first().boundingBox())?.y ?? 999) < 844).toBe(
    true,
  );
  await screenshot(page, 'cautions-phone');
  expect(await seriousViolations(page)).toEqual([]);

  await sheet(page)
    .getByRole('button', { name: /Put a way out on the roof/ })
    .tap();
  const drawing = page.locator('.sheet-drawing');
  await drawing.focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await eventually(async () => (await keptPlan(page)).cautions?.waysOut?.length).toBe(1);
  await page.locator('.way-out').waitFor();
  await field(page, 'name').fill('Hatch');
  await field(page, 'name').press('Enter');
  await page.locator('.way-out', { hasText: 'Hatch' }).waitFor();

  const putAt = async () => (await keptPlan(page)).cautions?.waysOut?.[0]?.at[0] ?? Number.NaN;
  const from = await putAt();
  await page.locator('.way-out').focus();
  await page.keyboard.press('ArrowRight');
  await eventually(putAt).toBeCloseTo(from + 0.1, 6);

  const sign = page.locator('.caution-sign').first();
  await sign.focus();
  await page.keyboard.press('Enter');
  await page.locator('.caution-sign.open').waitFor();
  await eventually(() => sheet(page).locator('[aria-expanded="true"]').count()).toBe(1);
  await turnDay(page);
  await screenshot(page, 'cautions-phone-day');
  expect(await seriousViolations(page)).toEqual([]);

  await page.locator('.way-out').focus();
  await page.keyboard.press('Delete');
  await eventually(async () => (await keptPlan(page)).cautions?.waysOut ?? null).toBeNull();
});
