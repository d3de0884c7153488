import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { parsePlanText } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import { serialisePlan } from '../../src/core/plan/serialise';
import { findChromium } from '../../src/workshop/chromium.mjs';
import { printTable, type Row } from './table';

/**
 * How smooth the page is where a graphics card draws: the walk-round and the frame at 1440p, two hundred items on the
 * roof, while it plays and while it is turned, beside an empty page in the same browser; and what idling costs.
 * `SMOOTH_FLAGS` goes to the browser (by default the card by way of Vulkan); without a card it says so.
 */
const FLAGS = (process.env.SMOOTH_FLAGS ?? '--use-angle=vulkan --ignore-gpu-blocklist').split(' ');
const SIZE = { width: 2560, height: 1440 };
const ITEMS = 200;
const SECONDS = 6;

/** The demo with more of its own stands and lamps, spread over the deck, until it has so many items. */
function crowded(plan: Plan, items: number): Plan {
  const stands = plan.gear.filter((each) => each.kind === 'stand');
  const more = Array.from(
    { length: items - plan.pieces.length - plan.cast.length - plan.gear.length },
    (_, k) => {
      const stand = stands[k % stands.length];
      const at: [number, number, number] = [((k * 7) % 22) - 11, stand.at[1], ((k * 5) % 14) - 7];
      return { ...stand, id: `more-${k}`, label: `Stand ${k}`, at };
    },
  );
  return { ...plan, gear: [...plan.gear, ...more] };
}

interface Rate {
  readonly perSecond: number;
  readonly late: number;
}

/** Frames a second over some seconds, and the share of them that came a whole frame late. */
const rate = (page: Page, seconds: number): Promise<Rate> =>
  page.evaluate(async (forSeconds) => {
    const frame = () => new Promise<number>((resolve) => requestAnimationFrame(resolve));
    const start = await frame();
    const gaps: number[] = [];
    for (let last = start; last - start < forSeconds * 1000; ) {
      const now = await frame();
      gaps.push(now - last);
      last = now;
    }
    return {
      perSecond: (gaps.length * 1000) / gaps.reduce((sum, gap) => sum + gap, 0),
      late: gaps.filter((gap) => gap > 25).length / gaps.length,
    };
  }, seconds);

const paintings = (page: Page): Promise<number> =>
  page.evaluate(() => Number(document.documentElement.dataset.paintings ?? 0));

const configFile = resolve('src/vite.config.ts');
await build({ configFile, logLevel: 'error' });
const server = await preview({ configFile, preview: { host: '127.0.0.1', port: 0, open: false } });
const home = server.resolvedUrls?.local[0];
const executablePath = findChromium();
if (!home || !executablePath) throw new Error('no address of the page, or no Chromium to open it in');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--no-first-run', ...FLAGS] });
try {
  const parsed = parsePlanText(readFileSync('assets/loft-night.plan.json', 'utf8'));
  if (!parsed.ok) throw new Error(parsed.faults[0].sentence);
  const text = serialisePlan(crowded(parsed.value, ITEMS));
  const empty = await browser.newPage({ viewport: SIZE });
  const display = await rate(empty, 2);
  await empty.close();

  const page = await browser.newPage({ viewport: SIZE });
  page.setDefaultTimeout(300_000);
  await page.route('**/loft-night.plan.json', (route) =>
    route.fulfill({ contentType: 'application/json', body: text }),
  );
  await page.goto(home);
  await page.locator('html[data-ready="true"]').waitFor({ state: 'attached' });
  const card = await page.evaluate(() => {
    const gl = document.createElement('canvas').getContext('webgl2');
    const named = gl?.getExtension('WEBGL_debug_renderer_info');
    return gl ? String(gl.getParameter(named ? named.UNMASKED_RENDERER_WEBGL : gl.RENDERER)) : 'none';
  });
  console.log(`  drawn by ${card}, ${SIZE.width} × ${SIZE.height}, ${ITEMS} items`);
  if (/swiftshader|llvmpipe|software|none/i.test(card))
    console.log('  No graphics card: these rates say nothing of one.');

  await page.getByText('walk round', { exact: true }).click();
  await page.waitForFunction(
    () =>
      new Promise((resolve) => {
        const before = document.documentElement.dataset.paintings;
        setTimeout(() => resolve(document.documentElement.dataset.paintings === before), 1500);
      }),
  );
  const before = await paintings(page);
  await rate(page, SECONDS / 2);
  const idle = (await paintings(page)) - before;

  await page.getByRole('button', { name: 'Play', exact: true }).first().click();
  await rate(page, 2);
  const playing = await rate(page, SECONDS);
  await page.getByRole('button', { name: 'Pause', exact: true }).first().click();

  const box = await page.locator('.walk-round').boundingBox();
  if (!box) throw new Error('the walk-round is nowhere');
  // Over the roofs, where there is nothing to take hold of.
  const from = { x: box.x + box.width / 2, y: box.y + box.height * 0.08 };
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  const turning = rate(page, SECONDS);
  for (let step = 0; step < SECONDS * 60; step += 1) {
    await page.mouse.move(from.x + 150 * Math.sin(step / 20), from.y + 30 * Math.cos(step / 20));
  }
  const turned = await turning;
  await page.mouse.up();

  const beside = ({ perSecond, late }: Rate): string =>
    `${perSecond.toFixed(1)} a second, ${(perSecond / display.perSecond).toFixed(2)} of an empty page's ${display.perSecond.toFixed(1)}; ${(late * 100).toFixed(0)} % late`;
  const rows: readonly Row[] = [
    { what: 'walk-round and frame, playing', reach: "the display's rate", reached: beside(playing) },
    { what: 'walk-round, being turned', reach: "the display's rate", reached: beside(turned) },
    { what: 'views painted while nothing changes', reach: '0', reached: String(idle) },
  ];
  printTable(rows);
} finally {
  await browser.close();
  await server.close();
}
