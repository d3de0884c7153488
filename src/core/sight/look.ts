import type { Camera } from '../optics/types';
import { bufferFor, type ItemBuffer, MarkSink, type Mask, PaneSink, SolidSink, wipe } from './buffer';
import { mayBeInside, solidOf } from './closed';
import { type Grid, gridOf } from './grid';
import { CoverSink, emptyBoxes, growBox, PorousSink } from './layers';
import { drawShape, type Facing, type HalfSpace, type PixelRect } from './scan';
import { after, reflectionIn, type ScreenMatrix, screenFromWorld } from './screenFromWorld';
import type { SightStage, StagePart } from './stage';

/** What one way of seeing (directly, or in mirrors) found: pixels of the delivered frame, boxes in grid pixels. */
export interface Found {
  readonly partPixels: Float64Array;
  readonly itemPixels: Float64Array;
  readonly boxes: Float64Array;
}

/** A mirror that is in frame: the part, and screen from reflected world. */
export interface MirrorView {
  readonly part: StagePart;
  readonly screen: ScreenMatrix;
  readonly normal: readonly number[];
  readonly point: readonly number[];
  /** Part number + 1 at every pixel where the mirror's face is in view. */
  readonly face: Int32Array;
  /** Where the eye is behind the mirror. */
  readonly image: readonly number[];
}

/** What a lens sees at one instant. */
export interface Look {
  readonly stage: SightStage;
  readonly camera: Camera;
  readonly grid: Grid;
  readonly rect: PixelRect;
  readonly screen: ScreenMatrix;
  readonly direct: Found;
  readonly mirrored: Found;
  /** Pixels that each item's outline takes up in the frame, were nothing before it. */
  readonly alone: Float64Array;
  readonly mirrors: readonly MirrorView[];
  readonly buffer: ItemBuffer;
  readonly mirrorBuffer: ItemBuffer;
  readonly itemOfPart: Int32Array;
  /** By item with porous layers, the pixels of each other item that are seen through them. */
  readonly through: ReadonlyMap<number, Float64Array>;
}

export interface LookOptions {
  /** Pixels along the longer side of the frame. */
  readonly longSide?: number;
  /** Only these pixels of the grid; all by default. */
  readonly rect?: PixelRect;
}

/** Buffers of one size, used again from instant to instant. */
export interface Scratch {
  readonly grid: Grid;
  readonly buffer: ItemBuffer;
  readonly mirrorBuffer: ItemBuffer;
}

/** Buffers for a camera's frame. */
export function scratchFor(camera: Camera, longSide?: number): Scratch {
  const grid = gridOf(camera.frame, longSide);
  return { grid, buffer: bufferFor(grid), mirrorBuffer: bufferFor(grid) };
}

const wholeRect = (grid: Grid): PixelRect => ({ left: 0, top: 0, right: grid.width, bottom: grid.height });

/** Screen from part. */
const partScreen = (screen: ScreenMatrix, part: StagePart): ScreenMatrix =>
  part.worldFromPart ? after(screen, part.worldFromPart) : screen;

/** The faces of a part that an eye can see: of a closed solid, from outside it, those that look at the eye. */
function facingOf(part: StagePart, eye: readonly number[], front: Facing): Facing {
  const solid = solidOf(part.shape);
  if (!solid.isClosed) return 'both';
  const m = part.worldFromPart;
  let own = eye;
  if (m) {
    const [x, y, z] = [eye[0] - m[3], eye[1] - m[7], eye[2] - m[11]];
    own = [m[0] * x + m[4] * y + m[8] * z, m[1] * x + m[5] * y + m[9] * z, m[2] * x + m[6] * y + m[10] * z];
  }
  return mayBeInside(solid, own) ? 'both' : front;
}

/** Parts in the order in which drawing them writes least: items with something near first, their parts together. */
function nearestFirst(parts: readonly StagePart[], screen: ScreenMatrix): StagePart[] {
  const depthOf = new Map<number, number>();
  for (const { item, centre, radius } of parts) {
    const depth =
      screen[8] * centre[0] + screen[9] * centre[1] + screen[10] * centre[2] + screen[11] - radius;
    depthOf.set(item, Math.min(depth, depthOf.get(item) ?? Infinity));
  }
  const key = (part: StagePart) => depthOf.get(part.item) ?? 0;
  return [...parts].sort((a, b) => key(a) - key(b) || a.item - b.item || a.index - b.index);
}

/** Whether a ball around the part can touch the rectangle at all; conservative. */
function mayTouch(screen: ScreenMatrix, part: StagePart, rect: PixelRect): boolean {
  const [x, y, z] = part.centre;
  const { radius } = part;
  // Each side of the rectangle is a plane through the pupil; its normal comes from the rows of the matrix.
  for (let side = 0; side < 4; side += 1) {
    const row = side < 2 ? 0 : 4;
    const sign = side % 2 === 0 ? 1 : -1;
    const bound = side === 0 ? rect.left : side === 1 ? rect.right : side === 2 ? rect.top : rect.bottom;
    const a = sign * (screen[row] - bound * screen[8]);
    const b = sign * (screen[row + 1] - bound * screen[9]);
    const c = sign * (screen[row + 2] - bound * screen[10]);
    const d = sign * (screen[row + 3] - bound * screen[11]);
    if (a * x + b * y + c * z + d < -radius * Math.sqrt(a * a + b * b + c * c)) return false;
  }
  return screen[8] * x + screen[9] * y + screen[10] * z + screen[11] > -radius;
}

/** The positive side of a mirror in a part's own coordinates. */
function halfSpaceFor(part: StagePart, normal: readonly number[], point: readonly number[]): HalfSpace {
  const offset = normal[0] * point[0] + normal[1] * point[1] + normal[2] * point[2];
  const m = part.worldFromPart;
  if (!m) return { normal, offset };
  return {
    normal: [
      normal[0] * m[0] + normal[1] * m[4] + normal[2] * m[8],
      normal[0] * m[1] + normal[1] * m[5] + normal[2] * m[9],
      normal[0] * m[2] + normal[1] * m[6] + normal[2] * m[10],
    ],
    offset: offset - (normal[0] * m[3] + normal[1] * m[7] + normal[2] * m[11]),
  };
}

/** Counts the owners of a buffer's pixels, by runs. */
function countOwners(
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

const emptyFound = (stage: SightStage): Found => ({
  partPixels: new Float64Array(stage.parts.length),
  itemPixels: new Float64Array(stage.forms.length),
  boxes: emptyBoxes(stage.forms.length),
});

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
 * then the same once more in each mirror that is in frame. Exact for pixel centres, corners rounded to 1/256 pixel.
 */
export function look(stage: SightStage, camera: Camera, scratch: Scratch, options: LookOptions = {}): Look {
  const { grid, buffer, mirrorBuffer } = scratch;
  const rect = options.rect ?? wholeRect(grid);
  const { weights } = grid;
  const screen = screenFromWorld(camera.pose, grid);
  const itemCount = stage.forms.length;
  const itemOfPart = Int32Array.from(stage.parts, (part) => part.item);
  const alone = new Float64Array(itemCount);
  const direct = emptyFound(stage);
  const mirrored = emptyFound(stage);
  const through = new Map<number, Float64Array>();

  wipe(buffer, rect);
  const eye = camera.pose.position;
  const inView = nearestFirst(
    stage.parts.filter((part) => mayTouch(screen, part, rect)),
    screen,
  );
  const solid = new SolidSink(buffer, weights, null);
  for (const part of inView) {
    if (part.shape.openness !== null) continue;
    solid.part = part.index;
    solid.item = part.item;
    solid.alone = 0;
    drawShape(part.shape, partScreen(screen, part), rect, null, facingOf(part, eye, 'front'), solid);
    alone[part.item] += solid.alone;
  }
  countOwners(buffer, rect, weights, itemOfPart, direct);
  const layers = inView.filter((part) => part.shape.openness !== null);
  if (layers.length > 0) {
    const mark = new MarkSink(buffer.stamp, buffer.width);
    const sink = new PorousSink(
      buffer,
      weights,
      null,
      itemOfPart,
      direct.partPixels,
      direct.itemPixels,
      direct.boxes,
    );
    let item = -1;
    for (const part of layers) {
      if (part.item !== item) {
        item = part.item;
        mark.mark = item + 1;
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
  for (const part of inView) {
    const mirror = mirrorOf(part);
    if (!mirror || direct.partPixels[part.index] === 0) continue;
    const { normal, point } = mirror;
    const height =
      normal[0] * (eye[0] - point[0]) + normal[1] * (eye[1] - point[1]) + normal[2] * (eye[2] - point[2]);
    if (height <= 0) continue;
    const image = [0, 1, 2].map((axis) => eye[axis] - 2 * height * normal[axis]);
    let face = buffer.owner;
    if (part.shape.openness !== null) {
      face = new Int32Array(buffer.owner.length);
      drawShape(
        part.shape,
        partScreen(screen, part),
        rect,
        null,
        'both',
        new PaneSink(buffer, face, part.index),
      );
    }
    const view = { part, normal, point, face, image, screen: after(screen, reflectionIn(normal, point)) };
    if (mirrors.length === 0) wipe(mirrorBuffer, rect);
    drawMirror(
      stage,
      view,
      within(rect, direct.boxes, part.item),
      weights,
      mirrorBuffer,
      itemOfPart,
      mirrored,
    );
    mirrors.push(view);
  }
  if (mirrors.length > 0) countOwners(mirrorBuffer, rect, weights, itemOfPart, mirrored);
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

/** The mirror that a part is, in the world; null when it is none. */
export function mirrorOf(
  part: StagePart,
): { readonly normal: readonly number[]; readonly point: readonly number[] } | null {
  const { mirror } = part.shape;
  const m = part.worldFromPart;
  if (!mirror || !m) return mirror;
  const turn = (v: readonly number[], share: number) =>
    [0, 4, 8].map((row) => m[row] * v[0] + m[row + 1] * v[1] + m[row + 2] * v[2] + share * m[row + 3]);
  return { normal: turn(mirror.normal, 0), point: turn(mirror.point, 1) };
}

function drawMirror(
  stage: SightStage,
  view: MirrorView,
  rect: PixelRect,
  weights: Uint8Array | null,
  buffer: ItemBuffer,
  itemOfPart: Int32Array,
  found: Found,
): void {
  const mask: Mask = { owner: view.face, part: view.part.index };
  const reflected = nearestFirst(
    stage.parts.filter((part) => part !== view.part && mayTouch(view.screen, part, rect)),
    view.screen,
  );
  const solid = new SolidSink(buffer, weights, mask);
  for (const part of reflected) {
    if (part.shape.openness !== null) continue;
    solid.part = part.index;
    drawShape(
      part.shape,
      partScreen(view.screen, part),
      rect,
      halfSpaceFor(part, view.normal, view.point),
      facingOf(part, view.image, 'mirrored front'),
      solid,
    );
  }
  const layers = reflected.filter((part) => part.shape.openness !== null);
  if (layers.length === 0) return;
  const sink = new PorousSink(
    buffer,
    weights,
    mask,
    itemOfPart,
    found.partPixels,
    found.itemPixels,
    found.boxes,
  );
  for (const part of layers) {
    sink.part = part.index;
    sink.item = part.item;
    drawShape(
      part.shape,
      partScreen(view.screen, part),
      rect,
      halfSpaceFor(part, view.normal, view.point),
      'both',
      sink,
    );
  }
}

/** Who stands before an item in this look: item numbers and pixels, largest first. Only until the next look. */
export function coverersOf(
  seen: Look,
  item: number,
): readonly { readonly item: number; readonly pixels: number }[] {
  const { stage, buffer, grid, rect, screen, itemOfPart, camera } = seen;
  const count = stage.forms.length;
  const sink = new CoverSink(buffer, grid.weights, itemOfPart, new Float64Array(count));
  sink.mark = count + 1 + item;
  sink.item = item;
  const own = stage.parts.slice(stage.firstPart[item], stage.firstPart[item + 1]);
  for (const porous of [true, false]) {
    sink.porous = porous;
    for (const part of own) {
      if ((part.shape.openness !== null) !== porous || !mayTouch(screen, part, rect)) continue;
      const facing = porous ? 'both' : facingOf(part, camera.pose.position, 'front');
      drawShape(part.shape, partScreen(screen, part), rect, null, facing, sink);
    }
  }
  return Array.from(sink.coverers, (pixels, before) => ({ item: before, pixels }))
    .filter(({ pixels }) => pixels > 0)
    .sort((a, b) => b.pixels - a.pixels || a.item - b.item);
}
