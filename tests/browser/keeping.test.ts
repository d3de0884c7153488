import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { parsePlan } from '../../src/core/plan/parse';
import { serialisePlan } from '../../src/core/plan/serialise';
import { EMPTY_PLAN } from '../../src/desk/emptyPlan';
import { drop } from './dropping';
import { openPage, waitUntilReady } from './harness';
import { shelfContents, titlesKept } from './shelfContents';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

const SIZE = { width: 1440, height: 900 };
const DESK = { ...SIZE, before: [withoutPicture, withoutReports] };
const TITLE = 'Loft Night';
/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 30_000 };

const shown = (page: Page): Promise<string | null> => page.locator('.top h2').textContent();
const toast = (page: Page, text: string) => page.locator('.toast', { hasText: text });

/** Moves a stand of the demonstration night by so many steps, one edit for each. */
async function move(page: Page, stand: string, steps = 1): Promise<void> {
  await page.bringToFront();
  await page.locator('.desk').press('Escape');
  await page.locator(`[data-target="${stand}"]`).focus();
  await page.keyboard.press('Enter');
  for (let step = 0; step < steps; step += 1) await page.keyboard.press('ArrowRight');
}

/** Where a stand is in the kept plan of that title; null where there is no such plan. */
async function keptAt(page: Page, title: string, stand: string): Promise<number | null> {
  const { rows, documents } = await shelfContents(page);
  const row = rows.find((each) => each.title === title);
  const read = row && parsePlan(documents[row.id]);
  if (!read?.ok) return null;
  const found = read.value.gear.find(({ id }) => id === stand);
  return found && 'at' in found ? found.at[0] : null;
}

const untilKeptAt = (page: Page, stand: string, at: number, title = TITLE): Promise<void> =>
  expect.poll(() => keptAt(page, title, stand), PATIENT).toBeCloseTo(at);

const planText = (title: string): string => serialisePlan({ ...EMPTY_PLAN, title });

/** Where the stands of the demonstration night begin, and a step of the keys. */
const AT = { 'stand-1': -6.85, 'stand-2': 6.55 };
const STEP = 0.1;

test('an edit is kept on the device and there after a reload, and storage is asked for once', async () => {
  const page = await openPage({
    ...SIZE,
    before: [
      withoutPicture,
      withoutReports,
      () => {
        const asked = { times: 0 };
        Object.assign(window, { asked });
        // The blank page before the page has no storage.
        if (location.protocol === 'about:') return;
        navigator.storage.persist = async () => {
          asked.times += 1;
          return true;
        };
      },
    ],
  });
  await page.locator('.top .kept', { hasText: 'kept on this device' }).waitFor();
  const asked = (): Promise<number> =>
    page.evaluate(() => (window as unknown as { asked: { times: number } }).asked.times);
  expect(await asked()).toBe(0);
  await move(page, 'stand-1', 2);
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + 2 * STEP);
  expect(await asked()).toBe(1);
  // A reload at once after an edit: the page has no time to write it in the ordinary way.
  await move(page, 'stand-1');
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + 3 * STEP);
  await move(page, 'stand-1');
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + 4 * STEP);
  expect(await asked()).toBe(0);
});

test('two tabs of one plan: the one follows, both go on, and neither writes over the other', async () => {
  const page = await openPage(DESK);
  await move(page, 'stand-1');
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + STEP);
  const other = await page.context().newPage();
  await other.goto(page.url(), { waitUntil: 'commit' });
  await waitUntilReady(other);

  // What the one does the other shows, and can take back; which the first shows in turn.
  await move(other, 'stand-1');
  await toast(page, 'Another tab changed').waitFor();
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + 2 * STEP);
  await page.bringToFront();
  await toast(page, 'Another tab changed').getByRole('button', { name: 'Undo' }).click();
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + STEP);
  await toast(other, 'Another tab changed').waitFor();
  expect(await titlesKept(page)).toEqual([TITLE]);

  // Both at once: the first tab hears nothing, as a page that the browser has put to sleep.
  await other.evaluate(() => {
    BroadcastChannel.prototype.postMessage = () => {};
  });
  await move(other, 'stand-2', 3);
  await untilKeptAt(page, 'stand-2', AT['stand-2'] + 3 * STEP);
  await page.evaluate(() => {
    for (const type of ['keydown', 'keyup']) {
      window.dispatchEvent(new KeyboardEvent(type, { key: 'ArrowRight', bubbles: true }));
    }
  });
  await toast(page, `is kept as “${TITLE}, from another tab”`).waitFor();
  const copy = `${TITLE}, from another tab`;
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + 2 * STEP, copy);
  expect(await keptAt(page, copy, 'stand-2')).toBeCloseTo(AT['stand-2']);
  expect(await keptAt(page, TITLE, 'stand-2')).toBeCloseTo(AT['stand-2'] + 3 * STEP);
  expect(await keptAt(page, TITLE, 'stand-1')).toBeCloseTo(AT['stand-1'] + STEP);
  expect(await shown(page)).toBe(copy);
  expect(await shown(other)).toBe(TITLE);

  // From here on they are two plans, which do not know of each other.
  await page.bringToFront();
  await page.getByRole('button', { name: 'Show the other' }).click();
  await toast(page, `${TITLE} is open.`).waitFor();
  expect(await shown(page)).toBe(TITLE);
  await toast(page, `${TITLE} is open.`).getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => shown(page), PATIENT).toBe(copy);
  await move(page, 'stand-1');
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + 3 * STEP, copy);
  expect(await titlesKept(page)).toEqual([TITLE, copy]);
  expect(await toast(other, 'Another tab changed').count()).toBeLessThanOrEqual(1);
  expect(await keptAt(other, TITLE, 'stand-1')).toBeCloseTo(AT['stand-1'] + STEP);
  // Each comes back to its own.
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  expect(await shown(page)).toBe(copy);
  await other.reload({ waitUntil: 'commit' });
  await waitUntilReady(other);
  expect(await shown(other)).toBe(TITLE);
});

test('a browser that refuses storage is worked in all the same, and keeps again once it can', async () => {
  const page = await openPage({
    ...SIZE,
    before: [
      withoutPicture,
      withoutReports,
      () => {
        const { open } = IDBFactory.prototype;
        Object.assign(window, { refuses: true });
        IDBFactory.prototype.open = function (this: IDBFactory, ...args) {
          if ((window as unknown as { refuses: boolean }).refuses) {
            throw new DOMException('refused', 'SecurityError');
          }
          return Reflect.apply(open, this, args);
        };
      },
    ],
  });
  const line = page.locator('.top .kept.not');
  await line.waitFor();
  expect(await line.textContent()).toContain('this browser refuses storage');
  expect(await line.getByRole('button', { name: 'Save it to a file' }).isVisible()).toBe(true);
  await move(page, 'stand-1');
  // A second plan is opened, and the first is still to be had.
  await drop(page, ['second.plan.json', planText('Second night')]);
  await toast(page, 'Second night is open.').waitFor();
  await toast(page, 'Second night is open.').getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => shown(page), PATIENT).toBe(TITLE);
  await page.evaluate(() => Object.assign(window, { refuses: false }));
  await line.waitFor({ state: 'detached' });
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + STEP);
  expect(await titlesKept(page)).toEqual([TITLE, 'Second night']);
});

test('a full device gives up pictures and versions, never a plan, and says when it keeps no more', async () => {
  const page = await openPage({
    ...SIZE,
    before: [
      withoutPicture,
      withoutReports,
      () => {
        const room = { pictures: true, plans: true };
        Object.assign(window, { room });
        const { put } = IDBObjectStore.prototype;
        IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args) {
          const isPlan = this.name === 'documents' || this.name === 'left';
          if (isPlan && !room.plans) throw new DOMException('full', 'QuotaExceededError');
          return Reflect.apply(put, this, args);
        };
        const { clear } = IDBObjectStore.prototype;
        IDBObjectStore.prototype.clear = function (this: IDBObjectStore) {
          // Without the pictures there is room again.
          if (this.name === 'pictures' && room.pictures) room.plans = true;
          return Reflect.apply(clear, this, []);
        };
      },
    ],
  });
  const fill = (state: { readonly pictures: boolean }): Promise<void> =>
    page.evaluate(({ pictures }) => {
      const { room } = window as unknown as { room: { pictures: boolean; plans: boolean } };
      room.pictures = pictures;
      room.plans = false;
    }, state);
  const listPlans = async (): Promise<void> => {
    await page.getByRole('button', { name: 'Plans', exact: true }).click();
    await page.locator('dialog.plans .plan').first().waitFor();
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  };
  await move(page, 'stand-1');
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + STEP);
  await listPlans();
  expect((await shelfContents(page)).pictures).toBe(1);

  await fill({ pictures: true });
  await move(page, 'stand-1');
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + 2 * STEP);
  expect((await shelfContents(page)).pictures).toBe(0);
  expect(await page.locator('.top .kept.not').count()).toBe(0);

  await fill({ pictures: false });
  await move(page, 'stand-1');
  const line = page.locator('.top .kept.not');
  await line.waitFor();
  expect(await line.textContent()).toContain('no room left');
  expect(await keptAt(page, TITLE, 'stand-1')).toBeCloseTo(AT['stand-1'] + 2 * STEP);
  await page.evaluate(() => {
    (window as unknown as { room: { plans: boolean } }).room.plans = true;
  });
  await line.waitFor({ state: 'detached' });
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + 3 * STEP);
});

test('what cannot be read stays where it is, in a file and on the shelf, and the old state is still there', async () => {
  const page = await openPage({
    ...SIZE,
    before: [withoutPicture, withoutReports, () => void Reflect.deleteProperty(window, 'showOpenFilePicker')],
  });
  await move(page, 'stand-1');
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + STEP);
  await drop(page, ['newer.plan.json', planText('Newer').replace('"standclear": 1', '"standclear": 2')]);
  await toast(page, 'newer.plan.json was not opened.').waitFor();
  expect(await toast(page, 'newer.plan.json').textContent()).toContain('newer Standclear');
  expect(await shown(page)).toBe(TITLE);
  await drop(page, ['film.mov', '\u0000\u0001']);
  await toast(page, 'film.mov was not opened.').waitFor();
  expect(await titlesKept(page)).toEqual([TITLE]);

  // A newer page has kept its own, and was the last that was open.
  await page.evaluate(async () => {
    const request = indexedDB.open('standclear');
    await new Promise((resolve) => {
      request.onsuccess = resolve;
    });
    const transaction = request.result.transaction(['plans', 'documents', 'meta'], 'readwrite');
    const row = { id: 'newer', title: 'From tomorrow', date: '', fileName: 'tomorrow.plan.json' };
    transaction
      .objectStore('plans')
      .put({ ...row, writing: 3, changedAt: Date.now(), tab: 'other', takenOut: false }, 'newer');
    transaction.objectStore('documents').put({ standclear: 2, title: 'From tomorrow' }, 'newer');
    transaction.objectStore('meta').put('newer', 'lastOpen');
    await new Promise((resolve) => {
      transaction.oncomplete = resolve;
    });
    request.result.close();
    sessionStorage.clear();
  });
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  await toast(page, 'From tomorrow cannot be read here').waitFor();
  expect(await shown(page)).toBe(TITLE);
  await untilKeptAt(page, 'stand-1', AT['stand-1'] + STEP);
  await page.getByRole('button', { name: 'Plans', exact: true }).click();
  const entry = page.locator('dialog.plans .plan', { hasText: 'From tomorrow' });
  await entry.locator('.unread').waitFor();
  expect(await entry.textContent()).toContain('newer Standclear');
  // It can be had as a file, as it is.
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    entry.getByRole('button', { name: 'Save to a file' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('tomorrow.plan.json');
  expect((await shelfContents(page)).documents.newer).toEqual({ standclear: 2, title: 'From tomorrow' });
});

test('several files dropped are several plans, and a file keeps its way back over a reload', async () => {
  const page = await openPage({
    ...SIZE,
    before: [
      withoutPicture,
      withoutReports,
      () => {
        const picker = async (): Promise<FileSystemFileHandle> =>
          (await navigator.storage.getDirectory()).getFileHandle('night.plan.json', { create: true });
        const asked = { times: 0 };
        Object.assign(window, {
          asked,
          showSaveFilePicker: () => {
            asked.times += 1;
            return picker();
          },
          showOpenFilePicker: async () => [await picker()],
        });
      },
    ],
  });
  await drop(page, ['one.plan.json', planText('One')], ['two.plan.json', planText('Two')]);
  await toast(page, 'Two is open.').waitFor();
  expect(await titlesKept(page)).toEqual(['One', 'Two']);

  const asked = (): Promise<number> =>
    page.evaluate(() => (window as unknown as { asked: { times: number } }).asked.times);
  const saved = async (): Promise<string> =>
    page.evaluate(async () => {
      const folder = await navigator.storage.getDirectory();
      return (await (await folder.getFileHandle('night.plan.json')).getFile()).text();
    });
  await page.locator('.desk').press('Control+s');
  await toast(page, 'Saved as night.plan.json.').waitFor();
  expect(await asked()).toBe(1);
  expect(await saved()).toBe(planText('Two'));
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  expect(await shown(page)).toBe('Two');
  await page.locator('.desk').press('Control+s');
  await toast(page, 'Saved as night.plan.json.').waitFor();
  expect(await asked()).toBe(0);

  // The same file again is the same plan, with what it says as a step and a version of what was here.
  await page.evaluate(async (text) => {
    const folder = await navigator.storage.getDirectory();
    const writable = await (await folder.getFileHandle('night.plan.json')).createWritable();
    await writable.write(text);
    await writable.close();
  }, planText('Two, by somebody else'));
  await page.locator('.desk').press('Control+o');
  await toast(page, 'is as in its file').waitFor();
  expect(await shown(page)).toBe('Two, by somebody else');
  await expect.poll(() => titlesKept(page), PATIENT).toEqual(['One', 'Two, by somebody else']);
  expect((await shelfContents(page)).versions).toMatchObject([{ reason: 'open the file again' }]);
  await toast(page, 'is as in its file').getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => shown(page), PATIENT).toBe('Two');
});
