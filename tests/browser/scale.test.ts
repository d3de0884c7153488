import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { serialisePlan } from '../../src/core/plan/serialise';
import { crowdedPlan } from '../plans/crowd';
import { scanGlb } from '../plans/scan';
import { smallRoof } from '../unit/smallRoof';
import { drop, dropPlan } from './dropping';
import { openPage } from './harness';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** A machine of two slow cores, both of which others use as well. */
const PATIENT = { timeout: 120_000 };
const PATIENCE_MS = 120_000;
/** Each of its edits waits for two workers that are busy with two hundred setups. */
const WHOLE_TEST_MS = 600_000;
const [ITEMS, SETUPS, PERFORMERS] = [2000, 200, 30];
const TRIANGLES = 1_000_000;
const EDITS = 10;
/** What as many edits of a plan may leave behind: a history of them, each as much as the lists that it changed. */
const MOST_LEFT_BYTES = 16 * 1024 * 1024;
/** What the page knows of one setup by then: a verdict on each item, at an instant. */
const SETUP_BYTES = 300 * ITEMS;

const eventually = <Value>(read: () => Promise<Value>) => expect.poll(read, PATIENT);
const reading = (page: Page): Locator => page.getByRole('progressbar', { name: 'Reading the night' });
const stopButton = (page: Page): Locator =>
  page.locator('.reading').getByRole('button', { name: 'Stop', exact: true });
const isStopped = (page: Page): Locator => page.getByText('The reading was stopped.');

/** How many setups are judged, by what their cards say. */
const judged = (page: Page): Promise<number> => page.locator('.strip .card .say .v').count();

/** Bytes of the page's own memory that are in use, once what nobody needs is gone. */
async function heapOf(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  await session.send('Performance.enable');
  const { metrics } = await session.send('Performance.getMetrics');
  await session.detach();
  return metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? Number.NaN;
}

const leftOf = async (thing: Locator): Promise<number> => (await thing.boundingBox())?.x ?? Number.NaN;

/** Does something that moves a thing and waits until it is seen; milliseconds that it took. */
async function moves(thing: Locator, act: () => Promise<void>): Promise<number> {
  const before = await leftOf(thing);
  const begun = performance.now();
  await act();
  await eventually(() => leftOf(thing)).not.toBe(before);
  return performance.now() - begun;
}

test(
  'a plan of 2,000 items, 200 setups and 30 performers opens, is edited by key, and its reading is stopped',
  async () => {
    const plan = crowdedPlan(ITEMS, SETUPS, 4, 0, PERFORMERS);
    expect(plan.cast).toHaveLength(PERFORMERS);
    const first = plan.gear.find(({ kind }) => kind === 'stand') ?? plan.gear[0];
    const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutDemo] });
    page.context().setDefaultTimeout(PATIENCE_MS);
    const begun = performance.now();
    await dropPlan(page, plan);
    await eventually(() => page.locator('.sheet-drawing .choice').count()).toBeGreaterThan(ITEMS / 2);
    await eventually(() => page.locator('.strip .card').count()).toBe(SETUPS);
    const opened = performance.now() - begun;

    // The findings of the setup that is looked at come first, while the others are counted.
    await reading(page).waitFor();
    expect(await page.locator('.reading[role="alert"]').count()).toBe(0);
    await page.locator('.strip [aria-current="true"] .say .v').waitFor();
    await eventually(async () => Number(await reading(page).getAttribute('value'))).toBeGreaterThan(0);
    await stopButton(page).click();
    await isStopped(page).waitFor();
    await reading(page).waitFor({ state: 'detached' });

    await page.getByRole('tab', { name: /Set/ }).click();
    await page.getByText(`on the roof, ${ITEMS}`).click();
    await page.getByText(/^\d+ more\./).waitFor();
    await page.getByLabel('find').fill(first.label);
    await page.locator(`[data-id="${first.id}"]`).waitFor();

    const stand = page.locator(`.sheet-drawing [data-target="${first.id}"]`);
    await stand.focus();
    await page.keyboard.press('Enter');
    await eventually(() => stand.getAttribute('aria-pressed')).toBe('true');
    const column = stand.locator('.tube').first();
    const from = await leftOf(column);
    const edit = await moves(column, () => page.keyboard.press('Shift+ArrowRight'));
    const undo = await moves(column, () => page.keyboard.press('Control+z'));
    expect(await leftOf(column)).toBeCloseTo(from, 1);

    const known = await judged(page);
    const before = await heapOf(page);
    for (let count = 0; count < EDITS; count += 1) {
      const key = count % 2 === 0 ? 'Shift+ArrowRight' : 'Shift+ArrowLeft';
      await moves(column, () => page.keyboard.press(key));
    }
    // The reading starts anew after each edit, and is stopped as before.
    await stopButton(page).click();
    await isStopped(page).waitFor();
    // What the workers still say of the last edits goes first; what is known of more setups than before stays.
    let left = Number.NaN;
    await eventually(async () => {
      const more = (await judged(page)) - known;
      left = (await heapOf(page)) - before - more * SETUP_BYTES;
      return left;
    }).toBeLessThan(MOST_LEFT_BYTES);
    console.log(
      `${ITEMS} items, ${SETUPS} setups: opened in ${opened.toFixed(0)} ms, an edit is seen after ${edit.toFixed(0)} ms and undone after ${undo.toFixed(0)} ms; ${EDITS} edits leave ${(left / 1e6).toFixed(1)} MB beside ${(await judged(page)) - known} more setups judged, on ${(before / 1e6).toFixed(0)} MB`,
    );
  },
  WHOLE_TEST_MS,
);

/** A browser that opens files by an input of its own, as most do: its dialog can be answered here. */
function withFileInputs(): void {
  Reflect.deleteProperty(window, 'showOpenFilePicker');
}

async function choose(page: Page, path: string): Promise<void> {
  const [dialog] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Imported model: choose a file', exact: true }).click(),
  ]);
  await dialog.setFiles(path);
}

test('a scan of a million triangles is read with its progress, stopped, read again, and the report goes on', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'scan-'));
  try {
    const path = join(folder, 'roof.glb');
    writeFileSync(path, scanGlb(TRIANGLES));
    const page = await openPage({
      width: 1440,
      height: 900,
      before: [withoutPicture, withoutDemo, withFileInputs],
    });
    page.context().setDefaultTimeout(PATIENCE_MS);
    await drop(page, ['scanned.plan.json', serialisePlan({ ...smallRoof(), title: 'Roof to be scanned' })]);
    await page.locator('.top h2', { hasText: 'Roof to be scanned' }).waitFor({ state: 'attached' });
    await page.getByRole('tab', { name: /Set/ }).click();
    const importing = page.locator('.importing');
    await choose(page, path);
    await importing.getByRole('progressbar').waitFor();
    await importing.getByRole('button', { name: 'Stop' }).click();
    await importing.waitFor({ state: 'detached' });
    expect(await page.locator('.model-cut, .model-missing').count()).toBe(0);

    const begun = performance.now();
    await choose(page, path);
    await page.locator('.toast', { hasText: 'roof is on the roof' }).waitFor();
    const took = performance.now() - begun;
    await page.locator('.model-cut').waitFor({ state: 'attached' });
    await page
      .getByText(/Of roof, [23]\d\d,\d\d\d of [\d,]+ triangles are judged and drawn/)
      .first()
      .waitFor();
    await reading(page).waitFor({ state: 'detached' });
    await page.locator('.strip .say .v').first().waitFor();
    expect(await isStopped(page).count()).toBe(0);
    console.log(`a scan of ${TRIANGLES} triangles is on the roof after ${took.toFixed(0)} ms`);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
