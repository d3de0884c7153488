import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';

/** The picture of the frame pane without what is drawn over it. */
export async function framePicture(page: Page): Promise<PNG> {
  await page.addStyleTag({ content: '.picture svg, .toast { opacity: 0 !important }' });
  return PNG.sync.read(await page.locator('figure.picture').screenshot());
}

/** Code value of a pixel, 0..1, all channels alike. */
export const brightness = ({ data }: PNG, pixel: number): number =>
  (data[pixel * 4] + data[pixel * 4 + 1] + data[pixel * 4 + 2]) / 765;

export function meanBrightness(picture: PNG): number {
  const count = picture.width * picture.height;
  let sum = 0;
  for (let k = 0; k < count; k += 1) sum += brightness(picture, k);
  return sum / count;
}

/** Middle of all pixels brighter than a threshold, in 0..1 of the picture from its upper left; and their number. */
export function brightMiddle(picture: PNG, above: number): { x: number; y: number; pixels: number } {
  let [x, y, pixels] = [0, 0, 0];
  for (let k = 0; k < picture.width * picture.height; k += 1) {
    if (brightness(picture, k) < above) continue;
    x += (k % picture.width) + 0.5;
    y += Math.floor(k / picture.width) + 0.5;
    pixels += 1;
  }
  return { x: x / pixels / picture.width, y: y / pixels / picture.height, pixels };
}

/** Resolves once the stage has drawn nothing for thirty of the browser's own frames. */
export async function untilStill(page: Page): Promise<number> {
  return page.evaluate(async () => {
    let [frames, still] = ['', 0];
    while (still < 30) {
      await new Promise(requestAnimationFrame);
      const now = document.documentElement.dataset.frames ?? '';
      still = now === frames ? still + 1 : 0;
      frames = now;
    }
    return Number(frames);
  });
}
