import type { ItemBuffer } from './buffer';
import type { PixelRect } from './filling';
import { type Grid, sampleHeight } from './grid';
import type { SightStage } from './stage';
import { endOfRun } from './tags';

/** By item, where most of it is seen in one place: the middle of the longest run of its pixels down a column. */
export interface Spots {
  /** Pixels of the run; 0 where there is none. */
  readonly pixels: Float64Array;
  /** Whose run it is, a part's number, and its middle, pixels of the grid. */
  readonly part: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** What one way of seeing (directly, or in mirrors) found: pixels of the delivered frame, boxes in grid pixels. */
export interface Found {
  readonly partPixels: Float64Array;
  readonly itemPixels: Float64Array;
  readonly boxes: Float64Array;
  readonly spots: Spots;
}

/** Grows box `at` of a list, [left, top, right, bottom] in pixels, right and bottom outside, by y0 … y1 of a column. */
export function growBox(boxes: Float64Array, at: number, column: number, y0: number, y1: number): void {
  const k = at * 4;
  if (column < boxes[k]) boxes[k] = column;
  if (y0 < boxes[k + 1]) boxes[k + 1] = y0;
  if (column + 1 > boxes[k + 2]) boxes[k + 2] = column + 1;
  if (y1 + 1 > boxes[k + 3]) boxes[k + 3] = y1 + 1;
}

/** Fresh boxes that hold nothing yet. */
function emptyBoxes(count: number): Float64Array {
  const boxes = new Float64Array(count * 4).fill(Infinity);
  for (let k = 0; k < boxes.length; k += 4) {
    boxes[k + 2] = -Infinity;
    boxes[k + 3] = -Infinity;
  }
  return boxes;
}

const noSpots = (count: number): Spots => ({
  pixels: new Float64Array(count),
  part: new Int32Array(count),
  x: new Float64Array(count),
  y: new Float64Array(count),
});

/** Keeps a run of an item's pixels where it is longer than those before. */
export function noteSpot(
  spots: Spots,
  item: number,
  part: number,
  pixels: number,
  x: number,
  y: number,
): void {
  if (!(pixels > spots.pixels[item])) return;
  spots.pixels[item] = pixels;
  spots.part[item] = part;
  spots.x[item] = x;
  spots.y[item] = y;
}

/** Nothing found yet. */
export const emptyFound = (stage: SightStage): Found => ({
  partPixels: new Float64Array(stage.parts.length),
  itemPixels: new Float64Array(stage.forms.length),
  boxes: emptyBoxes(stage.forms.length),
  spots: noSpots(stage.forms.length),
});

/** Where the middle one of a column's samples y0 … y1 lies, pixels of the grid. */
export const middleOfRun = (column: number, y0: number, y1: number): number =>
  ((y0 + y1) >> 1) + sampleHeight(column);

/** Counts the owners of a buffer's pixels, by runs. */
export function countOwners(
  buffer: ItemBuffer,
  rect: PixelRect,
  { weights, isEven }: Grid,
  itemOfPart: Int32Array,
  found: Found,
): void {
  const { owner, ownerPairs, height } = buffer;
  for (let column = rect.left; column < rect.right; column += 1) {
    const base = column * height;
    let y = rect.top;
    while (y < rect.bottom) {
      const tag = owner[base + y];
      const from = y;
      y = endOfRun(owner, ownerPairs, base + y, base + rect.bottom) - base;
      if (tag === 0) continue;
      let pixels = isEven ? y - from : 0;
      if (!isEven) for (let at = base + from; at < base + y; at += 1) pixels += weights[at];
      if (pixels === 0) continue;
      const item = itemOfPart[tag - 1];
      found.partPixels[tag - 1] += pixels;
      found.itemPixels[item] += pixels;
      growBox(found.boxes, item, column, from, y - 1);
      noteSpot(found.spots, item, tag - 1, pixels, column + 0.5, middleOfRun(column, from, y - 1));
    }
  }
}
