import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { itemsOf } from '../../src/core/plan/items';
import {
  BUILDING,
  cardVerdict,
  dimensionWords,
  eventually,
  pixelOf,
  pressAt,
  savedPlan,
  sizeOfDeck,
} from './building';
import { openPage, screenshot } from './harness';

const drawn = (page: Page, name: RegExp) => page.locator('.sheet-drawing').getByRole('button', { name });

/** Drags from one place of the page to another by steps, as a hand does. */
async function drag(
  page: Page,
  from: { readonly x: number; readonly y: number },
  to: { readonly x: number; readonly y: number },
): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 8 });
  await page.mouse.up();
}

/** The middle of a stand's column on the page. */
async function columnOf(page: Page, name: RegExp): Promise<{ readonly x: number; readonly y: number }> {
  const box = await drawn(page, name).locator('.tube').first().boundingBox();
  if (!box) throw new Error(`${name} is not drawn`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test('a roof from nothing to a clear frame by a mouse alone', async () => {
  const page = await openPage({
    width: 1440,
    height: 900,
    before: [
      ...BUILDING,
      () => {
        const typed: string[] = [];
        Object.assign(window, { typed });
        window.addEventListener('keydown', ({ key }) => typed.push(key), true);
      },
    ],
  });
  await page.getByRole('button', { name: 'Plans', exact: true }).click();
  await page.getByRole('button', { name: 'New plan', exact: true }).click();
  await page.getByRole('button', { name: /^Nothing yet/ }).click();
  await page.locator('.top h2', { hasText: 'New roof' }).waitFor();

  // The deck, corner by corner, and back to the first one.
  await page.getByRole('button', { name: 'deck', exact: true }).click();
  await page.locator('.strokes.picked').waitFor({ state: 'attached' });
  await pressAt(page, [-6, -4]);
  await pressAt(page, [6, -4]);
  await pressAt(page, [6, 4]);
  await pressAt(page, [-6, 4]);
  await eventually(() => page.locator('.drafting .draft-post').count()).toBe(4);
  await pressAt(page, [-6, -4]);
  await eventually(() => dimensionWords(page)).toEqual(
    expect.arrayContaining(['12.00\u00a0m', '8.00\u00a0m']),
  );
  await page.getByRole('button', { name: 'Put it down' }).last().click();

  // A corner is pulled out by its handle, by one metre, and put back by the undo button.
  const corner = await page.locator('[data-handle="corner  1"] .handle-area').boundingBox();
  if (!corner) throw new Error('the deck shows no corner to pull');
  const [held, outside] = [await pixelOf(page, [6, -4]), await pixelOf(page, [7, -4])];
  expect(Math.abs(corner.x + corner.width / 2 - held.x)).toBeLessThan(2);
  await drag(page, held, outside);
  await eventually(() => dimensionWords(page)).toEqual(
    expect.arrayContaining(['13.00\u00a0m', '8.00\u00a0m']),
  );
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await eventually(() => dimensionWords(page)).toEqual(
    expect.arrayContaining(['12.00\u00a0m', '8.00\u00a0m']),
  );

  await page.locator('.empty').getByRole('button', { name: 'Place a camera' }).click();
  await eventually(() => cardVerdict(page)).toBe('clear');

  await page.getByRole('button', { name: 'man', exact: true }).click();
  await page.locator('.strokes.picked').waitFor({ state: 'attached' });
  await pressAt(page, [0, -1]);
  await drawn(page, /^Man 1, performer/).waitFor({ state: 'attached' });
  await page.getByRole('button', { name: 'Put it down' }).last().click();

  // A lamp with its stand is dragged out of the palette onto the roof.
  const entry = page.getByRole('button', { name: 'spot, 300 W', exact: true });
  await entry.scrollIntoViewIfNeeded();
  const cell = await entry.boundingBox();
  if (!cell) throw new Error('the palette shows no lamp');
  await drag(page, { x: cell.x + 12, y: cell.y + 12 }, await pixelOf(page, [1, -1]));
  await drawn(page, /^Lamp stand 1, stand/).waitFor({ state: 'attached' });
  await eventually(() => cardVerdict(page)).toBe('showing');
  expect(await drawn(page, /^Head 1, head/).getAttribute('aria-pressed')).toBe('true');

  // The sheet says what shows; pressed, the sentence chooses what it speaks of.
  await page.getByRole('tab', { name: /Frames/ }).click();
  const finding = page.locator('.findings li', { hasText: 'Lamp stand 1' }).first();
  await eventually(() => finding.textContent()).toMatch(/^Lamp stand 1: .*column.* shows? .* of the frame\./);
  await finding.click();
  await eventually(() => drawn(page, /^Lamp stand 1, stand/).getAttribute('aria-pressed')).toBe('true');
  await screenshot(page, 'mouse-finding');

  await drag(page, await columnOf(page, /^Lamp stand 1/), await pixelOf(page, [5.3, 1.5]));
  await eventually(() => cardVerdict(page)).toBe('clear');
  await eventually(() => page.locator('.all-clear').textContent()).toMatch(
    /Nothing that should keep out shows/,
  );
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await eventually(() => cardVerdict(page)).toBe('showing');
  await page.getByRole('button', { name: 'Redo' }).first().click();
  await eventually(() => cardVerdict(page)).toBe('clear');
  await screenshot(page, 'mouse-clear');

  const plan = await savedPlan(page, () => page.getByRole('button', { name: 'Save', exact: true }).click());
  const [width, depth] = sizeOfDeck(plan);
  expect([width, depth]).toEqual([expect.closeTo(12, 6), expect.closeTo(8, 6)]);
  expect(itemsOf(plan).map(({ record }) => record.label)).toEqual(
    expect.arrayContaining(['Deck 1', 'Man 1', 'Lamp stand 1', 'Head 1']),
  );
  const stand = plan.gear.find(({ kind }) => kind === 'stand');
  if (stand?.kind !== 'stand') throw new Error('the saved plan has no stand');
  expect(stand.at[0]).toBeGreaterThan(4.5);
  expect(await page.evaluate(() => (window as unknown as { typed: string[] }).typed)).toEqual([]);
}, 300_000);
