import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { parsePlanText } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import { withoutPicture } from './withoutPicture';

/** A browser that saves by a download, as some do: a test can read what was saved. */
function savesByDownload(): void {
  for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) Reflect.deleteProperty(window, name);
}

/** What runs in a page in which a roof is built from nothing. */
export const BUILDING = [withoutPicture, savesByDownload];

/** Without a graphics card and beside others a page may take its time. */
export const eventually = <Value>(read: () => Promise<Value>) => expect.poll(read, { timeout: 60_000 });

/** The plan in the file that the page gives when it is asked to save. */
export async function savedPlan(page: Page, save: () => Promise<void>): Promise<Plan> {
  const [download] = await Promise.all([page.waitForEvent('download'), save()]);
  const read = parsePlanText(readFileSync(await download.path(), 'utf8'));
  if (!read.ok) throw new Error(read.faults.map(({ sentence }) => sentence).join(' '));
  return read.value;
}

/** Where a place on the roof, metres, is on the page. */
export async function pixelOf(
  page: Page,
  [x, z]: readonly [number, number],
): Promise<{ readonly x: number; readonly y: number }> {
  const drawing = page.locator('.sheet-drawing');
  const transform = await drawing.locator('.to-scale').first().getAttribute('transform');
  const numbers = /translate\((\S+) (\S+)\) scale\((\S+)\)/.exec(transform ?? '')?.slice(1);
  const box = await drawing.boundingBox();
  if (!numbers || !box) throw new Error('the roof is not drawn');
  const [left = 0, top = 0, perMetre = 0] = numbers.map(Number);
  return { x: box.x + left + x * perMetre, y: box.y + top + z * perMetre };
}

/** Presses a place on the roof, metres, with the mouse. */
export async function pressAt(page: Page, spot: readonly [number, number]): Promise<void> {
  const { x, y } = await pixelOf(page, spot);
  await page.mouse.move(x, y, { steps: 3 });
  await page.mouse.down();
  await page.mouse.up();
}

/** Runs in the page before its own code: on a crowded roof a test knows with the grid alone where the hand comes to rest. */
export function onGridAlone(): void {
  // An empty document before the page's own keeps nothing.
  if (location.origin === 'null') return;
  for (const name of ['edges', 'points', 'inLine', 'distances'])
    localStorage.setItem(`standclear.snap-${name}`, 'off');
}

/** The words of the deck's two dimension lines. */
export const dimensionWords = (page: Page): Promise<readonly string[]> =>
  page.locator('.dimensions text').allTextContents();

/** The word of the verdict on the only setup's card. */
export const cardVerdict = (page: Page): Promise<string | null> =>
  page.locator('.strip .card svg[role="img"]').getAttribute('aria-label');

/** Width and depth of a deck's outline, metres. */
export function sizeOfDeck(plan: Plan): readonly [number, number] {
  const outlines = plan.pieces.flatMap((piece) => (piece.kind === 'deck' ? [piece.outline] : []));
  expect(outlines.length).toBe(1);
  const [xs, zs] = [0, 1].map((axis) => outlines.flat().map((corner) => corner[axis] ?? Number.NaN));
  const span = (values: readonly number[] = []): number => Math.max(...values) - Math.min(...values);
  return [span(xs), span(zs)];
}
