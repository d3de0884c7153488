import type { Grid } from './grid';
import type { PixelRect, SpanSink } from './scan';

/** The nearest thing at every pixel: inverse depth (0 for nothing) and part number + 1 (0 for nothing). */
export interface ItemBuffer {
  readonly width: number;
  readonly height: number;
  readonly nearness: Float32Array;
  readonly owner: Int32Array;
  /** Which item last touched a pixel, item number + 1: counts a pixel once however many triangles lie on it. */
  readonly stamp: Int32Array;
  /** Which porous layer, and which item's layers, counted a pixel last: part and item number + 1. */
  readonly layerPart: Int32Array;
  readonly layerItem: Int32Array;
}

/** Fresh arrays for a grid. */
export function bufferFor(grid: Grid): ItemBuffer {
  const size = grid.width * grid.height;
  return {
    width: grid.width,
    height: grid.height,
    nearness: new Float32Array(size),
    owner: new Int32Array(size),
    stamp: new Int32Array(size),
    layerPart: new Int32Array(size),
    layerItem: new Int32Array(size),
  };
}

/** Empties what says who is nearest in the rectangle. */
export function wipeOwners({ height, nearness, owner }: ItemBuffer, rect: PixelRect): void {
  for (let column = rect.left; column < rect.right; column += 1) {
    const from = column * height + rect.top;
    const to = column * height + rect.bottom;
    nearness.fill(0, from, to);
    owner.fill(0, from, to);
  }
}

/** Empties the stamps in the rectangle. */
export function wipeStamps({ height, stamp }: ItemBuffer, rect: PixelRect): void {
  for (let column = rect.left; column < rect.right; column += 1)
    stamp.fill(0, column * height + rect.top, column * height + rect.bottom);
}

/** Empties the rectangle. */
export function wipe(buffer: ItemBuffer, rect: PixelRect, hasLayers: boolean): void {
  const { height } = buffer;
  for (let column = rect.left; column < rect.right; column += 1) {
    const from = column * height + rect.top;
    const to = column * height + rect.bottom;
    buffer.nearness.fill(0, from, to);
    buffer.owner.fill(0, from, to);
    buffer.stamp.fill(0, from, to);
    if (!hasLayers) continue;
    buffer.layerPart.fill(0, from, to);
    buffer.layerItem.fill(0, from, to);
  }
}

/** Only pixels where `owner` holds `part` + 1 are drawn on: the visible face of a mirror. */
export interface Mask {
  readonly owner: Int32Array;
  readonly part: number;
}

/** Draws solids: keeps the nearest, and counts the pixels that each item would take up alone. */
export class SolidSink implements SpanSink {
  part = 0;
  item = 0;
  /** Whether the current item's outline is counted. */
  counts = true;
  /** Weighted pixels of the current item's outline, whether something stands before it or not. */
  alone = 0;

  constructor(
    private readonly buffer: ItemBuffer,
    private readonly weights: Uint16Array,
    private readonly mask: Mask | null,
  ) {}

  span(column: number, y0: number, y1: number, inverseDepth: number, step: number): void {
    const from = column * this.buffer.height + y0;
    const to = from + y1 - y0;
    if (this.mask) this.drawMasked(this.mask, from, to, inverseDepth, step);
    else if (this.counts) this.drawCounted(from, to, inverseDepth, step);
    else this.draw(from, to, inverseDepth, step);
  }

  private draw(from: number, to: number, inverseDepth: number, step: number): void {
    const { nearness, owner } = this.buffer;
    const tag = this.part + 1;
    let near = inverseDepth;
    for (let at = from; at <= to; at += 1, near += step) {
      if (near > nearness[at]) {
        nearness[at] = near;
        owner[at] = tag;
      }
    }
  }

  private drawMasked(mask: Mask, from: number, to: number, inverseDepth: number, step: number): void {
    const { nearness, owner } = this.buffer;
    const tag = this.part + 1;
    const wanted = mask.part + 1;
    let near = inverseDepth;
    for (let at = from; at <= to; at += 1, near += step) {
      if (mask.owner[at] === wanted && near > nearness[at]) {
        nearness[at] = near;
        owner[at] = tag;
      }
    }
  }

  private drawCounted(from: number, to: number, inverseDepth: number, step: number): void {
    const { nearness, owner, stamp } = this.buffer;
    const { weights } = this;
    const mark = this.item + 1;
    const tag = this.part + 1;
    let near = inverseDepth;
    let alone = 0;
    for (let at = from; at <= to; at += 1, near += step) {
      if (near > nearness[at]) {
        nearness[at] = near;
        owner[at] = tag;
      }
      if (stamp[at] === mark) continue;
      stamp[at] = mark;
      alone += weights[at];
    }
    this.alone += alone;
  }
}

/** Marks the pixels of an item's solids without counting, before its porous layers are counted on top. */
export class MarkSink implements SpanSink {
  mark = 0;

  constructor(
    private readonly stamp: Int32Array,
    private readonly height: number,
  ) {}

  span(column: number, y0: number, y1: number): void {
    this.stamp.fill(this.mark, column * this.height + y0, column * this.height + y1 + 1);
  }
}

/** Marks where a porous mirror (glass) is in view: its part number + 1 wherever no solid is nearer. */
export class PaneSink implements SpanSink {
  constructor(
    private readonly buffer: ItemBuffer,
    private readonly target: Int32Array,
    private readonly part: number,
  ) {}

  span(column: number, y0: number, y1: number, inverseDepth: number, step: number): void {
    const { nearness, height } = this.buffer;
    let near = inverseDepth;
    for (let at = column * height + y0; at <= column * height + y1; at += 1, near += step) {
      if (near > nearness[at]) this.target[at] = this.part + 1;
    }
  }
}
