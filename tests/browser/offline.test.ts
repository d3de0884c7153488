import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { filesBelow } from '../../src/building/builtFiles';
import { seal } from '../../src/building/keepOffline';
import { linkOfPlan } from '../../src/exchange/link/link';
import { HOUSE } from '../../src/workshop/house.mjs';
import { REAL_MODELS } from '../plans/realModels';
import { smallRoof } from '../unit/smallRoof';
import { drop, dropPlan } from './dropping';
import { openPage, waitUntilReady } from './harness';
import { OwnServer } from './ownServer';
import { withPlainFiles } from './plainFiles';
import { withFewWorkers } from './withFewWorkers';
import { withoutPicture } from './withoutPicture';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };
const BEFORE = [withoutPicture, withPlainFiles, withFewWorkers];
/** Soon put on paper. */
const SMALL = { ...smallRoof(), title: 'Night of one setup' };
/** Any folder of any server will do. */
const UNDER = '/some where/night shoot/';

let folder = '';
let server: OwnServer;
let home = '';

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-offline-'));
  cpSync(join(HOUSE, 'dist'), join(folder, 'first'), { recursive: true });
  server = new OwnServer(join(folder, 'first'), UNDER);
  home = await server.start();
});

afterEach(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** Waits until the page says of itself how much of it lies on the device. */
const untilKept = (page: Page, kept: 'crew' | 'all'): Promise<void> =>
  page.locator(`html[data-kept="${kept}"]`).waitFor({ state: 'attached' });

const buildOf = (page: Page): Promise<string | null> =>
  page.locator('meta[name="build"]').getAttribute('content');

async function loadAgain(page: Page): Promise<void> {
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
}

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();

/** Makes the pack, which is a worker and a large script of its own, and gives the first letters of its file. */
async function packOf(page: Page): Promise<string> {
  await page.locator('body').press('5');
  const [download] = await Promise.all([
    page.waitForEvent('download', PATIENT),
    page.getByRole('button', { name: 'Save the pack', exact: true }).click(),
  ]);
  return readFileSync(await download.path(), 'latin1').slice(0, 5);
}

test(
  'after one visit the desk works with no network: every sheet, another roof, a packed model, the pack',
  PATIENT,
  async () => {
    const page = await openPage({ home, keepsOffline: true, before: BEFORE, width: 1440, height: 900 });
    await untilKept(page, 'all');
    await server.stop();

    await loadAgain(page);
    await page.getByRole('heading', { name: 'Loft Night' }).waitFor();
    expect(await page.evaluate(() => document.fonts.check('600 16px "Encode Sans"'))).toBe(true);
    for (const sheet of ['Set', 'Blocking', 'Frames', 'Light', 'Night', 'Crew']) {
      await page.getByRole('tab', { name: new RegExp(sheet) }).click();
      await page.locator('#sheet-panel :is(button, input)').first().waitFor();
    }
    await dropPlan(page, SMALL);
    expect(await packOf(page)).toBe('%PDF-');
    await drop(page, ['bunny.glb', REAL_MODELS.bunny]);
    await page.locator('.toast', { hasText: 'bunny is on the roof' }).waitFor();
    await press(page, 'Plans');
    await press(page, 'New plan');
    await page.getByRole('button', { name: /Tenement roof/ }).click();
    await page.locator('.top h2', { hasText: 'Mercers Row' }).waitFor({ state: 'attached' });
  },
);

test('a link opened once on a phone opens with no network, and the desk beside it', PATIENT, async () => {
  const plan = { ...smallRoof(), title: 'Night of the link' };
  const address = `#${linkOfPlan(plan).fragment}`;
  const page = await openPage({
    home,
    address,
    keepsOffline: true,
    before: BEFORE,
    width: 390,
    height: 844,
    touch: true,
  });
  await page.getByText('Kept for offline').waitFor();
  /** What the first setup's own screen says, once the roof has been looked at too. */
  const readings = async (): Promise<readonly string[]> => {
    await page.locator('.crew-card h2 button').first().click();
    await page.locator('.crew-facts dd').first().waitFor();
    const facts = await page.locator('.crew-facts dd').allTextContents();
    await page.goBack();
    await press(page, 'Overhead');
    await page.locator('.crew-drawing').waitFor();
    await press(page, 'Setups');
    return facts;
  };
  const online = await readings();
  expect(online.length).toBeGreaterThan(5);
  await server.stop();
  await loadAgain(page);
  await page.getByText('Night of the link').first().waitFor();
  await page.getByText('Kept for offline').waitFor();
  expect(await readings()).toEqual(online);

  await server.start();
  await loadAgain(page);
  await untilKept(page, 'all');
  await server.stop();
  await page.goto(home, { waitUntil: 'commit' });
  await waitUntilReady(page);
  await page.getByRole('heading', { name: 'Loft Night' }).waitFor();
});

/** Another version of the page, on whose server the script that makes the pack is no longer to be had by its old name. */
async function makeNewer(): Promise<void> {
  const newer = join(folder, 'second');
  cpSync(join(folder, 'first'), newer, { recursive: true });
  for (const path of filesBelow(newer)) if (/pack\.worker/.test(path)) rmSync(join(newer, path));
  const index = join(newer, 'index.html');
  writeFileSync(index, readFileSync(index, 'utf8').replace('<title>', '<!-- newer -->\n    <title>'));
  await seal(newer);
  server.folder = newer;
}

test(
  'a newer version waits until it is asked for, loses no edit, and leaves other tabs what they need',
  PATIENT,
  async () => {
    const first = await openPage({ home, keepsOffline: true, before: BEFORE, width: 1440, height: 900 });
    await untilKept(first, 'all');
    const older = await buildOf(first);
    const second = await first.context().newPage();
    await second.goto(home, { waitUntil: 'commit' });
    await waitUntilReady(second);

    await makeNewer();
    await loadAgain(second);
    expect(await buildOf(second)).toBe(older);
    const offer = (page: Page) => page.locator('.toast', { hasText: 'A newer version is here.' });
    await Promise.all([offer(first).waitFor(), offer(second).waitFor()]);

    await second.getByRole('tab', { name: /Set/ }).click();
    await press(second, 'the roof');
    await second.getByLabel('title', { exact: true }).fill('Written at the last moment');
    await second.getByLabel('title', { exact: true }).press('Enter');
    await offer(second).getByRole('button', { name: 'Use it now' }).click();
    // While the page goes nothing can be read of it.
    await expect.poll(() => buildOf(second).catch(() => older)).not.toBe(older);
    await waitUntilReady(second);
    await second.getByRole('heading', { name: 'Written at the last moment' }).waitFor();
    await offer(second).waitFor({ state: 'detached' });

    expect(await buildOf(first)).toBe(older);
    await dropPlan(first, SMALL);
    expect(await packOf(first)).toBe('%PDF-');
    await first.close();
    await loadAgain(second);
    await expect
      .poll(() => second.evaluate(() => caches.keys()), { timeout: 60_000 })
      .toEqual([expect.stringContaining(String(await buildOf(second)))]);
  },
);
