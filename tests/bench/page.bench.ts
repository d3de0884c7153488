import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { findChromium } from '../../src/workshop/chromium.mjs';
import { dropPlan } from '../browser/dropping';
import { WITHOUT_CARD } from '../browser/flags';
import { OwnServer } from '../browser/ownServer';
import { withoutDemo } from '../browser/withoutDemo';
import { withoutPicture } from '../browser/withoutPicture';
import { crowdedPlan } from '../plans/crowd';
import { printTable, type Row } from './table';

/** The night of `bench night` as the built page reads it, beside stills of an instant and all else that a page does. */
const PATIENCE_MS = 300_000;

interface Reading {
  /** From the drop or the edit until all spans are read, and until what is lost in the dark is told too. */
  readonly spansMs: number;
  readonly allMs: number;
}

/** Runs in the page: notes how far the reading is, as its bar says. */
function watchReading(): Promise<Reading> {
  return new Promise((resolve) => {
    const begun = performance.now();
    let spansMs = Number.NaN;
    const look = setInterval(() => {
      const bar = document.querySelector<HTMLProgressElement>('.reading progress');
      const since = performance.now() - begun;
      if (bar && Number.isNaN(spansMs) && bar.value === bar.max) spansMs = since;
      if (bar || Number.isNaN(spansMs)) return;
      clearInterval(look);
      resolve({ spansMs, allMs: since });
    }, 20);
  });
}

async function readNight(browser: Browser, address: string, cores: number): Promise<readonly Reading[]> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  context.setDefaultTimeout(PATIENCE_MS);
  for (const script of [withoutPicture, withoutDemo]) await context.addInitScript(script);
  await context.addInitScript((value) => {
    Object.defineProperty(Navigator.prototype, 'hardwareConcurrency', { get: () => value });
  }, cores);
  const page: Page = await context.newPage();
  await page.goto(address, { waitUntil: 'commit' });
  await page.locator('html[data-ready="true"]').waitFor({ state: 'attached' });
  const plan = crowdedPlan(60, 20, 1);
  const first = page.evaluate(watchReading);
  await dropPlan(page, plan);
  const readings = [await first];
  const stand = plan.gear.find(({ kind }) => kind === 'stand');
  await page.locator(`.sheet-drawing [data-target="${stand?.id}"]`).focus();
  await page.keyboard.press('Enter');
  const again = page.evaluate(watchReading);
  await page.keyboard.press('ArrowRight');
  readings.push(await again);
  await context.close();
  return readings;
}

execFileSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', 'src', '--logLevel', 'error']);
const executablePath = findChromium();
if (!executablePath) throw new Error('no Chromium found: run npm test, which installs or asks for one');
const server = new OwnServer(join(process.cwd(), 'dist'), '/');
const address = await server.start();
const browser = await chromium.launch({ executablePath, args: WITHOUT_CARD });
const seconds = (ms: number): string => `${(ms / 1000).toFixed(1)} s`;
try {
  const rows: Row[] = [];
  const alone = await readNight(browser, address, 1);
  const shared = await readNight(browser, address, 2);
  for (const [k, when] of ['as it is opened', 'after an edit'].entries()) {
    const ratio = (alone[k].spansMs / shared[k].spansMs).toFixed(1);
    rows.push(
      {
        what: `spans of a night of 20 moves, ${when}, one hand`,
        reach: '',
        reached: seconds(alone[k].spansMs),
      },
      {
        what: `the same, as many hands as two cores have`,
        reach: '≤ 10 s',
        reached: `${seconds(shared[k].spansMs)}, ${ratio} times as fast`,
      },
      { what: 'and with what is lost in the dark', reach: '', reached: seconds(shared[k].allMs) },
    );
  }
  printTable(rows);
} finally {
  await browser.close();
  await server.stop();
}
