import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { keyedFace, keyOn } from '../plans/keyedFace';
import { seriousViolations } from './axe';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withPlainFiles } from './plainFiles';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 60_000 };
const BEFORE = [withoutPicture, withoutDemo];

/** Vera between a key and a backlight, seen by two cameras from before her. */
const lit = (): Plan => ({
  ...keyedFace({
    gear: [...keyOn('1', [-2.5, 2.5], [0, 0]), ...keyOn('2', [4, -1], [0, 0], 0.2)],
    cameras: [
      { id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0, lens: 'wide' },
      { id: 'close', label: 'Close', at: [1, 4], headingDegrees: 346, lens: 'long' },
    ],
  }),
  title: 'Ground',
});

const roofOf = (page: Page): Locator => page.getByRole('region', { name: 'The roof', exact: true });
const legend = (page: Page): Locator => page.getByRole('region', { name: 'Clear ground', exact: true });
const clearSigns = (page: Page): Promise<string> =>
  page.evaluate(() => document.querySelector('.clear-ground .ground-sign.clear')?.getAttribute('d') ?? '');
const points = (path: string): number => path.split('M').length - 1;
const reading = (page: Page): Promise<string | null> =>
  page.getByRole('button', { name: /^Who sees it on the roof: / }).getAttribute('aria-label');
const standAt = async (page: Page) => {
  const { gear } = await keptPlan(page);
  const [stand, head] = ['2-stand', '2'].map((id) => gear.find((each) => each.id === id));
  return { at: stand && 'at' in stand ? stand.at : null, dim: head && 'dim' in head ? head.dim : null };
};

/** The middle of what is drawn of a camera, in pixels of the page. */
async function cameraAt(page: Page, name: RegExp): Promise<readonly [number, number]> {
  const box = await roofOf(page).locator('.sheet-drawing').getByRole('button', { name }).boundingBox();
  if (!box) throw new Error('the camera is not drawn');
  return [box.x + box.width / 2, box.y + box.height / 2];
}

test('clear ground is shown, follows a camera that is dragged, says who sees a spot and when, and puts a lamp where it works', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [...BEFORE, withPlainFiles] });
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await dropPlan(page, lit());
  await page.getByRole('button', { name: 'No more', exact: true }).click();
  await page.getByRole('button', { name: 'clear ground', exact: true }).click();
  // The panel is the Set sheet's; the legend says for what, of which setups, and how much.
  await expect
    .poll(async () => legend(page).textContent(), PATIENT)
    .toMatch(/\d+\u00a0?\s?% of .* stays clear of A, B for a stand of 2\.4 m\./);
  for (const word of ['clear', 'close to a frame', 'covered', 'seen mirrored', 'no sign: it shows'])
    await legend(page).getByText(word, { exact: true }).waitFor();
  // Fine squares come after the coarse ones: 20 × 16 m has no more than 320 of these.
  await expect.poll(async () => points(await clearSigns(page)), PATIENT).toBeGreaterThan(320);

  // Under the pointer: before the lens, and behind it.
  const [x, y] = await cameraAt(page, /^Camera of setup A/);
  await page.mouse.move(x, y - 120);
  await expect
    .poll(() => reading(page), PATIENT)
    .toMatch(/showing, A sees it here from 0\.0\u00a0s to 2\.0\u00a0s, in the middle of the frame/);
  await roofOf(page)
    .locator('.spot-words')
    .getByText(/A sees it here from/)
    .waitFor();
  await page.mouse.move(x, y + 45);
  await expect.poll(() => reading(page), PATIENT).toMatch(/: clear, nobody sees it here$/);
  // And by keys, up the drawing into the frame again.
  await page.getByRole('button', { name: /^Who sees it on the roof: / }).focus();
  for (let k = 0; k < 4; k += 1) await page.keyboard.press('Shift+ArrowUp');
  await expect.poll(() => reading(page), PATIENT).toMatch(/A sees it here/);

  // A camera in the hand: the ground follows before it is let go.
  const before = await clearSigns(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (const by of [20, 60, 110]) await page.mouse.move(x + by, y);
  await expect.poll(async () => (await clearSigns(page)) !== before, PATIENT).toBe(true);
  expect((await keptPlan(page)).setups[0].move.keys[0].position).toEqual([0, 1.55, 6]);
  await page.mouse.up();
  await expect
    .poll(async () => (await keptPlan(page)).setups[0].move.keys[0].position[0], PATIENT)
    .toBeGreaterThan(1);
  await page.locator('body').press('Control+z');
  await expect.poll(() => clearSigns(page), PATIENT).toBe(before);

  // How tall a stand may be.
  await page.getByRole('button', { name: 'how tall a stand may be', exact: true }).click();
  await legend(page).getByText('How tall a stand may be and stay clear of A, B.').waitFor();
  await page.mouse.move(x, y - 60);
  await expect
    .poll(() => reading(page), PATIENT)
    .toMatch(/: up to \d\.\d\u00a0m stays clear, taller, close to the frame of A /);
  // On by keys: what the drag has to say may lie over the roof there, and would have the pointer.
  await page.getByRole('button', { name: /^Who sees it on the roof: / }).focus();
  for (const by of ['Shift+ArrowDown', 'Shift+ArrowDown', 'ArrowDown', 'ArrowDown', 'ArrowDown'])
    await page.keyboard.press(by);
  await expect.poll(() => reading(page), PATIENT).toMatch(/: any height stays clear, nobody sees it$/);
  await page.getByRole('button', { name: 'where it is clear', exact: true }).click();

  // What the lamp is for, and where it can go.
  await page.getByRole('button', { name: 'edge', exact: true }).click();
  await legend(page).getByText('Choose a lamp, or the stand that carries it.').waitFor();
  await roofOf(page)
    .locator('.sheet-drawing')
    .getByRole('button', { name: /^Stand of 2, / })
    .press('Enter');
  await page.getByText(/^The best spot is the least move: /).waitFor();
  await legend(page)
    .getByText(/^Head 2 can be the edge light of Vera from /)
    .waitFor();
  expect(await roofOf(page).locator('.useful-edge').first().getAttribute('d')).toContain('M');
  await screenshot(page, 'clear-ground');
  expect(await seriousViolations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Put it in the best spot', exact: true }).click();
  await page.locator('.toast', { hasText: /Head 2 stands .* from where it was, aimed and dimmed/ }).waitFor();
  await expect.poll(async () => (await standAt(page)).at, PATIENT).not.toEqual([4, 0, -1]);
  // Behind her, as she looks towards the camera.
  expect((await standAt(page)).at?.[2]).toBeLessThan(0);
  await page.locator('body').press('Control+z');
  await expect.poll(() => standAt(page), PATIENT).toEqual({ at: [4, 0, -1], dim: 0.2 });

  // The same picture as a file.
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the picture', exact: true }).click(),
  ]);
  expect(saved.suggestedFilename()).toBe('ground-clear-ground.png');
  expect(PNG.sync.read(readFileSync(await saved.path())).width).toBeGreaterThan(600);

  // Nothing to be clear of.
  await page.getByRole('button', { name: 'None', exact: true }).click();
  await legend(page).getByText('No setup counts: tick at least one that it has to stay clear of.').waitFor();
  await page.getByRole('button', { name: 'clear ground', exact: true }).first().click();
  await legend(page).waitFor({ state: 'detached' });
});
