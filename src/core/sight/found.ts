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
  weights: Uint16Array,
  itemOfPart: Int32Array,
  found: Found,
): void {
  const { owner, height } = buffer;
  for (let column = rect.left; column < rect.right; column += 1) {
    const base = column * height;
    let y = rect.top;
    while (y < rect.bottom) {
      const tag = owner[base + y];
      const from = y;
      let pixels = 0;
      while (y < rect.bottom && owner[base + y] === tag) {
        pixels += weights[base + y];
        y += 1;
      }
      if (tag === 0 || pixels === 0) continue;
      const item = itemOfPart[tag - 1];
      found.partPixels[tag - 1] += pixels;
      found.itemPixels[item] += pixels;
      growBox(found.boxes, item, column, from, y - 1);
    }
  }
}
