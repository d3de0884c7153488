import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { BUILDING, eventually } from './building';
import { between, fingers, type Touch } from './fingers';
import { openPage, screenshot } from './harness';
import { withoutReports } from './withoutReports';

const diamond = (page: Page, index: number): Locator =>
  page.getByRole('slider', { name: new RegExp(`^Key ${index} of `) });
const secondsOf = async (key: Locator): Promise<number> => Number(await key.getAttribute('aria-valuenow'));

async function middleOf(place: Locator): Promise<{ x: number; y: number; width: number; height: number }> {
  await place.scrollIntoViewIfNeeded();
  const box = await place.boundingBox();
  if (!box) throw new Error('it is not on the page');
  const { x, y, width, height } = box;
  return { x: x + width / 2, y: y + height / 2, width, height };
}

/** One finger, put down, drawn along and lifted. */
const drag = (page: Page, from: Touch, by: readonly [number, number]): Promise<void> =>
  fingers(page, between([from], [{ x: from.x + by[0], y: from.y + by[1] }]));

test.each([
  ['a phone', 390, 844],
  ['a tablet', 1180, 820],
] as const)(
  'on %s a finger retimes a key and moves who is held, each on 48 px',
  async (name, width, height) => {
    const page = await openPage({
      width,
      height,
      touch: true,
      theme: width < 500 ? 'night' : 'day',
      before: [...BUILDING, withoutReports],
    });
    const last = diamond(page, 2);
    const before = await secondsOf(last);
    const place = await middleOf(last);
    expect([place.width, place.height]).toEqual([48, 48]);
    const bar = await middleOf(page.locator('.scrub .time'));
    await drag(page, place, [-bar.width / 4, 0]);
    await eventually(() => secondsOf(last)).toBeLessThan(before - 2);
    // One step of the history, and taken back whole. A tap that follows a drag at once only ends its fling, so a click.
    await page.getByRole('button', { name: 'Undo', exact: true }).first().click();
    await eventually(() => secondsOf(last)).toBe(before);
    // A tap leaves it and goes there.
    const there = await middleOf(last);
    await page.touchscreen.tap(there.x, there.y);
    await eventually(() => page.locator('.scrub .clock').textContent()).toContain(before.toFixed(2));
    expect(await secondsOf(last)).toBe(before);

    await page.getByRole('tab', { name: /Set/ }).tap();
    const move = page.getByRole('region', { name: 'Move' });
    await move.getByLabel('operator holds').selectOption({ label: 'Nuno' });
    const cross = page.locator('.hold-cross');
    const held = await middleOf(cross);
    expect([held.width, held.height]).toEqual([48, 48]);
    const picture = await middleOf(page.locator('figure.picture'));
    const said = await cross.getAttribute('aria-label');
    await drag(page, held, [-picture.width * 0.15, picture.height * 0.1]);
    await eventually(() => cross.getAttribute('aria-label')).not.toBe(said);
    await screenshot(page, `camera-touch-${name.split(' ')[1]}`);
  },
);
