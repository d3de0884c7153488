import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { FILM } from '../../src/scene/picture/develop';

/** Styles the page: its own policy lets in no style that is written into it, but one that a script makes. */
export const style = (page: Page, rules: string): Promise<void> =>
  page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets = [sheet];
  }, rules);

/** The picture of the frame pane without what is drawn over it. */
export async function framePicture(page: Page): Promise<PNG> {
  await style(page, '.picture svg, .toast { opacity: 0 !important }');
  return PNG.sync.read(await page.locator('figure.picture').screenshot());
}

/** Code value of a pixel, 0..1, all channels alike. */
export const brightness = ({ data }: PNG, pixel: number): number =>
  (data[pixel * 4] + data[pixel * 4 + 1] + data[pixel * 4 + 2]) / 765;

/** What the picture renders middle grey from, in picture values. */
export const MIDDLE_GREY = 0.18;

/** The light that a code value of a neutral picture was made from, in picture values: the film's curve turned round. */
export function lightOf(code: number): number {
  const print = code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4;
  const grey = MIDDLE_GREY ** FILM.contrast;
  const white = FILM.white ** FILM.contrast;
  const slope = (grey / MIDDLE_GREY - white) / (grey - white);
  return ((print * white * (1 - slope)) / (1 - print * slope)) ** (1 / FILM.contrast);
}

/** The light of a pixel by its green, in picture values. */
export const lightAt = ({ data, width }: PNG, x: number, y: number): number =>
  lightOf(data[(y * width + x) * 4 + 1] / 255);

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
