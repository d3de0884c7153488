import { type PixelRect, run, type SpanSink } from './filling';
import type { Grid } from './grid';
import type { SightStage } from './stage';
import { type Pairs, pairsOf, type Tags } from './tags';

/** The nearest thing at every pixel: inverse depth (0 for nothing) and part number + 1 (0 for nothing). */
export interface ItemBuffer {
  readonly width: number;
  readonly height: number;
  readonly nearness: Float32Array;
  owner: Tags;
  /** The same by twos. */
  ownerPairs: Pairs;
  /** Which item last touched a pixel, item number + 1: counts a pixel once however many triangles lie on it. */
  stamp: Tags;
  /** Which porous layer, and which item's layers, counted a pixel last: part and item number + 1. */
  layerPart: Tags;
  layerItem: Tags;
}

/** Fresh arrays for a grid. */
export function bufferFor(grid: Grid): ItemBuffer {
  const size = grid.width * grid.height;
  const owner = new Uint16Array(size);
  return {
    width: grid.width,
    height: grid.height,
    nearness: new Float32Array(size),
    owner,
    ownerPairs: pairsOf(owner),
    stamp: new Uint16Array(size),
    layerPart: new Uint16Array(size),
    layerItem: new Uint16Array(size),
  };
}

/** The largest number that two bytes hold. */
const MOST_IN_TWO_BYTES = 65535;

/** Gives a buffer wider tags where a stage's parts, or twice its items and one, are more than two bytes can number. */
export function makeRoomFor(buffer: ItemBuffer, { parts, forms }: SightStage): void {
  if (Math.max(parts.length, 2 * forms.length + 1) <= MOST_IN_TWO_BYTES) return;
  if (buffer.owner instanceof Int32Array) return;
  const size = buffer.width * buffer.height;
  buffer.owner = new Int32Array(size);
  buffer.ownerPairs = null;
  buffer.stamp = new Int32Array(size);
  buffer.layerPart = new Int32Array(size);
  buffer.layerItem = new Int32Array(size);
}

/** Sets values to 0 in the rectangle; at one go where it takes whole columns. */
function wipeValues(
  values: Float32Array | Tags,
  height: number,
  { left, top, right, bottom }: PixelRect,
): void {
  if (top === 0 && bottom === height) {
    values.fill(0, left * height, right * height);
    return;
  }
  for (let column = left; column < right; column += 1)
    values.fill(0, column * height + top, column * height + bottom);
}

/** Empties what says who is nearest in the rectangle. */
export function wipeOwners({ height, nearness, owner }: ItemBuffer, rect: PixelRect): void {
  wipeValues(nearness, height, rect);
  wipeValues(owner, height, rect);
}

/** Empties the stamps in the rectangle. */
export const wipeStamps = ({ height, stamp }: ItemBuffer, rect: PixelRect): void =>
  wipeValues(stamp, height, rect);

/** Empties the rectangle. */
export function wipe(buffer: ItemBuffer, rect: PixelRect, hasLayers: boolean): void {
  wipeOwners(buffer, rect);
  wipeStamps(buffer, rect);
  if (!hasLayers) return;
  wipeValues(buffer.layerPart, buffer.height, rect);
  wipeValues(buffer.layerItem, buffer.height, rect);
}

/** Only pixels where `owner` holds `part` + 1 are drawn on: the visible face of a mirror. */
export interface Mask {
  readonly owner: Tags;
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
    private readonly grid: Grid,
    private readonly mask: Mask | null,
  ) {}

  span(column: number, y0: number, y1: number): void {
    const from = column * this.buffer.height + y0;
    const to = from + y1 - y0;
    if (this.mask) this.drawMasked(this.mask, from, to);
    else if (this.counts) this.drawCounted(from, to);
    else this.draw(from, to);
  }

  private draw(from: number, to: number): void {
    const { nearness, owner } = this.buffer;
    const tag = this.part + 1;
    let near = run[0];
    const step = run[1];
    for (let at = from; at <= to; at += 1, near += step) {
      if (near > nearness[at]) {
        nearness[at] = near;
        owner[at] = tag;
      }
    }
  }

  private drawMasked(mask: Mask, from: number, to: number): void {
    const { nearness, owner } = this.buffer;
    const tag = this.part + 1;
    const wanted = mask.part + 1;
    let near = run[0];
    const step = run[1];
    for (let at = from; at <= to; at += 1, near += step) {
      if (mask.owner[at] === wanted && near > nearness[at]) {
        nearness[at] = near;
        owner[at] = tag;
      }
    }
  }

  private drawCounted(from: number, to: number): void {
    const { nearness, owner, stamp } = this.buffer;
    const mark = this.item + 1;
    const tag = this.part + 1;
    if (!this.grid.isEven) this.alone += this.weightOfFresh(from, to);
    let near = run[0];
    const step = run[1];
    let fresh = 0;
    for (let at = from; at <= to; at += 1, near += step) {
      if (near > nearness[at]) {
        nearness[at] = near;
        owner[at] = tag;
      }
      if (stamp[at] === mark) continue;
      stamp[at] = mark;
      fresh += 1;
    }
    if (this.grid.isEven) this.alone += fresh;
  }

  /** What the pixels weigh that the current item has not touched yet. */
  private weightOfFresh(from: number, to: number): number {
    const { stamp } = this.buffer;
    const { weights } = this.grid;
    let weight = 0;
    for (let at = from; at <= to; at += 1) if (stamp[at] !== this.item + 1) weight += weights[at];
    return weight;
  }
}

/**
 * Writes a tag, without counting: on all pixels of an item's solids, before its porous layers are counted on top, or
 * wherever nothing of a buffer is nearer, where a porous mirror (glass) is in view. Without a target it only tells
 * whether that is so anywhere.
 */
export class TagSink implements SpanSink {
  tag = 0;
  /** So much nearer, as a factor, a buffer has to be for what is drawn to count as behind it. */
  allowance = 1;
  /** Whether any sample was drawn, and whether at any nothing of the buffer was nearer. */
  hasDrawn = false;
  hasMet = false;

  constructor(
    private readonly target: Tags | null,
    private readonly height: number,
    private readonly nearness: Float32Array | null,
    private readonly mask: Mask | null = null,
  ) {}

  span(column: number, y0: number, y1: number): void {
    const { target, nearness, tag, mask, allowance } = this;
    const from = column * this.height + y0;
    const to = from + y1 - y0;
    this.hasDrawn = true;
    if (!nearness) {
      target?.fill(tag, from, to + 1);
      return;
    }
    if (this.hasMet && !target) return;
    const step = run[1] * allowance;
    let near = run[0] * allowance;
    for (let at = from; at <= to; at += 1, near += step) {
      if (!(near > nearness[at]) || (mask && mask.owner[at] !== mask.part + 1)) continue;
      this.hasMet = true;
      if (target) target[at] = tag;
    }
  }
}

/** The tags of a pane that is in view, for a buffer whose solids are drawn. */
export function paneSink({ height, nearness }: ItemBuffer, target: Tags, part: number): TagSink {
  const sink = new TagSink(target, height, nearness);
  sink.tag = part + 1;
  return sink;
}
