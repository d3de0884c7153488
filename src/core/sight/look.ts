import type { Camera } from '../optics/types';
import { bufferFor, type ItemBuffer, makeRoomFor, paneSink, SolidSink, TagSink, wipe } from './buffer';
import { drawSolid, facingOf, nearestFirst, partScreen, touching } from './facing';
import type { PixelRect } from './filling';
import { countOwners, emptyFound, type Found } from './found';
import { frameKey, type Grid, gridAs, gridOf } from './grid';
import { PorousSink } from './layers';
import { drawMirror, heightOver, type MirrorView, mirrorOf, reflected } from './mirrors';
import { drawShape } from './scan';
import { after, reflectionIn, type ScreenMatrix, screenFromWorld } from './screenFromWorld';
import { numbersOf, type SightStage, type StagePart } from './stage';
import type { Tags } from './tags';

/** What a lens sees at one instant. */
export interface Look {
  readonly stage: SightStage;
  readonly camera: Camera;
  readonly grid: Grid;
  readonly rect: PixelRect;
  readonly screen: ScreenMatrix;
  readonly direct: Found;
  readonly mirrored: Found;
  /** Pixels that each item's outline takes up in the frame, were nothing before it; of the items that were asked for. */
  readonly alone: Float64Array;
  readonly mirrors: readonly MirrorView[];
  readonly buffer: ItemBuffer;
  readonly mirrorBuffer: ItemBuffer;
  readonly itemOfPart: Int32Array;
  /** By item with porous layers, the pixels of each other item that are seen through them. */
  readonly through: ReadonlyMap<number, Float64Array>;
}

/** How fine to look, and where. */
export interface LookOptions {
  /** Pixels along the longer side of the frame. */
  readonly longSide?: number;
  /** Only these pixels of the grid; all by default. */
  readonly rect?: PixelRect;
  /** Only these items' outlines are counted; all by default. */
  readonly items?: ReadonlySet<number>;
  /** Only these parts, all by default. More of them only hide more: what is not seen then is not seen among all. */
  readonly parts?: readonly StagePart[];
}

/** Buffers of one size, used again from instant to instant. */
export interface Scratch {
  readonly grid: Grid;
  readonly buffer: ItemBuffer;
  readonly mirrorBuffer: ItemBuffer;
  /** Where panes of glass are in view, one after the other; as many as have been needed at once. */
  readonly panes: Tags[];
}

/** Buffers for a camera's frame. */
export function scratchFor(camera: Camera, longSide?: number): Scratch {
  const grid = gridOf(camera.frame, longSide);
  return { grid, buffer: bufferFor(grid), mirrorBuffer: bufferFor(grid), panes: [] };
}

/** Tags for one more pane, empty in a rectangle. */
function paneTags({ buffer, panes }: Scratch, index: number, rect: PixelRect): Tags {
  if (panes[index]?.BYTES_PER_ELEMENT !== buffer.owner.BYTES_PER_ELEMENT) panes[index] = buffer.owner.slice();
  const { height } = buffer;
  for (let column = rect.left; column < rect.right; column += 1)
    panes[index].fill(0, column * height + rect.top, column * height + rect.bottom);
  return panes[index];
}

/** Scratches that nobody uses at the moment, by their frame; a few, since each holds some ten megabytes. */
const IDLE: { readonly key: string; readonly scratch: Scratch }[] = [];
const MOST_IDLE = 4;

/** Lends a scratch for a camera's frame: the one that was used for such a frame before, if it is idle. */
export function borrowScratch(camera: Camera): { readonly scratch: Scratch; readonly giveBack: () => void } {
  const key = frameKey(camera.frame);
  const place = IDLE.findIndex((idle) => idle.key === key);
  const scratch = place >= 0 ? IDLE.splice(place, 1)[0].scratch : scratchFor(camera);
  return {
    scratch,
    giveBack: () => {
      IDLE.push({ key, scratch });
      if (IDLE.length > MOST_IDLE) IDLE.shift();
    },
  };
}

/**
 * The same buffers for another frame of the same delivery, as a zoom draws on its way. A lens that bends lines has a
 * field of another size then, and so buffers of its own.
 */
export function scratchAs(scratch: Scratch, from: Camera, to: Camera): Scratch {
  const grid = gridAs(scratch.grid, from, to);
  if (grid === scratch.grid) return scratch;
  return to.frame.distortion
    ? { grid, buffer: bufferFor(grid), mirrorBuffer: bufferFor(grid), panes: [] }
    : { ...scratch, grid };
}

const wholeRect = (grid: Grid): PixelRect => ({ left: 0, top: 0, right: grid.width, bottom: grid.height });

/** The part of a rectangle that an item's box lies in. */
function within(rect: PixelRect, boxes: Float64Array, item: number): PixelRect {
  return {
    left: Math.max(rect.left, boxes[item * 4]),
    top: Math.max(rect.top, boxes[item * 4 + 1]),
    right: Math.min(rect.right, boxes[item * 4 + 2]),
    bottom: Math.min(rect.bottom, boxes[item * 4 + 3]),
  };
}

/**
 * What the camera sees of the stage at one instant, by an item buffer: solids nearest first, porous layers over them,
 * then the same once more in each mirror that is in frame. Exact for the grid's
 * samples, one a pixel, corners rounded to 1/256 pixel.
 */
export function look(stage: SightStage, camera: Camera, scratch: Scratch, options: LookOptions = {}): Look {
  const { grid, buffer, mirrorBuffer } = scratch;
  const rect = options.rect ?? wholeRect(grid);
  const screen = screenFromWorld(camera.pose, grid);
  const itemCount = stage.forms.length;
  const { itemOfPart, hasLayers } = numbersOf(stage);
  const alone = new Float64Array(itemCount);
  const direct = emptyFound(stage);
  const mirrored = emptyFound(stage);
  const through = new Map<number, Float64Array>();

  makeRoomFor(buffer, stage);
  makeRoomFor(mirrorBuffer, stage);
  const eye = camera.pose.position;
  const { parts = stage.parts, items } = options;
  const inView = nearestFirst(parts.filter(touching(screen, rect)), screen);
  const layers = inView.filter((part) => part.shape.openness !== null);
  wipe(buffer, rect, layers.length > 0);
  const solid = new SolidSink(buffer, grid, null);
  for (const part of inView) {
    if (part.shape.openness !== null) continue;
    solid.part = part.index;
    solid.item = part.item;
    solid.counts = !items || items.has(part.item);
    solid.alone = 0;
    drawSolid(part, screen, rect, eye, solid);
    alone[part.item] += solid.alone;
  }
  countOwners(buffer, rect, grid, itemOfPart, direct);
  if (layers.length > 0) {
    const mark = new TagSink(buffer.stamp, buffer.height, null);
    const sink = new PorousSink(buffer, grid.weights, null, itemOfPart, direct);
    let item = -1;
    for (const part of layers) {
      if (part.item !== item) {
        item = part.item;
        mark.tag = item + 1;
        sink.through = new Float64Array(itemCount);
        through.set(item, sink.through);
        for (const own of inView) {
          if (own.item === item && own.shape.openness === null) {
            drawShape(own.shape, partScreen(screen, own), rect, null, facingOf(own, eye, 'front'), mark);
          }
        }
      }
      sink.part = part.index;
      sink.item = part.item;
      sink.alone = 0;
      drawShape(part.shape, partScreen(screen, part), rect, null, 'both', sink);
      alone[part.item] += sink.alone;
    }
  }

  const mirrors: MirrorView[] = [];
  let panes = 0;
  for (const part of inView) {
    const mirror = mirrorOf(part);
    if (!mirror || direct.partPixels[part.index] === 0) continue;
    if (heightOver(mirror, eye) <= 0) continue;
    const { normal, point } = mirror;
    const isPane = part.shape.openness !== null;
    const face = isPane ? paneTags(scratch, panes++, rect) : buffer.owner;
    if (isPane) {
      const sink = paneSink(buffer, face, part.index);
      drawShape(part.shape, partScreen(screen, part), rect, null, 'both', sink);
    }
    const view = {
      part,
      normal,
      point,
      face,
      image: reflected(eye, mirror),
      screen: after(screen, reflectionIn(normal, point)),
    };
    if (mirrors.length === 0) wipe(mirrorBuffer, rect, hasLayers);
    drawMirror(parts, view, within(rect, direct.boxes, part.item), grid, mirrorBuffer, itemOfPart, mirrored);
    mirrors.push(view);
  }
  if (mirrors.length > 0) countOwners(mirrorBuffer, rect, grid, itemOfPart, mirrored);
  return {
    stage,
    camera,
    grid,
    rect,
    screen,
    direct,
    mirrored,
    alone,
    mirrors,
    buffer,
    mirrorBuffer,
    itemOfPart,
    through,
  };
}
