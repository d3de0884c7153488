import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { serialisePlan } from '../../src/core/plan/serialise';
import { planToFdl } from '../../src/exchange/fdl/fdl';
import { planToGlb } from '../../src/exchange/glb';
import { writePlanPack } from '../../src/exchange/planPack/write';
import { planToUsdz } from '../../src/exchange/usd/usdz';
import { smallRoof } from '../unit/smallRoof';
import { seriousViolations } from './axe';
import { drop, dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { withPlainFiles } from './plainFiles';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

const PATIENT = { timeout: 600_000 };

/** Leaves out the workers that read what lenses see, and keeps the one that writes files. */
function withFileWorker(): void {
  const { Worker } = window;
  class NoWorker extends EventTarget {
    postMessage(): void {
      setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'left out of this test' })));
    }
    terminate(): void {}
  }
  Object.assign(window, {
    Worker: function start(address: string | URL, how?: WorkerOptions) {
      return String(address).includes('openFiles.worker') ? new Worker(address, how) : new NoWorker();
    },
  });
}
const BEFORE = [withoutPicture, withoutDemo, withPlainFiles, withFileWorker];

const plan: Plan = { ...smallRoof(), title: 'Files of a roof' };

function picture(): { readonly name: string; readonly bytes: Buffer; readonly sha256: string } {
  const png = new PNG({ width: 40, height: 30 });
  png.data.fill(160);
  const bytes = PNG.sync.write(png);
  return { name: 'roof.png', bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
}

/** The name and the bytes that a button of the sheet saves. */
async function saved(page: Page, name: string): Promise<readonly [string, Buffer]> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name, exact: true }).press('Enter'),
  ]);
  const bytes = readFileSync(await download.path());
  await page.locator('.toasts').getByText(`Saved as ${download.suggestedFilename()}.`).waitFor();
  return [download.suggestedFilename(), bytes];
}

test(
  'each open file is saved as its writer makes it, and a pack comes back with its picture',
  PATIENT,
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: BEFORE });
    await dropPlan(page, plan);
    await page.locator('body').press('6');
    const section = page.getByRole('region', { name: 'Open files' });
    await section.waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'open-files');

    const wanted: readonly (readonly [string, string, Uint8Array])[] = [
      ['Save USD', 'files-of-a-roof.usdz', planToUsdz(plan, 0)],
      ['Save GLB', 'files-of-a-roof.glb', planToGlb(plan, 0)],
      ['Save frame lines', 'files-of-a-roof.fdl', Buffer.from(await planToFdl(plan))],
      ['Save the plan', 'files-of-a-roof.plan.json', Buffer.from(serialisePlan(plan))],
    ];
    for (const [button, name, bytes] of wanted) {
      const [savedAs, file] = await saved(page, button);
      expect(savedAs).toBe(name);
      expect(Buffer.compare(file, bytes), name).toBe(0);
    }
    const [calendar, ics] = await saved(page, 'Save the calendar');
    expect([calendar, ics.toString().slice(0, 15)]).toEqual(['files-of-a-roof-night.ics', 'BEGIN:VCALENDAR']);
    expect((await saved(page, 'Save the lists'))[1].toString()).toContain('Master from the stairs');

    // A pack from elsewhere brings its picture, and goes out again with it.
    const { name, bytes, sha256 } = picture();
    const laid: Plan = {
      ...plan,
      title: 'Roof with a picture',
      underlay: {
        asset: { sha256, name, bytes: bytes.length },
        pixels: [40, 30],
        at: [0, 0],
        headingDegrees: 0,
        metresPerPixel: 0.5,
        strength: 0.5,
      },
    };
    const pack = (await writePlanPack(laid, async () => bytes)).bytes;
    await drop(page, ['roof.standclear.zip', pack]);
    await page.locator('.top h2', { hasText: /^Roof with a picture$/ }).waitFor();
    const [packedAs, again] = await saved(page, 'Save the file pack');
    expect(packedAs).toBe('roof-with-a-picture.standclear.zip');
    expect(Object.keys(unzipSync(again)).sort()).toEqual([`files/${sha256}.png`, 'plan.json']);
    expect(Buffer.compare(again, pack)).toBe(0);

    // One that was spoilt on its way is refused with a sentence, and the plan that is open stays.
    const spoilt = Buffer.from(pack);
    spoilt[spoilt.indexOf('IHDR') + 2] ^= 1;
    await drop(page, ['spoilt.standclear.zip', spoilt]);
    await page
      .getByText('spoilt.standclear.zip was not opened. "files/', { exact: false })
      .filter({ hasText: 'its check is wrong' })
      .waitFor();
    expect(await page.locator('.top h2').textContent()).toBe('Roof with a picture');
  },
);
