import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { seriousViolations } from './axe';
import { eventually } from './building';
import { openPage, screenshot, waitUntilReady } from './harness';
import { keptPlan } from './keptPlan';
import { titlesKept } from './shelfContents';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };
const TITLE = 'Loft Night';
/** Where the first stand begins, and a step of the keys, metres. */
const AT = -6.85;
const STEP = 0.1;
const DESK = { width: 1440, height: 900 };

async function take(page: Page): Promise<void> {
  await page.bringToFront();
  await page.locator('.desk').press('Escape');
  await page.locator('[data-target="stand-1"]').focus();
  await page.keyboard.press('Enter');
}
const move = (page: Page): Promise<void> => page.keyboard.press('ArrowRight');

async function across(page: Page): Promise<number> {
  const stand = (await keptPlan(page)).gear.find(({ id }) => id === 'stand-1');
  return stand && 'at' in stand ? stand.at[0] : Number.NaN;
}
const untilKept = (page: Page, steps: number): Promise<void> =>
  eventually(() => across(page)).toBeCloseTo(AT + steps * STEP);

const refusal = (page: Page) => page.locator('.top .kept.not');

/** Another tab, which shows what is kept. */
async function openOther(page: Page): Promise<Page> {
  const other = await page.context().newPage();
  await other.goto(page.url(), { waitUntil: 'commit' });
  await waitUntilReady(other);
  return other;
}

test(
  'a tab that is frozen while another works follows once it is woken, and both keep what they did',
  PATIENT,
  async () => {
    const page = await openPage({ ...DESK, before: [withoutPicture, withoutReports] });
    await take(page);
    await move(page);
    await untilKept(page, 1);
    const tools = await page.context().newCDPSession(page);
    await tools.send('Page.setWebLifecycleState', { state: 'frozen' });
    const other = await openOther(page);
    await take(other);
    await move(other);
    await untilKept(other, 2);
    await tools.send('Page.setWebLifecycleState', { state: 'active' });
    await page.locator('.toast', { hasText: 'Another tab changed' }).waitFor();
    await take(page);
    await move(page);
    await untilKept(page, 3);
    await other.bringToFront();
    await other.locator('.toast', { hasText: 'Another tab changed' }).waitFor();
    expect(await titlesKept(other)).toEqual([TITLE]);
  },
);

/** Holds all writing of plans up, as a slow disk does, until it is let go. */
const holdDisk = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const done = <Result>(request: IDBRequest<Result>): Promise<Result> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await done(indexedDB.open('standclear'));
    const held = { on: true };
    Object.assign(window, { held });
    const meta = database.transaction(['plans', 'documents', 'meta'], 'readwrite').objectStore('meta');
    await done(meta.get('lastOpen'));
    const goOn = async (): Promise<void> => {
      while (held.on) await done(meta.get('lastOpen'));
      database.close();
    };
    void goOn();
  });
const letGo = (page: Page): Promise<void> =>
  page.evaluate(() => {
    (window as unknown as { held: { on: boolean } }).held.on = false;
  });

test(
  'a slow disk is told and asked about before the page goes, edits meanwhile are kept, and a page that goes leaves the plan whole',
  PATIENT,
  async () => {
    const page = await openPage({ ...DESK, before: [withoutPicture, withoutReports] });
    await take(page);
    await move(page);
    await untilKept(page, 1);
    const home = page.url();
    const disk = await page.context().newPage();
    await disk.route('**/favicon.ico', (route) => route.fulfill({ status: 204 }));
    await disk.goto(new URL('manifest.webmanifest', page.url()).href);

    await holdDisk(disk);
    await take(page);
    await move(page);
    await refusal(page).getByText('not kept yet: this device is slow to write').waitFor();
    await move(page);
    await move(page);
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'slow-disk');
    // Whoever would leave is asked.
    const [question] = await Promise.all([
      page.waitForEvent('dialog'),
      page.close({ runBeforeUnload: true }),
    ]);
    expect(question.type()).toBe('beforeunload');
    await question.dismiss();
    await letGo(disk);
    await refusal(page).waitFor({ state: 'detached' });
    await untilKept(page, 4);

    // Whoever leaves all the same had been asked, and finds the plan whole, with all that was kept before.
    await holdDisk(disk);
    await take(page);
    await move(page);
    await refusal(page).waitFor();
    await Promise.all([
      page.waitForEvent('close'),
      page.waitForEvent('dialog').then((dialog) => dialog.accept()),
      page.close({ runBeforeUnload: true }),
    ]);
    await letGo(disk);
    await disk.goto(home, { waitUntil: 'commit' });
    await waitUntilReady(disk);
    const steps = Math.round(((await across(disk)) - AT) / STEP);
    expect([4, 5]).toContain(steps);
    expect(await titlesKept(disk)).toEqual([TITLE]);
  },
);
