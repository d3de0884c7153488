import type { ItemBuffer, Mask } from './buffer';
import { run, type SpanSink } from './filling';
import { type Found, growBox, noteSpot } from './found';
import { sampleHeight } from './grid';

/**
 * Draws porous layers over finished solids. A layer shows wherever no solid is nearer; layers do not hide each other
 * or what is behind them, but what is seen through them is noted.
 */
export class PorousSink implements SpanSink {
  part = 0;
  item = 0;
  /** Pixels of the item that its layers add to its solids' outline. */
  alone = 0;
  /** By item number, pixels of what is seen through the current item's layers; null when nobody asks. */
  through: Float64Array | null = null;
  constructor(
    private readonly buffer: ItemBuffer,
    private readonly weights: Uint16Array,
    private readonly mask: Mask | null,
    private readonly itemOfPart: Int32Array,
    private readonly found: Found,
  ) {}

  span(column: number, y0: number, y1: number): void {
    const { nearness, owner, stamp, layerPart, layerItem, height } = this.buffer;
    const partMark = this.part + 1;
    const itemMark = this.item + 1;
    const { partPixels, itemPixels, boxes, spots } = this.found;
    const base = column * height;
    let near = run[0];
    const step = run[1];
    let pixels = 0;
    let last = -1;
    for (let at = base + y0; at <= base + y1; at += 1, near += step) {
      if (this.mask && this.mask.owner[at] !== this.mask.part + 1) continue;
      const weight = this.weights[at];
      if (stamp[at] !== itemMark) {
        stamp[at] = itemMark;
        this.alone += weight;
      }
      if (near <= nearness[at] || layerPart[at] === partMark) continue;
      layerPart[at] = partMark;
      partPixels[this.part] += weight;
      if (layerItem[at] === itemMark) continue;
      layerItem[at] = itemMark;
      const behind = owner[at] === 0 ? -1 : this.itemOfPart[owner[at] - 1];
      if (behind === this.item) continue;
      itemPixels[this.item] += weight;
      if (weight > 0) {
        growBox(boxes, this.item, column, at - base, at - base);
        pixels += weight;
        last = at - base;
      }
      if (behind >= 0 && this.through) this.through[behind] += weight;
    }
    if (last >= 0) noteSpot(spots, this.item, this.part, pixels, column + 0.5, last + sampleHeight(column));
  }
}

/** Counts what stands before one item: by item, the pixels where it would be seen but is not. */
export class CoverSink implements SpanSink {
  mark = 0;
  item = 0;
  porous = false;

  constructor(
    private readonly buffer: ItemBuffer,
    private readonly weights: Uint16Array,
    private readonly itemOfPart: Int32Array,
    readonly coverers: Float64Array,
  ) {}

  span(column: number, y0: number, y1: number): void {
    const { nearness, owner, stamp, height } = this.buffer;
    const base = column * height;
    let near = run[0];
    const step = run[1];
    for (let at = base + y0; at <= base + y1; at += 1, near += step) {
      if (stamp[at] === this.mark) continue;
      const tag = owner[at];
      const before = tag === 0 ? -1 : this.itemOfPart[tag - 1];
      if (this.porous && near > nearness[at]) {
        stamp[at] = this.mark;
        continue;
      }
      stamp[at] = this.mark;
      if (before >= 0 && before !== this.item) this.coverers[before] += this.weights[at];
    }
  }
}
