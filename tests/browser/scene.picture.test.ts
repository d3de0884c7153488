import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { lampsAt } from '../../src/core/form/lamps';
import { cameraAt } from '../../src/core/optics/camera';
import { projectPoint } from '../../src/core/optics/project';
import type { Plan } from '../../src/core/plan/schema/plan';
import { LOOK_AROUND } from '../../src/desk/viewStore';
import { lanternPlan } from '../plans/lantern';
import { smallRoof } from '../unit/smallRoof';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { brightMiddle, brightness, framePicture, meanBrightness, untilStill } from './picture';
import { walkRound } from './walking';
import { withoutDemo } from './withoutDemo';
import { withoutReports } from './withoutReports';

async function openPlan(page: Page, plan: Plan): Promise<void> {
  await dropPlan(page, plan);
  await untilStill(page);
}

/** Where the lantern should be in the whole picture area, 0..1, as core/optics has it. */
function lanternPlace(plan: Plan, seconds: number): { readonly x: number; readonly y: number } {
  const [lamp] = lampsAt(plan, seconds);
  const place = lamp && projectPoint(cameraAt(plan, plan.setups[0], seconds), lamp.position);
  if (!place) throw new Error('the lantern is behind the camera');
  const inArea = (inFrame: number) => 0.5 + (inFrame - 0.5) / LOOK_AROUND;
  return { x: inArea(place.x), y: inArea(place.y) };
}

test('the demo is a lit night: neither black nor washed out, its bulbs bright, and nothing is drawn while nothing changes', async () => {
  const page = await openPage({ width: 1000, height: 640, before: withoutReports });
  const frames = await untilStill(page);
  expect(frames).toBeGreaterThan(0);
  await screenshot(page, 'scene-demo');
  const picture = await framePicture(page);
  const mean = meanBrightness(picture);
  expect(mean).toBeGreaterThan(0.05);
  expect(mean).toBeLessThan(0.55);
  expect(brightMiddle(picture, 0.93).pixels).toBeGreaterThan(20);
  const tones = new Set(Array.from({ length: 4000 }, (_, k) => Math.round(brightness(picture, k * 37) * 40)));
  expect(tones.size).toBeGreaterThan(15);

  const thumbs = await page.locator('.strip canvas').evaluateAll((canvases) =>
    canvases.map((canvas) => {
      if (!(canvas instanceof HTMLCanvasElement)) return 0;
      const pixels = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
      return new Set(Array.from(pixels).filter((_, k) => k % 41 === 0)).size;
    }),
  );
  expect(thumbs.length).toBeGreaterThan(0);
  for (const tonesOfThumb of thumbs) expect(tonesOfThumb).toBeGreaterThan(10);

  await page.mouse.move(300, 20);
  expect(await untilStill(page)).toBe(frames);
});

test('what core/optics projects is where the picture shows it, over a move, through a rolled camera, with distortion too', async () => {
  const page = await openPage({ width: 1000, height: 640, before: [withoutDemo, withoutReports] });
  for (const distortion of [null, { k1: -0.18, k2: 0.03, k3: 0, p1: 0.004, p2: -0.003 }]) {
    const plan = lanternPlan(distortion);
    await openPlan(page, plan);
    for (const [press, seconds] of [
      ['Home', 0],
      ['End', 4],
    ] as const) {
      await page.keyboard.press(press);
      await untilStill(page);
      const picture = await framePicture(page);
      const seen = brightMiddle(picture, 0.9);
      const expected = lanternPlace(plan, seconds);
      expect(seen.pixels).toBeGreaterThan(8);
      // Within a pixel: the bulb is a dozen pixels wide and not quite round.
      expect(Math.abs(seen.x - expected.x) * picture.width).toBeLessThan(1);
      expect(Math.abs(seen.y - expected.y) * picture.height).toBeLessThan(1.5);
    }
  }
});

test('the walk-round is drawn beside the frame and turns by the arrow keys; a card that drops the picture says so, and it comes back', async () => {
  const page = await openPage({ width: 1000, height: 640, before: [withoutDemo, withoutReports] });
  const roof = smallRoof();
  await openPlan(page, { ...roof, setups: roof.setups.slice(0, 1) });
  await walkRound(page);
  const walk = page.getByRole('region', { name: 'Walk round the roof' });
  await untilStill(page);
  await walk.focus();
  const first = PNG.sync.read(await walk.screenshot());
  expect(meanBrightness(first)).toBeGreaterThan(0.05);
  for (let press = 0; press < 4; press += 1) await page.keyboard.press('ArrowLeft');
  await untilStill(page);
  const turned = PNG.sync.read(await walk.screenshot());
  const differing = Array.from({ length: first.width * first.height }, (_, k) => k).filter(
    (k) => Math.abs(brightness(first, k) - brightness(turned, k)) > 0.05,
  );
  expect(differing.length / (first.width * first.height)).toBeGreaterThan(0.1);
  await screenshot(page, 'scene-walk-round');

  await page.getByText('overhead', { exact: true }).click();
  await untilStill(page);
  const before = meanBrightness(await framePicture(page));
  await page.evaluate(() => {
    const context = document.querySelector('canvas[data-engine]')?.closest('canvas');
    const gl = context instanceof HTMLCanvasElement ? context.getContext('webgl2') : null;
    const card = gl?.getExtension('WEBGL_lose_context');
    if (!card) throw new Error('no context to lose');
    Object.assign(window, { card });
    card.loseContext();
  });
  await page.locator('.no-picture', { hasText: 'has dropped the picture' }).waitFor();
  await page.evaluate(() => {
    const { card } = window as unknown as { card: WEBGL_lose_context };
    card.restoreContext();
  });
  await page.locator('.no-picture').waitFor({ state: 'detached' });
  await untilStill(page);
  const after = meanBrightness(await framePicture(page));
  expect(Math.abs(after - before)).toBeLessThan(0.01);
});
