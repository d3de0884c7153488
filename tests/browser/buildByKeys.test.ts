import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { BUILDING, cardVerdict, dimensionWords, eventually, savedPlan, sizeOfDeck } from './building';
import { openPage, screenshot } from './harness';

/** What has the focus: its name, or its words. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const { activeElement: here } = document;
    return (here?.getAttribute('aria-label') ?? here?.textContent ?? '').trim();
  });

const says = (page: Page) => page.locator('[data-stroke-spoken]');

/** Goes on by Tab until what has the focus is called so. */
async function tabTo(page: Page, name: RegExp, most = 80): Promise<void> {
  for (let step = 0; step < most; step += 1) {
    if (name.test(await focused(page))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never came to ${name}; it is at ${await focused(page)}`);
}

/** Goes on by Tab to the search of the Set sheet, types a word and takes what it finds into the hand. */
async function take(page: Page, search: string, word: string): Promise<void> {
  const field = page.getByRole('searchbox', { name: 'find' });
  const entry = page.getByRole('button', { name: word, exact: true });
  for (let step = 0; step < 80 && !(await isFocused(field)); step += 1) await page.keyboard.press('Tab');
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(search);
  await entry.waitFor();
  for (let step = 0; step < 12 && !(await isFocused(entry)); step += 1) {
    await page.keyboard.press((await inPalette(page)) ? 'ArrowRight' : 'Tab');
  }
  await page.keyboard.press('Enter');
  await eventually(() => says(page).textContent()).toMatch(/in the hand\. Arrows point/);
}

const isFocused = (element: ReturnType<Page['locator']>): Promise<boolean> =>
  element.evaluate((each) => each === document.activeElement);
const inPalette = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.activeElement?.closest('.palette') !== null);

test('a roof from nothing to a clear frame by keys alone', async () => {
  const page = await openPage({
    width: 1440,
    height: 900,
    before: [
      ...BUILDING,
      () => {
        const pointed: string[] = [];
        Object.assign(window, { pointed });
        for (const type of ['pointerdown', 'mousedown', 'touchstart', 'wheel'])
          window.addEventListener(type, () => pointed.push(type), true);
      },
    ],
  });

  await tabTo(page, /^Plans$/);
  await page.keyboard.press('Enter');
  await page.getByRole('dialog', { name: 'Plans on this device' }).waitFor();
  await tabTo(page, /^New plan$/);
  await page.keyboard.press('Enter');
  await page.locator('.start:not([disabled])').first().waitFor();
  await tabTo(page, /^Nothing yet/);
  await page.keyboard.press('Enter');
  await page.locator('.top h2', { hasText: 'New roof' }).waitFor();
  // The keys are where the next act is.
  await eventually(() => focused(page)).toMatch(/Set$/);
  expect(await dimensionWords(page)).toEqual([]);

  // The deck: its first corner where the crosshair appears, the others by lengths and bearings.
  await take(page, 'deck', 'deck');
  await page.keyboard.press('Enter');
  await eventually(() => says(page).textContent()).toMatch(/from its middle$/);
  await page.keyboard.press('Enter');
  for (const [length, bearing] of [
    ['12', '90'],
    ['8', '180'],
    ['12', '270'],
  ] as const) {
    await page.keyboard.type(length);
    await page.keyboard.press('Tab');
    await page.keyboard.type(bearing);
    await page.keyboard.press('Enter');
  }
  await page.keyboard.press('e');
  await eventually(() => dimensionWords(page)).toEqual(
    expect.arrayContaining(['12.00\u00a0m', '8.00\u00a0m']),
  );
  await page.keyboard.press('Escape');
  await screenshot(page, 'keys-deck');

  await tabTo(page, /^Place a camera$/);
  await page.keyboard.press('Enter');
  await eventually(() => focused(page)).toMatch(/Setup 1/);
  await eventually(() => cardVerdict(page)).toBe('clear');

  await take(page, 'man', 'man');
  await page.keyboard.press('ArrowUp');
  await eventually(() => says(page).textContent()).toMatch(/from the deck’s edge/);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await take(page, 'spot, 300', 'spot, 300 W');
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await eventually(() => cardVerdict(page)).toBe('lost in the dark');

  // What the sheet says of it, in a sentence.
  await tabTo(page, /^Lamp stand 1, stand/);
  await page.keyboard.press('Enter');
  await page.keyboard.press('3');
  const sentence = page.locator('.findings li', { hasText: 'Lamp stand 1' });
  await eventually(() => sentence.first().textContent()).toMatch(
    /^Lamp stand 1: .*column.* (is|are) .*, lost in the dark\.$/,
  );
  await screenshot(page, 'keys-finding');

  // Nudged out of the frame; each run of nudges is a step that can be taken back.
  const stand = page.locator('.sheet-drawing').getByRole('button', { name: /^Lamp stand 1, stand/ });
  for (let step = 0; step < 8 && (await cardVerdict(page)) !== 'clear'; step += 1) {
    const before = await stand.locator('.tube').first().boundingBox();
    await page.keyboard.press('Shift+ArrowRight');
    await eventually(async () => (await stand.locator('.tube').first().boundingBox())?.x).not.toBe(before?.x);
    await page.locator('.strip .card', { hasText: /lost|close|clear/ }).waitFor();
  }
  await eventually(() => cardVerdict(page)).toBe('clear');
  await eventually(() => page.locator('.all-clear').textContent()).toMatch(
    /Nothing that should keep out shows/,
  );
  await eventually(() => stand.getAttribute('aria-label')).toMatch(/is clear in setup A$/);

  // On a slow machine each nudge is a step of its own, and the last may have come before the card had its word.
  let undone = 0;
  const tube = stand.locator('.tube').first();
  do {
    const before = await tube.boundingBox();
    await page.keyboard.press('Control+z');
    await eventually(async () => (await tube.boundingBox())?.x).not.toBe(before?.x);
    undone += 1;
    await page.getByRole('progressbar', { name: 'Reading the night' }).waitFor({ state: 'detached' });
  } while (undone < 8 && (await cardVerdict(page)) === 'clear');
  await eventually(() => cardVerdict(page)).not.toBe('clear');
  for (let step = 0; step < undone; step += 1) await page.keyboard.press('Control+Shift+z');
  await eventually(() => cardVerdict(page)).toBe('clear');
  await screenshot(page, 'keys-clear');

  const plan = await savedPlan(page, () => page.keyboard.press('Control+s'));
  expect(plan.title).toBe('New roof');
  const [width, depth] = sizeOfDeck(plan);
  expect([width, depth]).toEqual([expect.closeTo(12, 6), expect.closeTo(8, 6)]);
  expect(plan.gear.map(({ kind }) => kind).sort()).toEqual(['head', 'stand']);
  expect([plan.cast.length, plan.setups.length]).toEqual([1, 1]);
  expect(await page.evaluate(() => (window as unknown as { pointed: string[] }).pointed)).toEqual([]);
}, 300_000);
