import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { BUILDING, eventually, pressAt } from './building';
import { openPage, screenshot, waitUntilReady } from './harness';
import { withoutReports } from './withoutReports';

const DESK = { width: 1440, height: 900, before: [...BUILDING, withoutReports] };
const hint = (page: Page) => page.locator('.hint');
const words = (page: Page): Promise<string | null> => hint(page).locator('p').textContent();
const title = (page: Page): Promise<string | null> => page.locator('.top h2').textContent();

/** What the cards are called, and the plans that they open. */
const TITLES: Readonly<Record<string, string>> = {
  'Nothing yet': 'New roof',
  'Empty roof': 'Empty roof',
  'Tenement roof': 'Mercers Row',
  'Warehouse, L-shaped': 'Warehouse 9',
  'Terrace and tower': 'Terrace at Colle Sereno',
  'Loft Night': 'Loft Night',
};

async function openStarts(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Plans', exact: true }).click();
  await page.getByRole('button', { name: 'New plan', exact: true }).click();
  await page.getByRole('dialog', { name: 'A new plan' }).waitFor();
  // All have come once none is still without its name and picture.
  await eventually(() => page.locator('.start:disabled').count()).toBe(0);
}

async function begin(page: Page, name: RegExp): Promise<void> {
  await openStarts(page);
  await page.getByRole('button', { name }).click();
  await page.getByRole('dialog', { name: 'A new plan' }).waitFor({ state: 'hidden' });
}

test('there are five hints at most, each goes by Next, and they are counted', async () => {
  const page = await openPage(DESK);
  const seen: string[] = [];
  while ((await hint(page).count()) > 0) {
    const text = (await words(page)) ?? '';
    expect(seen).not.toContain(text);
    seen.push(text);
    expect(await hint(page).textContent()).toContain(`${seen.length} of 5`);
    await hint(page).getByRole('button', { name: 'Next' }).click();
    await eventually(async () => ((await hint(page).count()) > 0 ? words(page) : null)).not.toBe(text);
  }
  expect(seen.length).toBeGreaterThan(1);
  expect(seen.length).toBeLessThanOrEqual(5);
});

test('a hint goes when its act is done, and not because another plan is opened; “No more” holds', async () => {
  const page = await openPage(DESK);
  const first = await words(page);
  expect(first).toMatch(/^Drag a lamp stand/);
  await begin(page, /^Nothing yet/);
  await eventually(() => words(page)).toMatch(/^Pick deck on the Set sheet/);
  // It was never done: it is not used up.
  expect(await hint(page).textContent()).toContain('1 of 5');
  await screenshot(page, 'hint-on-bare-paper');

  // It lies over the roof, and a press goes through it to the roof.
  await page.getByRole('button', { name: 'deck', exact: true }).click();
  const over = await hint(page).locator('p').boundingBox();
  if (!over) throw new Error('there is no hint');
  await page.mouse.move(over.x + 20, over.y + 8, { steps: 2 });
  await page.mouse.down();
  await page.mouse.up();
  await eventually(() => page.locator('.drafting .draft-post').count()).toBe(1);
  for (const place of [
    [6, 3],
    [-6, 3],
  ] as const)
    await pressAt(page, place);
  await page.keyboard.press('e');
  await eventually(() => words(page)).toMatch(/^Pick a lamp on the Set sheet/);
  // Taken back, the deck is not asked for again.
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+z');
  await eventually(() => page.locator('.dimensions').count()).toBe(0);
  expect((await hint(page).count()) > 0 ? await words(page) : '').not.toMatch(/^Pick deck/);
  await page.keyboard.press('Control+Shift+z');

  await hint(page).getByRole('button', { name: 'No more' }).click();
  await hint(page).waitFor({ state: 'detached' });
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  await page.locator('.sheet-drawing').waitFor();
  expect(await hint(page).count()).toBe(0);
});

test('each start shows its roof and opens as a plan of its own', async () => {
  const page = await openPage(DESK);
  await openStarts(page);
  const cards = page.locator('.start');
  const count = await cards.count();
  expect(count).toBe(6);
  const pictures = await cards.evaluateAll((all) =>
    all.map((card) => card.querySelector('.roof-picture')?.innerHTML ?? ''),
  );
  expect(new Set(pictures).size).toBe(count);
  for (const picture of pictures) expect(picture).not.toBe('');
  await screenshot(page, 'starts');
  const names = await cards.locator('.name').allTextContents();
  expect(names).toEqual(Object.keys(TITLES));
  await page.getByRole('button', { name: 'Close' }).last().click();

  for (const name of names) {
    await begin(page, new RegExp(`^${name}`));
    await eventually(() => title(page)).toBe(TITLES[name]);
    const decks = await page.locator('.to-scale .deck-fill').count();
    if (name === 'Nothing yet') expect(decks).toBe(0);
    else expect(decks).toBeGreaterThan(0);
  }
}, 300_000);

test.each([
  ['without its gear', false],
  ['with its gear', true],
] as const)('a new plan starts from this one, %s', async (_, withGear) => {
  const page = await openPage(DESK);
  await openStarts(page);
  const form = page.getByRole('dialog', { name: 'A new plan' });
  if (withGear) await form.getByRole('checkbox', { name: 'the gear' }).check();
  await form.getByRole('button', { name: 'Start from this plan' }).click();
  await eventually(() => title(page)).toBe('Loft Night, again');
  const stands = page.locator('.sheet-drawing').getByRole('button', { name: /^Lamp stand \d+, stand/ });
  await page
    .locator('.sheet-drawing')
    .getByRole('button', { name: /^Water tank/ })
    .waitFor({ state: 'attached' });
  if (withGear) expect(await stands.count()).toBeGreaterThan(3);
  else expect(await stands.count()).toBe(0);
  expect(await page.locator('.strip .card').count()).toBe(0);
});
