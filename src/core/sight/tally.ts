import type { Coverer } from './coverers';
import type { Look } from './look';

/** Bits of an item's state at one instant. */
export const ASKED = 1;
export const SHOWS = 2;
export const MIRRORED = 4;
export const INSIDE = 8;

/** The largest value so far, and the frame it was found at. */
export interface Peak {
  value: number;
  frame: number;
}

const noPeak = (): Peak => ({ value: 0, frame: -1 });

function raise(peak: Peak, value: number, frame: number): boolean {
  if (!(value > peak.value)) return false;
  peak.value = value;
  peak.frame = frame;
  return true;
}

/** Another item's share of the frame before or in front of this one. */
interface Companion {
  readonly item: number;
  readonly share: number;
}

export type Box = readonly [number, number, number, number];

/** What is known of one item over a span. Values are shares of the frame. */
export interface ItemTally {
  readonly states: Uint8Array;
  readonly share: Peak;
  readonly mirrored: Peak;
  readonly covered: Peak;
  readonly parts: Map<string, number>;
  readonly mirroredParts: Map<string, number>;
  /** Of what shows at the largest share, 0..1 of the frame. */
  extent: Box | null;
  mirroredExtent: Box | null;
  /** Who stands before it when most of it is covered, and through whose layers it is seen when most of it shows. */
  coveredBy: readonly Companion[];
  through: readonly Companion[];
}

/** Nothing known yet, over so many frames. */
export const tallyFor = (frames: number): ItemTally => ({
  states: new Uint8Array(frames),
  share: noPeak(),
  mirrored: noPeak(),
  covered: noPeak(),
  parts: new Map(),
  mirroredParts: new Map(),
  extent: null,
  mirroredExtent: null,
  coveredBy: [],
  through: [],
});

export function boxOf(look: Look, boxes: Float64Array, item: number): Box | null {
  const { grid } = look;
  const [left, top, right, bottom] = boxes.subarray(item * 4, item * 4 + 4);
  if (!(left < right)) return null;
  const inFrame = (value: number) => Math.min(1, Math.max(0, value));
  const middleX = (left + right) / 2;
  const middleY = (top + bottom) / 2;
  return [
    inFrame(grid.frameX(left, middleY)),
    inFrame(grid.frameY(middleX, top)),
    inFrame(grid.frameX(right, middleY)),
    inFrame(grid.frameY(middleX, bottom)),
  ];
}

function seenThrough({ through, grid }: Look, item: number): readonly Companion[] {
  const layers: Companion[] = [];
  for (const [layer, pixels] of through) {
    if (pixels[item] > 0) layers.push({ item: layer, share: pixels[item] / grid.framePixels });
  }
  return layers.sort((a, b) => b.share - a.share || a.item - b.item);
}

function sharesByName(look: Look, item: number, pixels: Float64Array): Map<string, number> {
  const shares = new Map<string, number>();
  for (let k = look.stage.firstPart[item]; k < look.stage.firstPart[item + 1]; k += 1) {
    if (pixels[k] === 0) continue;
    const { name } = look.stage.parts[k];
    shares.set(name, (shares.get(name) ?? 0) + pixels[k] / look.grid.framePixels);
  }
  return shares;
}

function raiseParts(known: Map<string, number>, now: ReadonlyMap<string, number>): void {
  for (const [name, share] of now) known.set(name, Math.max(share, known.get(name) ?? 0));
}

/** Notes what a look says of one item at one frame, but for who stands before it. */
export function note(tally: ItemTally, look: Look, item: number, frame: number): void {
  const { direct, mirrored, alone, grid } = look;
  const shows = direct.itemPixels[item];
  const inMirror = mirrored.itemPixels[item];
  tally.states[frame] =
    ASKED |
    (shows > 0 ? SHOWS : 0) |
    (inMirror > 0 ? MIRRORED : 0) |
    (shows > 0 || alone[item] > 0 ? INSIDE : 0);
  if (shows > 0) {
    if (raise(tally.share, shows / grid.framePixels, frame)) {
      tally.extent = boxOf(look, direct.boxes, item);
      tally.through = seenThrough(look, item);
    }
    raiseParts(tally.parts, sharesByName(look, item, direct.partPixels));
  }
  if (inMirror > 0) {
    if (raise(tally.mirrored, inMirror / grid.framePixels, frame)) {
      tally.mirroredExtent = boxOf(look, mirrored.boxes, item);
    }
    raiseParts(tally.mirroredParts, sharesByName(look, item, mirrored.partPixels));
  }
  raise(tally.covered, Math.max(0, alone[item] - shows) / grid.framePixels, frame);
}

/** Notes who stands before an item when most of it is covered. */
export function noteCoverers(tally: ItemTally, coverers: readonly Coverer[], framePixels: number): void {
  tally.coveredBy = coverers.map(({ item, pixels }) => ({ item, share: pixels / framePixels }));
}
