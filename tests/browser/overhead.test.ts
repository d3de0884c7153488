import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { between, fingers, type Touch } from './fingers';
import { openPage, screenshot } from './harness';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time to draw. */
const eventually = <Value>(read: () => Promise<Value>) => expect.poll(read, { timeout: 30_000 });

/** CSS pixels that a metre takes at the scale in the title block. */
async function pixelsPerMetre(page: Page): Promise<number> {
  const scale = await page.locator('.titleblock dd').last().textContent();
  return 96 / 0.0254 / Number(/1\s*:\s*(\d+)/.exec(scale ?? '')?.[1]);
}

const standOf = (page: Page, name: string): Locator =>
  page.getByRole('button', { name: new RegExp(`^${name}, stand`) });

/** The middle of a stand's column, in pixels of the page. */
async function middleOf(stand: Locator): Promise<{ x: number; y: number }> {
  const box = await stand.locator('.tube').boundingBox();
  if (!box) throw new Error('the stand is not drawn');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** The same once it stays there: a page that still lays itself out takes a finger for one that scrolls. */
async function restingMiddle(page: Page, stand: Locator): Promise<{ x: number; y: number }> {
  let middle = { x: Number.NaN, y: Number.NaN };
  const stays = async (): Promise<boolean> => {
    const before = middle;
    await page.evaluate(
      () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
    );
    middle = await middleOf(stand);
    return middle.x === before.x && middle.y === before.y;
  };
  await eventually(stays).toBe(true);
  return middle;
}

/** How far the chosen thing is from the deck's left and top edges, by the chains of dimensions; metres. */
async function dimensioned(page: Page): Promise<{ x: number; z: number }> {
  const figures = await page.locator('.dimensions text').allTextContents();
  // The deck's two sides come first; then along x: left and right; then along z: above and below.
  expect(figures).toHaveLength(6);
  return { x: Number(figures[2]), z: Number(figures[4]) };
}

test('a stand dragged by a metre is a metre farther, and undo brings it back', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutReports] });
  const metre = await pixelsPerMetre(page);
  const stand = standOf(page, 'Lamp stand 3');
  const from = await middleOf(stand);
  await page.mouse.click(from.x, from.y);
  const before = await dimensioned(page);

  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + metre / 2, from.y, { steps: 3 });
  await page.mouse.move(from.x + metre, from.y, { steps: 3 });
  expect(await page.locator('.readout text').textContent()).toMatch(
    /^1\.00\u00a0m, \d+\.\d\d\u00a0m from the parapet(, in line with .+)?$/,
  );
  await eventually(() => page.locator('.ghost path').count()).toBeGreaterThan(3);
  await screenshot(page, 'overhead-dragging');
  await page.mouse.up();

  await eventually(() => page.locator('.ghost').count()).toBe(0);
  const after = await dimensioned(page);
  expect(after.x - before.x).toBeCloseTo(1, 2);
  expect(after.z).toBe(before.z);
  expect((await middleOf(stand)).x - from.x).toBeCloseTo(metre, 0);

  await page.keyboard.press('Control+z');
  await eventually(async () => (await dimensioned(page)).x).toBe(before.x);
});

test('Escape drops a drag, and Shift keeps it on one axis', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutReports] });
  const metre = await pixelsPerMetre(page);
  const stand = standOf(page, 'Lamp stand 3');
  const from = await middleOf(stand);
  await page.mouse.click(from.x, from.y);
  const before = await dimensioned(page);

  await page.mouse.down();
  await page.mouse.move(from.x + 2 * metre, from.y - metre, { steps: 4 });
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect(await dimensioned(page)).toEqual(before);
  const back = await middleOf(stand);
  expect(back.x).toBeCloseTo(from.x, 1);

  await page.mouse.move(from.x, from.y);
  await page.keyboard.down('Shift');
  await page.mouse.down();
  await page.mouse.move(from.x + 2 * metre, from.y - metre, { steps: 4 });
  await page.mouse.up();
  await page.keyboard.up('Shift');
  const after = await dimensioned(page);
  // Along its axis it may still catch on what it comes in line with.
  expect(Math.abs(after.x - before.x - 2)).toBeLessThan(0.3);
  expect(after.z).toBe(before.z);
});

test('the wheel zooms about the pointer, empty ground pans, and Fit and keys bring the whole roof back', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutReports] });
  const stand = standOf(page, 'Lamp stand 3');
  const from = await middleOf(stand);
  const before = await pixelsPerMetre(page);
  await page.mouse.move(from.x, from.y);
  await page.mouse.wheel(0, -400);
  await eventually(() => pixelsPerMetre(page)).toBeGreaterThan(before * 1.5);
  const zoomed = await middleOf(stand);
  // The pointer's place is a whole pixel to the page: so much it may be off.
  expect(Math.abs(zoomed.x - from.x)).toBeLessThan(1);
  expect(Math.abs(zoomed.y - from.y)).toBeLessThan(1);

  const empty = { x: from.x, y: from.y - 120 };
  await page.mouse.move(empty.x, empty.y);
  await page.mouse.down();
  await page.mouse.move(empty.x + 60, empty.y - 40, { steps: 3 });
  await page.mouse.up();
  const panned = await middleOf(stand);
  expect(panned.x - zoomed.x).toBeCloseTo(60, 0);
  expect(panned.y - zoomed.y).toBeCloseTo(-40, 0);

  await page.getByRole('button', { name: 'Fit' }).click();
  await eventually(() => pixelsPerMetre(page)).toBe(before);
  await stand.focus();
  await page.keyboard.press('+');
  await eventually(() => pixelsPerMetre(page)).toBeGreaterThan(before);
  await page.keyboard.press('0');
  await eventually(() => pixelsPerMetre(page)).toBe(before);
  await page.keyboard.press('Enter');
  await eventually(() => stand.getAttribute('aria-pressed')).toBe('true');
});

test('a finger drags a stand, and two fingers zoom', async () => {
  const page = await openPage({
    width: 1180,
    height: 820,
    touch: true,
    before: [withoutPicture, withoutReports],
  });
  const metre = await pixelsPerMetre(page);
  const stand = standOf(page, 'Lamp stand 3');
  const from = await middleOf(stand);
  await page.touchscreen.tap(from.x, from.y);
  const before = await dimensioned(page);
  const session = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: { x: number; y: number }[]) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: points.map((point, id) => ({ ...point, id })),
    });
  await touch('touchStart', from);
  await touch('touchMove', { x: from.x + metre, y: from.y });
  await touch('touchMove', { x: from.x + 2 * metre, y: from.y });
  await touch('touchEnd');
  await eventually(async () => (await dimensioned(page)).x - before.x).toBeCloseTo(2, 2);

  const middle = { x: from.x, y: from.y - 200 };
  await touch('touchStart', { x: middle.x - 50, y: middle.y }, { x: middle.x + 50, y: middle.y });
  await touch('touchMove', { x: middle.x - 100, y: middle.y }, { x: middle.x + 100, y: middle.y });
  await touch('touchEnd');
  await eventually(() => pixelsPerMetre(page)).toBeGreaterThan(metre * 1.9);
});

test('on a phone a finger on the empty roof scrolls the page, and on a stand it drags', async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    theme: 'day',
    before: [withoutPicture, withoutReports],
  });
  const board = page.locator('.overhead');
  await board.scrollIntoViewIfNeeded();
  const stand = standOf(page, 'Lamp stand 4');
  const drag = (from: Touch, by: number): Promise<void> =>
    fingers(page, between([from], [{ x: from.x, y: from.y + by }]));
  const top = async (): Promise<number> => (await board.boundingBox())?.y ?? Number.NaN;
  // The stand first: what a finger has thrown scrolls on for a while, and everything with it.
  const from = await restingMiddle(page, stand);
  const resting = await top();
  await drag(from, 40);
  await eventually(async () => (await middleOf(stand)).y - (await top()) - from.y + resting).toBeGreaterThan(
    25,
  );
  expect(await top()).toBe(resting);

  const box = await board.boundingBox();
  if (!box) throw new Error('the overhead is not on the page');
  // Beside the roof, where nothing stands.
  await drag({ x: box.x + box.width - 60, y: box.y + 30 }, 150);
  await eventually(async () => Math.abs((await top()) - resting)).toBeGreaterThan(40);

  expect(await page.getByRole('button', { name: 'Fit' }).count()).toBe(0);
  await screenshot(page, 'overhead-phone');
});

test.each(['night', 'day'] as const)('names never overlap, by %s', async (theme) => {
  const page = await openPage({ width: 1440, height: 900, theme, before: [withoutPicture, withoutReports] });
  const boxes = await page.locator('.lettering text').evaluateAll((texts) =>
    texts.map((text) => {
      const { left, top, right, bottom } = text.getBoundingClientRect();
      return { text: text.textContent, left, top, right, bottom };
    }),
  );
  expect(boxes.length).toBeGreaterThan(20);
  // A line of text reaches a little over and under its letters; a pixel of that may be shared.
  const overlaps = boxes.flatMap((a, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (b) =>
          Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 &&
          Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 3,
      )
      .map((b) => `${a.text} and ${b.text}`),
  );
  expect(overlaps).toEqual([]);
  await screenshot(page, `overhead-${theme}`);
});
