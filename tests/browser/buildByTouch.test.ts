import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import {
  BUILDING,
  cardVerdict,
  dimensionWords,
  eventually,
  pixelOf,
  savedPlan,
  sizeOfDeck,
} from './building';
import { between, fingers, type Touch } from './fingers';
import { openPage, screenshot } from './harness';

const drawn = (page: Page, name: RegExp) => page.locator('.sheet-drawing').getByRole('button', { name });
async function tapRoof(page: Page, place: readonly [number, number]): Promise<void> {
  await page.locator('.sheet-drawing').scrollIntoViewIfNeeded();
  const { x, y } = await pixelOf(page, place);
  await page.touchscreen.tap(x, y);
}

/** Takes something out of the palette, taps where it goes, and puts the tool down. */
async function put(page: Page, word: string, place: readonly [number, number], there: RegExp): Promise<void> {
  await page.getByRole('tab', { name: /Set/ }).tap();
  await page.getByRole('button', { name: word, exact: true }).tap();
  await page.locator('.strokes.picked').waitFor({ state: 'attached' });
  await tapRoof(page, place);
  await drawn(page, there).waitFor({ state: 'attached' });
  await page.getByRole('button', { name: 'Put it down' }).first().tap();
  await page.locator('.strokes.picked').waitFor({ state: 'detached' });
}

const scaleWords = (page: Page): Promise<string | null> => page.locator('.scale-alone').textContent();
const scaleOf = async (page: Page): Promise<number> =>
  Number(/1\s*:\s*([\d\s]+)/.exec((await scaleWords(page)) ?? '')?.[1]?.replace(/\s/g, ''));

test('a roof from nothing to a clear frame by fingers alone, on a phone', async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    before: [
      ...BUILDING,
      () => {
        const others: string[] = [];
        Object.assign(window, { others });
        window.addEventListener('keydown', ({ key }) => others.push(key), true);
        window.addEventListener(
          'pointerdown',
          ({ pointerType }) => {
            if (pointerType !== 'touch') others.push(pointerType);
          },
          true,
        );
      },
    ],
  });
  const session = await page.context().newCDPSession(page);
  const more = page.locator('.top .more');
  await more.locator('summary').tap();
  await more.getByRole('button', { name: 'Plans' }).tap();
  await page.getByRole('button', { name: 'New plan', exact: true }).tap();
  await page.getByRole('button', { name: /^Nothing yet/ }).tap();
  await page.locator('.top h2', { hasText: 'New roof' }).waitFor();

  await page.getByRole('button', { name: 'deck', exact: true }).tap();
  await page.locator('.strokes.picked').waitFor({ state: 'attached' });
  for (const [index, corner] of (
    [
      [-6, -4],
      [6, -4],
      [6, 4],
      [-6, 4],
    ] as const
  ).entries()) {
    await tapRoof(page, corner);
    await eventually(() => page.locator('.drafting .draft-post').count()).toBe(index + 1);
  }
  await screenshot(page, 'touch-deck');
  await page.getByRole('button', { name: 'End', exact: true }).tap();
  await eventually(() => dimensionWords(page)).toEqual(
    expect.arrayContaining(['12.00\u00a0m', '8.00\u00a0m']),
  );
  await page.getByRole('button', { name: 'Put it down' }).first().tap();

  await page.locator('.empty').getByRole('button', { name: 'Place a camera' }).tap();
  await eventually(() => cardVerdict(page)).toBe('clear');
  await put(page, 'man', [0, -1], /^Man 1, performer/);
  await put(page, 'spot, 300 W', [1, -1], /^Lamp stand 1, stand/);
  await eventually(() => cardVerdict(page)).toBe('showing');
  // Nothing of this has pushed the page out of the window.
  expect((await page.locator('.top').boundingBox())?.y).toBe(0);

  await page.getByRole('tab', { name: /Frames/ }).tap();
  const finding = page.locator('.findings li', { hasText: 'Lamp stand 1' }).first();
  await eventually(() => finding.textContent()).toMatch(/^Lamp stand 1: .*column.* shows? .* of the frame\./);
  await finding.tap();
  const stand = drawn(page, /^Lamp stand 1, stand/);
  await eventually(() => stand.getAttribute('aria-pressed')).toBe('true');

  // Two fingers spread zoom the sheet in, two that go together pan it, and Fit brings the roof back.
  await page.locator('.sheet-drawing').scrollIntoViewIfNeeded();
  const fitted = await scaleOf(page);
  const middle = await pixelOf(page, [0, 0]);
  await fingers(
    page,
    between(
      [
        { x: middle.x - 30, y: middle.y },
        { x: middle.x + 30, y: middle.y },
      ],
      [
        { x: middle.x - 75, y: middle.y },
        { x: middle.x + 75, y: middle.y },
      ],
    ),
  );
  await eventually(() => scaleOf(page)).toBeLessThan(fitted / 1.5);
  const before = await pixelOf(page, [0, 0]);
  await fingers(
    page,
    between(
      [
        { x: middle.x - 40, y: middle.y },
        { x: middle.x + 40, y: middle.y },
      ],
      [
        { x: middle.x - 80, y: middle.y + 60 },
        { x: middle.x, y: middle.y + 60 },
      ],
    ),
  );
  await eventually(async () => (await pixelOf(page, [0, 0])).y - before.y).toBeGreaterThan(30);
  await screenshot(page, 'touch-zoomed');
  await page.getByRole('button', { name: 'Fit', exact: true }).tap();
  await eventually(() => scaleOf(page)).toBe(fitted);

  // A finger that rests on the stand is answered with what can be done to it.
  const column = async (): Promise<Touch> => {
    const box = await stand.locator('.tube').first().boundingBox();
    if (!box) throw new Error('the stand is not drawn');
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [await column()] });
  await page.getByRole('menu').waitFor();
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await screenshot(page, 'touch-menu');
  await page.getByRole('menuitem', { name: 'Duplicate' }).tap();
  await drawn(page, /^Lamp stand 2, stand/).waitFor({ state: 'attached' });
  await page.getByRole('button', { name: 'Undo' }).first().tap();
  await drawn(page, /^Lamp stand 2, stand/).waitFor({ state: 'detached' });

  // Dragged out of the frame, taken back, and dragged again by one tap.
  await page.locator('.sheet-drawing').scrollIntoViewIfNeeded();
  await fingers(page, between([await column()], [await pixelOf(page, [5.3, 1.5])]));
  await eventually(() => cardVerdict(page)).toBe('clear');
  await page.getByRole('button', { name: 'Undo' }).first().tap();
  await eventually(() => cardVerdict(page)).toBe('showing');
  await page.getByRole('button', { name: 'Redo' }).first().tap();
  await eventually(() => cardVerdict(page)).toBe('clear');
  await eventually(() => page.locator('.all-clear').textContent()).toMatch(
    /Nothing that should keep out shows/,
  );
  await screenshot(page, 'touch-clear');

  const plan = await savedPlan(page, async () => {
    await more.locator('summary').tap();
    await more.getByRole('button', { name: 'Save' }).tap();
  });
  const [width, depth] = sizeOfDeck(plan);
  expect([width, depth]).toEqual([expect.closeTo(12, 6), expect.closeTo(8, 6)]);
  expect(plan.gear.map(({ kind }) => kind).sort()).toEqual(['head', 'stand']);
  const others = await page.evaluate(() => (window as unknown as { others: string[] }).others);
  expect(others).toEqual([]);
}, 300_000);
