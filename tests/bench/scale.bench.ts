import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Locator, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { serialisePlan } from '../../src/core/plan/serialise';
import { findChromium } from '../../src/workshop/chromium.mjs';
import { newestChange } from '../../src/workshop/newestChange.mjs';
import { FLAGS } from '../browser/flags';
import { withoutPicture } from '../browser/withoutPicture';
import { crowdedPlan } from '../plans/crowd';
import { ms, printTable, type Row } from './table';

/**
 * The page with two thousand items beside the page with five, in one run: frames while a stand is dragged over the
 * overhead, while it is zoomed, and while a rectangle is drawn; and what each step costs the page's own thread. The picture
 * is left out: without a graphics card it would be all that is measured.
 */
const SEED = 4;
const STEPS = 20;
const PATIENCE_MS = 180_000;

const configFile = join('src', 'vite.config.ts');
const built = join('dist', 'index.html');
const inputs = ['src/core', 'src/desk', 'src/scene', 'src/screens', 'src/exchange', 'assets'];
if (!existsSync(built) || statSync(built).mtimeMs < newestChange(inputs)) {
  await build({ configFile, logLevel: 'error' });
}
const server = await preview({ configFile, preview: { host: '127.0.0.1', port: 0, open: false } });
const address = server.resolvedUrls?.local[0];
const executablePath = findChromium();
if (!address || !executablePath) throw new Error('there is no page or no Chromium to measure');
const browser = await chromium.launch({ executablePath, args: FLAGS });

interface Measured {
  readonly medianMs: number;
  readonly worstMs: number;
  /** What the page's thread did for each step, milliseconds of the processor. */
  readonly ownMs: number;
}

/** Waits until the page has drawn what it was told. */
const drawn = (page: Page): Promise<void> =>
  page.evaluate(
    () => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))),
  );

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Of the thread's own clock, microseconds. */
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

/** What the thread of the page did in a trace, milliseconds of the processor: what else the machine does is not counted. */
function busyMs(trace: Buffer): number {
  const { traceEvents } = JSON.parse(trace.toString('utf8')) as { traceEvents: readonly TraceEvent[] };
  const threads = traceEvents.filter(
    ({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain',
  );
  const busy = threads.map(({ pid, tid }) =>
    traceEvents
      .filter((event) => event.pid === pid && event.tid === tid && event.name.endsWith('RunTask'))
      .reduce((sum, { tdur = 0 }) => sum + tdur / 1000, 0),
  );
  return Math.max(...busy);
}

/** Does something by steps and measures the page's frames meanwhile. */
async function measure(page: Page, step: (index: number) => Promise<void>): Promise<Measured> {
  await browser.startTracing(page, { categories: ['toplevel'] });
  await page.evaluate(() => {
    const frames: number[] = [];
    let last = performance.now();
    const count = (): void => {
      const now = performance.now();
      frames.push(now - last);
      last = now;
      requestAnimationFrame(count);
    };
    requestAnimationFrame(count);
    Object.assign(window, { frames });
  });
  for (let index = 0; index < STEPS; index += 1) {
    await step(index);
    await drawn(page);
  }
  const frames = await page.evaluate(() => (window as unknown as { frames: number[] }).frames.slice(1));
  const ownMs = busyMs(await browser.stopTracing()) / STEPS;
  const sorted = frames.toSorted((a, b) => a - b);
  const at = (share: number): number => sorted[Math.floor(sorted.length * share)] ?? Number.NaN;
  return { medianMs: at(0.5), worstMs: at(0.95), ownMs };
}

async function middleOf(thing: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const box = await thing.boundingBox();
  if (!box) throw new Error('what is to be dragged is not drawn');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** The stand that is drawn nearest to the middle of the sheet. */
function nearestStand(page: Page): Promise<string> {
  return page.evaluate(() => {
    const sheet = document.querySelector('.sheet-drawing')?.getBoundingClientRect();
    const stands = [...document.querySelectorAll('.choice.gear[aria-label*=", stand"]')].map((group) => {
      const tube = (group.querySelector('.tube') ?? group).getBoundingClientRect();
      const [x, y] = [tube.x + tube.width / 2, tube.y + tube.height / 2];
      const away = sheet ? Math.hypot(x - sheet.x - sheet.width / 2, y - sheet.y - sheet.height / 2) : 0;
      return { id: group.getAttribute('data-target') ?? '', away };
    });
    stands.sort((a, b) => a.away - b.away);
    return stands[0]?.id ?? '';
  });
}

async function measured(items: number): Promise<Readonly<Record<string, Measured>>> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  context.setDefaultTimeout(PATIENCE_MS);
  await context.addInitScript(withoutPicture);
  const page = await context.newPage();
  await page.goto(address ?? '', { waitUntil: 'commit' });
  await page.locator('html[data-ready="true"]').waitFor({ state: 'attached' });

  const plan = crowdedPlan(items, 1, SEED, 0);
  await page.evaluate(
    ({ text, name }) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([text], name));
      window.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    },
    { text: serialisePlan(plan), name: 'crowd.plan.json' },
  );
  await page.locator('.top h2', { hasText: plan.title }).waitFor();
  await page
    .locator('.sheet-drawing .choice')
    .nth(Math.floor(items / 2))
    .waitFor({ state: 'attached' });
  await page.locator('.strip .say .v').first().waitFor();
  await drawn(page);

  const stand = page.locator(`[data-target="${await nearestStand(page)}"] .tube`).first();
  const start = await middleOf(stand);
  await page.mouse.click(start.x, start.y);
  await drawn(page);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(start.x + 8, start.y);
  await drawn(page);
  const dragging = await measure(page, (index) =>
    page.mouse.move(start.x + 10 + 2 * index, start.y + (index % 7) * 2),
  );
  await page.mouse.up();
  await drawn(page);

  const board = await middleOf(page.locator('.sheet-drawing'));
  await page.mouse.move(board.x, board.y);
  const zooming = await measure(page, (index) => page.mouse.wheel(0, index < STEPS / 2 ? -120 : 120));

  await page.keyboard.press('Escape');
  await page.keyboard.down('Shift');
  await page.mouse.move(board.x - 250, board.y - 200);
  await page.mouse.down();
  const framing = await measure(page, (index) =>
    page.mouse.move(board.x - 240 + 15 * index, board.y - 190 + 12 * index),
  );
  await page.mouse.up();
  await page.keyboard.up('Shift');
  await context.close();
  return { 'a stand dragged': dragging, 'zoomed by the wheel': zooming, 'a rectangle drawn': framing };
}

const few = await measured(5);
const many = await measured(2000);
printTable(
  Object.entries(many).flatMap(([what, crowd]): Row[] => {
    const empty = few[what];
    if (!empty) return [];
    return [
      {
        what: `${what}, 2,000 items: frames, median and p95`,
        reach: `as with 5 items, ${ms(empty.medianMs)} and ${ms(empty.worstMs)}`,
        reached: `${ms(crowd.medianMs)} and ${ms(crowd.worstMs)}`,
      },
      {
        what: `${what}, 2,000 items: of the processor, a step`,
        reach: `with 5 items ${ms(empty.ownMs)}`,
        reached: ms(crowd.ownMs),
      },
    ];
  }),
);
await browser.close();
await server.close();
