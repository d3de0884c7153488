import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { onGridAlone, pixelOf } from './building';
import { openPage, screenshot } from './harness';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time to draw. */
const eventually = <Value>(read: () => Promise<Value>) => expect.poll(read, { timeout: 30_000 });

const DESK = { width: 1440, height: 900, before: [onGridAlone, withoutPicture, withoutReports] };

async function moveTo(page: Page, x: number, z: number): Promise<void> {
  const at = await pixelOf(page, [x, z]);
  await page.mouse.move(at.x, at.y, { steps: 3 });
}

/** Picks something from the palette of the set's sheet. */
async function pick(page: Page, word: string, how: 'click' | 'tap' = 'click'): Promise<void> {
  const tab = page.getByRole('tab', { name: /Set/ });
  const entry = page.getByRole('button', { name: word, exact: true });
  await (how === 'tap' ? tab.tap() : tab.click());
  await (how === 'tap' ? entry.tap() : entry.click());
  await page.locator('.strokes.picked').waitFor({ state: 'attached' });
}

const drawn = (page: Page, name: RegExp): Locator =>
  page.locator('.sheet-drawing').getByRole('button', { name });
const chip = (page: Page): Locator => page.locator('.drafting .chip-text');
const corners = (page: Page): Locator => page.locator('.drafting .draft-post');

test('by mouse: a fence of three corners, one leg typed as 4.8 m, ends with a double press', async () => {
  const page = await openPage(DESK);
  await pick(page, 'mesh fence');
  await moveTo(page, -9, 3);
  await page.mouse.down();
  await page.mouse.up();
  await moveTo(page, -6, 3);
  await eventually(() => chip(page).textContent()).toBe('3.00\u00a0m');
  await eventually(() => page.locator('.draft-dimension text').last().textContent()).toBe(
    '2 bays of 1.50\u00a0m',
  );
  await eventually(() => page.locator('.choice.draft').count()).toBe(1);

  await page.keyboard.type('4.8');
  const entry = page.locator('.stroke-entry input');
  await eventually(() => entry.inputValue()).toBe('4.8');
  await eventually(() => chip(page).textContent()).toBe('4.80\u00a0m');
  await screenshot(page, 'drawing-typed');
  await page.keyboard.press('Enter');
  await moveTo(page, -4.2, 5);
  await eventually(() => chip(page).textContent()).toBe('2.00\u00a0m');
  await screenshot(page, 'drawing-fence');
  const last = await pixelOf(page, [-4.2, 5]);
  await page.mouse.dblclick(last.x, last.y);

  // It is chosen, and in the plan: what was dashed is solid.
  const fence = drawn(page, /^Mesh fence 1, fence/);
  await eventually(() => fence.getAttribute('aria-pressed')).toBe('true');
  await eventually(() => page.locator('.choice.draft').count()).toBe(0);
  await page.keyboard.press('Escape');
  await eventually(() => page.locator('.strokes.picked').count()).toBe(0);
  await page.keyboard.press('Control+z');
  await eventually(() => fence.count()).toBe(0);
});

test('what cannot be a length says so beside it, and nothing changes', async () => {
  const page = await openPage(DESK);
  await pick(page, 'wall');
  await moveTo(page, -9, 3);
  await page.mouse.down();
  await page.mouse.up();
  await moveTo(page, -6, 3);
  await eventually(() => chip(page).textContent()).toBe('3.00\u00a0m');
  const entry = page.locator('.stroke-entry input');
  const refusal = page.locator('.stroke-refusal');
  await page.keyboard.type('1');
  for (const [text, sentence] of [
    ['abc', /metres, such as/],
    ['1e9 m', /metres, such as/],
    ['0', /more than nothing/],
    ['900 m', /at most 500 m/],
  ] as const) {
    await entry.fill(text);
    await entry.press('Enter');
    await eventually(() => refusal.textContent()).toMatch(sentence);
    expect(await chip(page).textContent()).toBe('3.00\u00a0m');
  }
  await entry.press('Escape');
  await eventually(() => entry.count()).toBe(0);
  // One corner is no wall; the stroke stays.
  await page.keyboard.press('e');
  await eventually(() => refusal.textContent()).toBe('A wall needs two corners, and has one.');
  expect(await corners(page).count()).toBe(1);
});

test('by keys alone: a wall, with the crosshair read out', async () => {
  const page = await openPage(DESK);
  await page.getByRole('tab', { name: /Set/ }).focus();
  await page.keyboard.press('Enter');
  const wall = page.getByRole('button', { name: 'wall', exact: true });
  await wall.focus();
  await page.keyboard.press('Enter');
  const spoken = page.locator('[data-stroke-spoken]');
  await eventually(() => spoken.textContent()).toMatch(/^Wall in the hand\. Arrows point by 0\.10\u00a0m/);
  await page.keyboard.press('ArrowDown');
  await eventually(() => spoken.textContent()).toMatch(/from the parapet/);
  const before = await spoken.textContent();
  await page.keyboard.press('Shift+ArrowDown');
  await eventually(() => spoken.textContent()).not.toBe(before);
  await page.keyboard.press('Enter');
  await page.keyboard.type('3');
  await page.keyboard.press('Tab');
  await page.keyboard.type('90');
  await page.keyboard.press('Enter');
  await eventually(() => corners(page).count()).toBe(2);
  await page.keyboard.press('Backspace');
  await eventually(() => corners(page).count()).toBe(1);
  for (let step = 0; step < 20; step += 1) await page.keyboard.press('ArrowRight');
  // The crosshair stays where it was when its corner is taken back.
  await eventually(() => spoken.textContent()).toMatch(/5\.00\u00a0m long, bearing 90°/);
  await page.keyboard.press('Enter');
  await page.keyboard.press('e');
  await eventually(() => drawn(page, /^Wall 1, wall/).getAttribute('aria-pressed')).toBe('true');
  await page.keyboard.press('Escape');
  await eventually(() => spoken.textContent()).toBe('');
});

test('a tape stays where it was laid, until it is undone', async () => {
  const page = await openPage(DESK);
  await page.getByRole('button', { name: 'Tape', exact: true }).click();
  await moveTo(page, -6, 4.5);
  await page.mouse.down();
  await moveTo(page, -3, 4.5);
  await page.mouse.up();
  const tape = page.locator('.tapes text');
  await eventually(() => tape.allTextContents()).toEqual(['3.00\u00a0m']);
  await page.keyboard.press('Escape');
  expect(await tape.count()).toBe(1);
  await page.keyboard.press('Control+z');
  await eventually(() => tape.count()).toBe(0);
});

test('a way through a wall is pointed out on it: live, as wide as it is dragged', async () => {
  const page = await openPage(DESK);
  await pick(page, 'wall');
  for (const x of [-9, -4]) {
    await moveTo(page, x, 4.5);
    await page.mouse.down();
    await page.mouse.up();
  }
  await eventually(() => corners(page).count()).toBe(2);
  await page.keyboard.press('e');
  await eventually(() => drawn(page, /^Wall 1, wall/).getAttribute('aria-pressed')).toBe('true');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Point it out on the roof' }).click();
  await moveTo(page, -8, 4.5);
  await eventually(() => chip(page).textContent()).toBe('0.90\u00a0m');
  await page.mouse.down();
  await moveTo(page, -6.5, 4.5);
  await eventually(() => chip(page).textContent()).toMatch(/^1\.(49|5\d)\u00a0m$/);
  await page.mouse.up();
  await page.keyboard.press('Escape');
  await eventually(() => page.locator('.strokes.picked').count()).toBe(0);
  // Its panel has it now, with the width that was drawn.
  await eventually(() => page.getByText('No opening yet').count()).toBe(0);
});

test('dragged out of the palette it is put where it is let go; let go elsewhere, or with Escape, it is dropped', async () => {
  const page = await openPage(DESK);
  await page.getByRole('tab', { name: /Set/ }).click();
  const cell = page.getByRole('button', { name: 'box', exact: true });
  // Clear of the line that says that there is more below.
  await cell.evaluate((each) => each.scrollIntoView({ block: 'center' }));
  const box = await cell.boundingBox();
  const frame = await page.locator('.frame-pane').boundingBox();
  if (!box || !frame) throw new Error('the palette and the frame are not there');
  const boxes = drawn(page, /^Box 1, box/);
  const drag = async (x: number, y: number, finish: () => Promise<void>): Promise<void> => {
    await page.mouse.move(box.x + 12, box.y + 12);
    await page.mouse.down();
    await page.mouse.move(x, y, { steps: 6 });
    await finish();
    await page.mouse.up();
  };
  const roof = await pixelOf(page, [-6, 4.5]);
  const isDrafted = () => eventually(() => page.locator('.choice.draft').count()).toBe(1);
  await drag(roof.x, roof.y, async () => {
    await isDrafted();
    await page.keyboard.press('Escape');
  });
  await drag(frame.x + 200, frame.y + 200, async () => {});
  await eventually(() => page.locator('.strokes.picked').count()).toBe(0);
  expect(await boxes.count()).toBe(0);
  await drag(roof.x, roof.y, isDrafted);
  await eventually(() => boxes.getAttribute('aria-pressed')).toBe('true');
});

test('by touch alone: an outline of three taps, ended by its button', async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    theme: 'day',
    before: [withoutPicture, withoutReports],
  });
  await pick(page, 'deck', 'tap');
  await page.locator('.sheet-drawing').scrollIntoViewIfNeeded();
  const places = [
    [-9, 2],
    [-3, 2],
    [-3, 6],
  ] as const;
  for (const [index, place] of places.entries()) {
    const at = await pixelOf(page, place);
    await page.touchscreen.tap(at.x, at.y);
    await eventually(() => corners(page).count()).toBe(index + 1);
  }
  const end = page.getByRole('button', { name: 'End', exact: true });
  const size = await end.boundingBox();
  expect(size?.height).toBeGreaterThanOrEqual(48);
  expect(size?.width).toBeGreaterThanOrEqual(48);
  await screenshot(page, 'drawing-touch');
  await end.tap();
  await eventually(() => corners(page).count()).toBe(0);
  await eventually(() => page.locator('.to-scale .deck-fill').count()).toBe(2);
  await page.getByRole('button', { name: 'Put it down' }).first().tap();
  await eventually(() => page.locator('.strokes.picked').count()).toBe(0);
});
