import { setTimeout as pause } from 'node:timers/promises';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, expect, inject, test } from 'vitest';
import { parsePlan } from '../../src/core/plan/parse';
import { withoutOfflineWorker } from './harness';
import { OwnBrowser } from './ownBrowser';
import { shelfContents } from './shelfContents';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

/** How many tabs are killed: `KILLS` chooses. */
const KILLS = Number(process.env.KILLS ?? 4);
const BROWSER_KILLS = Math.ceil(KILLS / 4);
/** What may be lost, milliseconds. */
const MOST_LOST_MS = 1000;
/** The kill comes within this span of the edits, milliseconds. */
const INSTANTS = { from: 200, to: 2200 };
const STAND = 'stand-1';
const STEP_METRES = 0.1;

const browser = new OwnBrowser();
afterEach(() => browser.kill());
afterAll(() => browser.end());

/** Runs in the page: moves the chosen stand by a key over and over, and tells each edit when it is made. */
function editOn(key: string): void {
  const edit = (): void => {
    for (const type of ['keydown', 'keyup']) {
      window.dispatchEvent(new KeyboardEvent(type, { key, bubbles: true, cancelable: true }));
    }
    const { told } = window as unknown as { told: (at: number) => Promise<void> };
    void told(Date.now());
    setTimeout(edit, 50 + 100 * Math.random());
  };
  edit();
}

/** Opens the page, and with it what was kept. */
async function open(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.addInitScript(withoutPicture);
  await page.addInitScript(withoutReports);
  // Its process would be killed with the tab's.
  await page.addInitScript(withoutOfflineWorker);
  await page.goto(inject('pageAddress'), { waitUntil: 'commit' });
  await page.locator(`[data-target="${STAND}"]`).waitFor({ state: 'attached' });
  return page;
}

/** Where the stand is in the plan on the shelf that was open last; the plan has to be whole. */
async function keptAcross(page: Page): Promise<number> {
  const { documents, lastOpen } = await shelfContents(page);
  const read = parsePlan(documents[lastOpen ?? '']);
  if (!read.ok) throw new Error(`what was kept is no plan: ${read.faults[0].sentence}`);
  const stand = read.value.gear.find(({ id }) => id === STAND);
  if (stand?.kind !== 'stand') throw new Error(`${STAND} is not there`);
  return stand.at[0];
}

/** Edits, kills in the middle of it, and gives when each edit was made and when the killed one was gone. */
async function editAndKill(
  page: Page,
  key: string,
  kill: () => Promise<number>,
): Promise<{ readonly edits: readonly number[]; readonly goneAt: number }> {
  const edits: number[] = [];
  await page.exposeFunction('told', (at: number) => edits.push(at));
  await page.locator(`[data-target="${STAND}"]`).focus();
  await page.keyboard.press('Enter');
  const first = new Promise<void>((resolve) => {
    const look = (): void => void (edits.length > 0 ? resolve() : setTimeout(look, 5));
    look();
  });
  await page.evaluate(editOn, key);
  await first;
  // The instant of the kill is what is asked about, and no condition: it comes when it comes.
  await pause(INSTANTS.from + (INSTANTS.to - INSTANTS.from) * Math.random());
  return { goneAt: await kill(), edits };
}

/** How many steps the stand has gone beyond where it was, and how old the oldest lost edit was when the end came. */
function judge(
  before: number,
  after: number,
  { edits, goneAt }: Awaited<ReturnType<typeof editAndKill>>,
): { readonly kept: number; readonly lostMs: number } {
  const kept = Math.round(Math.abs(after - before) / STEP_METRES);
  const oldestLost = edits[kept];
  return { kept, lostMs: oldestLost === undefined ? 0 : goneAt - oldestLost };
}

const keyOf = (round: number): string => (round % 2 === 0 ? 'ArrowRight' : 'ArrowLeft');

test(
  `a tab killed at ${KILLS} random instants loses nothing older than a second`,
  async () => {
    const context = await browser.start();
    let page = await open(context);
    let before: number | null = null;
    const lost: number[] = [];
    for (let round = 0; round < KILLS; round += 1) {
      const crashed = page.waitForEvent('crash');
      const run = await editAndKill(page, keyOf(round), () => browser.killTabs());
      await crashed;
      await page.close();
      page = await open(context);
      const after = await keptAcross(page);
      if (before !== null) {
        const { kept, lostMs } = judge(before, after, run);
        expect(kept, 'no edit came from nowhere').toBeLessThanOrEqual(run.edits.length + 1);
        lost.push(lostMs);
      }
      before = after;
    }
    console.info(`lost, ms: ${[...lost].sort((one, other) => other - one).join(', ')}`);
    expect(Math.max(...lost)).toBeLessThan(MOST_LOST_MS);
  },
  120_000 + KILLS * 10_000,
);

test('a browser that is killed as a whole loses nothing older than a second', async () => {
  let context = await browser.start();
  let page = await open(context);
  const lost: number[] = [];
  for (let round = 0; round < BROWSER_KILLS; round += 1) {
    const before = await keptAcross(page);
    const run = await editAndKill(page, keyOf(round), () => browser.kill());
    context = await browser.start();
    page = await open(context);
    const { lostMs } = judge(before, await keptAcross(page), run);
    lost.push(lostMs);
  }
  console.info(`lost with the browser, ms: ${lost.join(', ')}`);
  expect(Math.max(...lost)).toBeLessThan(MOST_LOST_MS);
});
