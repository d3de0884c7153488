import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { lampsAt } from '../../src/core/form/lamps';
import { cameraAt, spanOf } from '../../src/core/optics/camera';
import { projectPoint } from '../../src/core/optics/project';
import { linkOfPlan } from '../../src/exchange/link/link';
import { smallRoof } from '../unit/smallRoof';
import { fingers } from './fingers';
import { openPage, waitUntilReady } from './harness';
import { brightMiddle, brightness } from './picture';
import { withoutPicture } from './withoutPicture';

/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 600_000 };

/** Two setups: a move past Ana, and one instant of the bulb. Low frames have few pixels. */
const ROOF = smallRoof();
const [MASTER, , BULB] = ROOF.setups.map((setup) => ({ ...setup, delivery: 3 }));
const PLAN = { ...ROOF, title: 'Two setups', setups: [MASTER, BULB] };

/** A still as the page has it. */
async function still(page: Page, name: RegExp): Promise<PNG> {
  const address = await page
    .getByRole('img', { name })
    .first()
    .evaluate(async (image) => {
      if (!(image instanceof HTMLImageElement)) throw new Error('no picture');
      await image.decode();
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [image.naturalWidth, image.naturalHeight];
      canvas.getContext('2d')?.drawImage(image, 0, 0);
      return canvas.toDataURL('image/png');
    });
  return PNG.sync.read(Buffer.from(address.slice(address.indexOf(',') + 1), 'base64'));
}

function spread(png: PNG): number {
  const values = Array.from({ length: png.width * png.height }, (_, pixel) => brightness(png, pixel));
  return (
    values.reduce((most, value) => Math.max(most, value), 0) -
    values.reduce((least, value) => Math.min(least, value), 1)
  );
}

/** Mean difference of two pictures of the same size, in code values 0..1. */
function difference(a: PNG, b: PNG): number {
  expect([b.width, b.height]).toEqual([a.width, a.height]);
  let sum = 0;
  for (let pixel = 0; pixel < a.width * a.height; pixel += 1)
    sum += Math.abs(brightness(a, pixel) - brightness(b, pixel));
  return sum / (a.width * a.height);
}

const place = (page: Page) => page.getByRole('application');
const shown = async (page: Page): Promise<PNG> => PNG.sync.read(await place(page).screenshot());
const paintings = async (page: Page): Promise<number> =>
  Number(await place(page).getAttribute('data-paintings'));

/** Does something, and resolves with the picture that comes of it once nothing more is painted. */
async function after(page: Page, act: () => Promise<void>): Promise<PNG> {
  const before = await paintings(page);
  await act();
  await page.waitForFunction(
    (count) => Number(document.querySelector<HTMLElement>('[role=application]')?.dataset.paintings) > count,
    before,
  );
  return shown(page);
}

test(
  'stills come by themselves, the frame fills a phone, is played, enlarged and looked around in, and is kept',
  PATIENT,
  async () => {
    const page = await openPage({
      width: 390,
      height: 844,
      touch: true,
      address: `#${linkOfPlan(PLAN).fragment}`,
    });
    page.context().setDefaultTimeout(240_000);

    // Each place has the frame's sides before its picture comes.
    const sides = async (): Promise<readonly (number | undefined)[]> => {
      const box = await page.locator('.crew-picture').first().boundingBox();
      return [box?.width, box?.height];
    };
    await page.locator('.crew-picture p').first().waitFor();
    const empty = await sides();
    await page.getByText('2 pictures drawn', { exact: true }).waitFor({ state: 'attached' });
    expect(await sides()).toEqual(empty);

    const wide = await still(page, /^What setup A sees at 0\.0\ss, Master from the stairs$/);
    expect(spread(wide)).toBeGreaterThan(0.1);
    const insert = await still(page, /^What setup B sees/);
    expect(insert.width / insert.height).toBeCloseTo(3, 1);
    // The bulb burns where the lens has it.
    const seconds = spanOf(PLAN, BULB)[0];
    const bulb = lampsAt(PLAN, seconds).find(({ itemId }) => itemId === 'bulb');
    const at = bulb ? projectPoint(cameraAt(PLAN, BULB, seconds), bulb.position) : null;
    const bright = brightMiddle(insert, 0.8);
    expect(Math.abs(bright.x - (at?.x ?? 0))).toBeLessThan(0.02);
    expect(Math.abs(bright.y - (at?.y ?? 0))).toBeLessThan(0.06);

    // Over the whole window, with the frame line and the move's time.
    await page.getByRole('button', { name: /Master from the stairs$/ }).tap();
    await page.getByRole('button', { name: 'Fill the window with what A sees' }).tap();
    const dialog = page.getByRole('dialog', { name: 'A, Master from the stairs' });
    await dialog.locator('svg .delivery').first().waitFor();
    const box = await dialog.boundingBox();
    expect(box).toEqual({ x: 0, y: 0, width: 390, height: 844 });
    const start = await shown(page);
    const slider = page.getByRole('slider', { name: 'Time in the move' });
    expect((await slider.boundingBox())?.height).toBeGreaterThanOrEqual(48);
    const end = await after(page, () => slider.press('End'));
    expect(await slider.getAttribute('aria-valuetext')).toBe('2.0\u00a0s');
    expect(difference(start, end)).toBeGreaterThan(0.002);

    // Enlarged by two taps in the same place, the picture is as high as the room for it.
    const { width, height } = (await place(page).boundingBox()) ?? { width: 0, height: 0 };
    const twice = async (): Promise<void> => {
      const position = { x: width / 2, y: height / 2 };
      await place(page).evaluate(
        (element, [left, top]) => {
          // A finger that is not there cannot be captured.
          Object.assign(element, { setPointerCapture: () => undefined });
          const box = element.getBoundingClientRect();
          const how = { bubbles: true, pointerId: 1, clientX: box.left + left, clientY: box.top + top };
          // Both in one go: without a graphics card the second tap of a real hand would come too late.
          for (const kind of ['pointerdown', 'pointerup', 'pointerdown', 'pointerup'])
            element.dispatchEvent(new PointerEvent(kind, how));
        },
        [position.x, position.y] as const,
      );
    };
    const near = await after(page, twice);
    expect(difference(end, near)).toBeGreaterThan(0.01);
    await after(page, () => place(page).press('0'));

    // Two fingers that go apart do the same.
    const middle = (await place(page).boundingBox()) ?? { x: 0, y: 0, width, height };
    const [x, y] = [middle.x + middle.width / 2, middle.y + middle.height / 2];
    const pinched = await after(page, () =>
      fingers(
        page,
        [30, 60, 110].map((by) => [
          { x: x - by, y },
          { x: x + by, y },
        ]),
      ),
    );
    expect(difference(end, pinched)).toBeGreaterThan(0.01);
    await after(page, () => place(page).press('0'));

    // Around from the camera's place, by keys; the lens's frame lies where it looks.
    await after(page, () => page.getByRole('button', { name: 'Look around', exact: true }).tap());
    await place(page)
      .and(page.getByLabel('Around the camera of A, Master from the stairs at 2.0\u00a0s'))
      .waitFor();
    const ahead = await shown(page);
    const aside = await after(page, () => place(page).press('ArrowRight'));
    expect(difference(ahead, aside)).toBeGreaterThan(0.002);

    // Nothing is drawn while nothing changes.
    const settled = await paintings(page);
    await page.evaluate(async () => {
      for (let frame = 0; frame < 20; frame += 1) await new Promise(requestAnimationFrame);
    });
    expect(await paintings(page)).toBe(settled);

    // The way back closes it, gives the focus back, and takes the canvas from the page.
    await page.goBack();
    await dialog.waitFor({ state: 'detached' });
    await page.waitForFunction(
      () => document.activeElement?.getAttribute('aria-label') === 'Fill the window with what A sees',
    );
    expect(await page.locator('canvas').count()).toBe(0);

    // The next time they are there without being drawn.
    await page.addInitScript(withoutPicture);
    await page.reload({ waitUntil: 'commit' });
    await waitUntilReady(page);
    expect(difference(wide, await still(page, /^What setup A sees/))).toBe(0);
  },
);
