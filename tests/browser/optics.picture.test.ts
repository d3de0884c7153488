import type { Page } from 'playwright-core';
import type { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { blurTangent } from '../../src/core/optics/bokeh';
import { frameShapeOf } from '../../src/core/optics/camera';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { Setup } from '../../src/core/plan/schema/setup';
import { LOOK_AROUND } from '../../src/desk/viewStore';
import { lanternPlan } from '../plans/lantern';
import { dropPlan } from './dropping';
import { openPage } from './harness';
import { brightMiddle, brightness, framePicture, lightAt, untilStill } from './picture';
import { withoutDemo } from './withoutDemo';
import { withoutReports } from './withoutReports';

/** The picture in full, of which nothing is shown yet. */
function bareFullPicture(): void {
  if (location.protocol === 'about:') return;
  localStorage.setItem('standclear.picture', 'full');
  localStorage.setItem('standclear.shows', 'only');
}

const METRES = 9;

/** A small bulb straight ahead in the dark, far enough from the deck to leave it dark. */
function bulbPlan(title: string, squeeze: number, setup: Partial<Setup>, peakCandela = 2): Plan {
  const { kit, gear, setups, ...rest } = lanternPlan(null);
  const [head] = kit.heads;
  return {
    ...rest,
    title,
    kit: {
      ...kit,
      heads: [{ ...head, size: [0.02, 0.03, 0.02], peakCandela }],
      lenses: [{ ...kit.lenses[0], focalMm: 100, squeeze }],
    },
    gear: gear.map((each) => (each.kind === 'practical' ? { ...each, at: [0, 20, -METRES] } : each)),
    setups: [
      {
        ...setups[0],
        stop: 2,
        iso: 100,
        focus: { metres: METRES },
        ...setup,
        move: {
          ease: 'linear',
          keys: [{ atSeconds: 0, position: [0, 20, 0], headingDegrees: 0, tiltDegrees: 0, rollDegrees: 0 }],
        },
      },
    ],
  };
}

async function openPlan(page: Page, plan: Plan): Promise<void> {
  const before = await page.evaluate(() => document.documentElement.dataset.paintings);
  await dropPlan(page, plan);
  await page.waitForFunction((then) => document.documentElement.dataset.paintings !== then, before);
  await untilStill(page);
}

/** Shows something of the optics, or leaves it out, by the menu over the picture. */
async function show(page: Page, word: string, on: boolean): Promise<void> {
  const menu = page.locator('.frame-pane summary', { hasText: 'guides' });
  await menu.click();
  await page.getByRole('checkbox', { name: word }).setChecked(on);
  await menu.click();
  await untilStill(page);
}

function sumOfLight(picture: PNG): number {
  let sum = 0;
  for (let y = 0; y < picture.height; y += 1)
    for (let x = 0; x < picture.width; x += 1) sum += lightAt(picture, x, y);
  return sum;
}

/** The pixel in the middle of what is brightest: the bulb hangs a little below its mount. */
function middleOf(picture: PNG): readonly [number, number] {
  let most = 0;
  for (let k = 0; k < picture.width * picture.height; k += 1) most = Math.max(most, brightness(picture, k));
  const { x, y } = brightMiddle(picture, 0.85 * most);
  return [Math.floor(x * picture.width), Math.floor(y * picture.height)];
}

/** How far it is brighter than half of the middle along a line through it, pixels. */
function across(picture: PNG, [dx, dy]: readonly [number, number]): number {
  const [x, y] = middleOf(picture);
  const half = lightAt(picture, x, y) / 2;
  let length = 1;
  for (const way of [1, -1])
    for (let k = 1; lightAt(picture, x + way * k * dx, y + way * k * dy) > half; k += 1) length += 1;
  return length;
}

test('a bulb out of focus is an oval of the pupil, and what a filter takes it gives back around', async () => {
  const page = await openPage({
    width: 1100,
    height: 720,
    before: [bareFullPicture, withoutDemo, withoutReports],
  });
  const plan = bulbPlan('Bulb, near focus', 2, { focus: { metres: 1 } });
  await openPlan(page, plan);
  const sharp = await framePicture(page);
  expect(across(sharp, [0, 1])).toBeLessThan(8);

  await show(page, 'out-of-focus blur', true);
  const disc = await framePicture(page);
  const { tanHalfHeight } = frameShapeOf(plan, plan.setups[0]);
  const pixels =
    (blurTangent({ focalMm: 100, stop: 2 }, 1, METRES) / (2 * tanHalfHeight * LOOK_AROUND)) * disc.height;
  expect(pixels).toBeGreaterThan(25);
  expect(Math.abs(across(disc, [0, 1]) - pixels)).toBeLessThan(2);
  expect(Math.abs(across(disc, [1, 0]) - pixels / 2)).toBeLessThan(2);
  // As bright all over as it is in the middle: a disc, not a bell.
  const [x, y] = middleOf(disc);
  expect(lightAt(disc, x, y + Math.round(pixels * 0.38)) / lightAt(disc, x, y)).toBeGreaterThan(0.85);

  await openPlan(
    page,
    bulbPlan('Bulb in mist', 2, { focus: { metres: 1 }, filter: { kind: 'mist', strength: 2 } }),
  );
  await show(page, 'the filter', true);
  const misty = await framePicture(page);
  const beside = [x + Math.round(pixels * 0.36), y] as const;
  expect(lightAt(misty, ...beside)).toBeGreaterThan(1.5 * lightAt(disc, ...beside));
  expect(lightAt(misty, x, y)).toBeLessThan(0.98 * lightAt(disc, x, y));
  expect(sumOfLight(misty) / sumOfLight(disc)).toBeGreaterThan(0.95);
  expect(sumOfLight(misty) / sumOfLight(disc)).toBeLessThan(1.05);
});

test('a light streaks level through a squeezed lens and through no other; noise is still while the clock is', async () => {
  const page = await openPage({
    width: 1100,
    height: 720,
    before: [bareFullPicture, withoutDemo, withoutReports],
  });
  await openPlan(page, bulbPlan('Bulb, squeezed', 2, {}, 2000));
  const plain = await framePicture(page);
  await show(page, 'streaks', true);
  const streaked = await framePicture(page);
  const [x, y] = middleOf(plain);
  const away = Math.round(plain.width * 0.06);
  const gain = (dx: number, dy: number) => {
    const brightest = (picture: PNG) =>
      Math.max(...[-2, -1, 0, 1].map((k) => lightAt(picture, x + dx + (dx ? 0 : k), y + dy + (dx ? k : 0))));
    return brightest(streaked) / brightest(plain);
  };
  expect(gain(away, 0)).toBeGreaterThan(1.5);
  expect(gain(-away, 0)).toBeGreaterThan(1.5);
  expect(gain(0, away)).toBeLessThan(1.1);

  // Without the noise an instant is as another, to the byte.
  await page.keyboard.press('End');
  await untilStill(page);
  expect((await framePicture(page)).data.equals(streaked.data)).toBe(true);
  await show(page, 'noise by ISO', true);
  const noisy = await framePicture(page);
  expect(noisy.data.equals(streaked.data)).toBe(false);
  expect((await framePicture(page)).data.equals(noisy.data)).toBe(true);
  await page.keyboard.press('Home');
  await untilStill(page);
  expect((await framePicture(page)).data.equals(noisy.data)).toBe(false);

  await show(page, 'noise by ISO', false);
  await openPlan(page, bulbPlan('Bulb, spherical', 1, {}, 2000));
  const spherical = await framePicture(page);
  await show(page, 'streaks', false);
  expect((await framePicture(page)).data.equals(spherical.data)).toBe(true);
});
