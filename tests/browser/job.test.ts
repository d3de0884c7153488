import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Report } from '../../src/core/report/types';
import { HOUSE } from '../../src/workshop/house.mjs';
import { quickDemo } from '../plans/quickDemo';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** Reading a whole night takes its time on two busy cores. */
const NIGHT_MS = 110_000;

async function savedText(page: Page): Promise<string> {
  await page.evaluate(() => {
    const picker = async (): Promise<FileSystemFileHandle> =>
      (await navigator.storage.getDirectory()).getFileHandle('cleared.plan.json', { create: true });
    Object.assign(window, { showSaveFilePicker: picker });
  });
  await page.keyboard.press('Control+s');
  await page.locator('.toast', { hasText: 'Saved as cleared.plan.json.' }).waitFor();
  return page.evaluate(async () => {
    const folder = await navigator.storage.getDirectory();
    return (await (await folder.getFileHandle('cleared.plan.json')).getFile()).text();
  });
}

function commandLineReport(text: string): Report {
  const folder = mkdtempSync(join(tmpdir(), 'standclear-'));
  const file = join(folder, 'cleared.plan.json');
  writeFileSync(file, text);
  const { stdout, status } = spawnSync(
    process.execPath,
    [join(HOUSE, 'src/workshop/standclear.mjs'), 'report', file, '--json'],
    { encoding: 'utf8', maxBuffer: 1 << 26 },
  );
  rmSync(folder, { recursive: true });
  expect(status).toBe(0);
  return JSON.parse(stdout) as Report;
}

test('the second backlight, dragged until its sentence says clear, is clear on the command line too', async () => {
  const plan = quickDemo();
  const stand = plan.gear.find((gear) => gear.id === 'stand-2');
  if (stand?.kind !== 'stand') throw new Error('the demo has no second lamp stand');
  const page = await openPage({ width: 1280, height: 720, before: [withoutPicture, withoutDemo] });
  await dropPlan(page, plan);
  const scale = await page.locator('.titleblock dd').last().textContent();
  const metre = 96 / 0.0254 / Number(/1\s*:\s*(\d+)/.exec(scale ?? '')?.[1]);
  const drawn = page.getByRole('button', { name: /^Lamp stand 2, stand/ });
  const box = await drawn.locator('.tube').boundingBox();
  if (!box) throw new Error('the stand is not drawn');
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };

  await drawn.focus();
  await page.keyboard.press('Enter');
  const standing = page.locator('.standing');
  await standing.locator('li').first().waitFor();
  await expect.poll(() => standing.textContent(), { timeout: NIGHT_MS }).toMatch(/column|legs/);
  const before = await standing.textContent();

  // The head is drawn on top of its stand and carries it along.
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  const to = { x: from.x + (8.9 - stand.at[0]) * metre, y: from.y + (-7 - stand.at[2]) * metre };
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 });
  await expect.poll(() => standing.textContent(), { timeout: NIGHT_MS }).not.toBe(before);
  await page.mouse.move(to.x, to.y, { steps: 4 });
  await page.mouse.up();
  await drawn.focus();
  await page.keyboard.press('Enter');
  const answer = page.locator('.figure.verd');
  await answer.waitFor({ timeout: NIGHT_MS });
  await page
    .getByRole('progressbar', { name: 'Reading the night' })
    .waitFor({ state: 'detached', timeout: NIGHT_MS });
  expect(await answer.textContent()).toContain('clear in all setups');
  await screenshot(page, 'job-cleared');
  const report = commandLineReport(await savedText(page));
  const margins: number[] = [];
  for (const setup of report.setups) {
    for (const id of ['stand-2', 'head-2']) {
      const item = setup.items.find((each) => each.id === id);
      expect(`${setup.label}, ${id}: ${item?.verdict}`).toBe(`${setup.label}, ${id}: clear`);
      if (id === 'stand-2' && item?.margin) margins.push(item.margin.metres);
    }
  }
  expect(margins.length).toBeGreaterThan(3);
  // What is said follows the reading of all setups, to a tenth of a metre.
  const off = async (): Promise<number> =>
    Math.abs(Number(/(\d+\.\d)/.exec((await answer.textContent()) ?? '')?.[1]) - Math.min(...margins));
  await expect.poll(off, { timeout: NIGHT_MS }).toBeLessThanOrEqual(0.0501);
}, 300_000);
