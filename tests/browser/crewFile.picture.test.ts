import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { serialisePlan } from '../../src/core/plan/serialise';
import { smallRoof } from '../unit/smallRoof';
import { drop, dropPlan } from './dropping';
import { openPage } from './harness';
import { withPlainFiles } from './plainFiles';
import { withoutDemo } from './withoutDemo';

/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 600_000 };

/** Leaves out the workers that read what lenses see, and keeps those that write files. */
function withFileWorkers(): void {
  const { Worker } = window;
  class NoWorker extends EventTarget {
    postMessage(): void {
      setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'left out of this test' })));
    }
    terminate(): void {}
  }
  Object.assign(window, {
    Worker: function start(address: string | URL, how?: WorkerOptions) {
      return /(pack|openFiles)\.worker/.test(String(address)) ? new Worker(address, how) : new NoWorker();
    },
  });
}

const RUNS = 'window.ran=true';
const TITLE = `</title></script><script>${RUNS}</script>`;
const FETCHES = `"><img src="https://elsewhere.example/seen.png" onerror="${RUNS}">`;

/** A roof whose every word would be markup, with pictures of few pixels, which are drawn sooner. */
function hostileRoof(): Plan {
  const roof = smallRoof();
  return {
    ...roof,
    title: TITLE,
    notes: `<!-- ${TITLE} &lt; ]]>`,
    place: { ...roof.place, label: `' onload='${RUNS}` },
    gear: roof.gear.map((each) => ({ ...each, label: FETCHES })),
    cast: roof.cast.map((each) => ({ ...each, label: `<svg onload=${RUNS}>` })),
    setups: roof.setups.slice(0, 2).map((each) => ({ ...each, label: FETCHES, delivery: 5 })),
  };
}

async function saved(page: Page, button: string): Promise<readonly [string, Buffer]> {
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 300_000 }),
    page.getByRole('button', { name: button, exact: true }).press('Enter'),
  ]);
  return [download.suggestedFilename(), readFileSync(await download.path())];
}

const heading = (page: Page, name: string) => page.getByRole('heading', { name, exact: true });

test(
  'the crew sheet in one file has its pictures, runs and fetches nothing, and gives the plan back',
  PATIENT,
  async () => {
    const before = [withoutDemo, withPlainFiles, withFileWorkers];
    const page = await openPage({ width: 1000, height: 640, before });
    page.context().setDefaultTimeout(240_000);
    const plan = hostileRoof();
    await drop(page, ['hostile.plan.json', serialisePlan(plan)]);
    await heading(page, TITLE).first().waitFor();
    await page.locator('body').press('6');
    const [name, bytes] = await saved(page, 'Save the crew sheet as one file');
    expect(name).toMatch(/-crew-sheet\.html$/);

    // Opened from the page's own host, where a script of it could do most.
    const reader = await page.context().newPage();
    const asked: string[] = [];
    reader.on('request', (request) => asked.push(request.url()));
    const address = new URL(name, page.url()).href;
    await reader.route(address, (route) => route.fulfill({ contentType: 'text/html', body: bytes }));
    await reader.setViewportSize({ width: 390, height: 844 });
    await reader.goto(address);
    expect(asked.filter((each) => !each.startsWith('data:image/jpeg;base64,'))).toEqual([address]);
    expect(await reader.evaluate(() => 'ran' in window)).toBe(false);
    expect(await reader.locator('script:not([type="application/json"]), iframe, object, embed').count()).toBe(
      0,
    );
    expect(await heading(reader, TITLE).count()).toBe(1);
    expect(await reader.getByText(FETCHES).count()).toBeGreaterThan(0);
    // A picture of each setup, drawn: of its width, and no even black.
    const pictures = await reader.locator('img').evaluateAll((found) =>
      found.map((each) => {
        if (!(each instanceof HTMLImageElement)) return [0, 0];
        const canvas = document.createElement('canvas');
        [canvas.width, canvas.height] = [each.naturalWidth, each.naturalHeight];
        const context = canvas.getContext('2d');
        context?.drawImage(each, 0, 0);
        const { data } = context?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] };
        return [each.naturalWidth, new Set(data).size];
      }),
    );
    expect(pictures.map(([width]) => width)).toEqual([960, 960]);
    for (const [, shades] of pictures) expect(shades).toBeGreaterThan(8);
    // Nothing is wider than a phone.
    expect(await reader.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    await reader.close();

    // Dropped on the desk, where another plan is open, it is the plan as it was.
    await dropPlan(page, { ...smallRoof(), title: 'Another roof', setups: [] });
    await drop(page, [name, new Uint8Array(bytes)]);
    await heading(page, TITLE).first().waitFor();
    const [, again] = await saved(page, 'Save the plan');
    expect(again.toString()).toBe(serialisePlan(plan));
  },
);
