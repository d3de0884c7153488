import type { ItemBuffer } from './buffer';
import { emptyBoxes, growBox } from './layers';
import type { PixelRect } from './scan';
import type { SightStage } from './stage';

/** What one way of seeing (directly, or in mirrors) found: pixels of the delivered frame, boxes in grid pixels. */
export interface Found {
  readonly partPixels: Float64Array;
  readonly itemPixels: Float64Array;
  readonly boxes: Float64Array;
}

/** Nothing found yet. */
export const emptyFound = (stage: SightStage): Found => ({
  partPixels: new Float64Array(stage.parts.length),
  itemPixels: new Float64Array(stage.forms.length),
  boxes: emptyBoxes(stage.forms.length),
});

/** Counts the owners of a buffer's pixels, by runs. */
export function countOwners(
  buffer: ItemBuffer,
  rect: PixelRect,
  weights: Uint8Array | null,
  itemOfPart: Int32Array,
  found: Found,
): void {
  const { owner, width } = buffer;
  for (let row = rect.top; row < rect.bottom; row += 1) {
    const base = row * width;
    let x = rect.left;
    while (x < rect.right) {
      const tag = owner[base + x];
      const from = x;
      let pixels = 0;
      if (weights) {
        while (x < rect.right && owner[base + x] === tag) {
          pixels += weights[base + x];
          x += 1;
        }
      } else {
        while (x < rect.right && owner[base + x] === tag) x += 1;
        pixels = x - from;
      }
      if (tag === 0 || pixels === 0) continue;
      const item = itemOfPart[tag - 1];
      found.partPixels[tag - 1] += pixels;
      found.itemPixels[item] += pixels;
      growBox(found.boxes, item, from, x - 1, row);
    }
  }
}
