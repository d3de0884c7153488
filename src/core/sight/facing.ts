import type { Vec3 } from '../form/build/vector';
import { mayBeInside, solidOf } from './closed';
import { cornersOf } from './corners';
import type { PixelRect, SpanSink } from './filling';
import { drawShape, type Facing } from './scan';
import { after, type ScreenMatrix } from './screenFromWorld';
import { placeIn, type StagePart } from './stage';

/** Screen from part. */
export const partScreen = (screen: ScreenMatrix, part: StagePart): ScreenMatrix =>
  part.worldFromPart ? after(screen, part.worldFromPart) : screen;

/** The faces of a part that an eye can see: of a closed solid, from outside it, those that look at the eye. */
export function facingOf(part: StagePart, eye: Vec3, front: Facing): Facing {
  const solid = solidOf(part.shape);
  return !solid.isClosed || mayBeInside(solid, placeIn(part, eye)) ? 'both' : front;
}

/**
 * What stands on a mirror and its image meet in one line. Rounded corners may leave a crack there, finer than a
 * hundredth of a pixel, through which far things would show for a frame; setting the mirror back this much shuts it.
 */
const MIRROR_RECEDES_PIXELS = 0.02;

/** Draws a solid as an eye sees it directly. */
export function drawSolid(
  part: StagePart,
  screen: ScreenMatrix,
  rect: PixelRect,
  eye: Vec3,
  sink: SpanSink,
): void {
  const recede = part.shape.mirror ? MIRROR_RECEDES_PIXELS : 0;
  drawShape(part.shape, partScreen(screen, part), rect, null, facingOf(part, eye, 'front'), sink, recede);
}

/** Parts in the order in which drawing them writes least: items with something near first, their parts together. */
export function nearestFirst(parts: readonly StagePart[], screen: ScreenMatrix): StagePart[] {
  const depthOf = new Map<number, number>();
  for (const { item, centre, radius } of parts) {
    const depth =
      screen[8] * centre[0] + screen[9] * centre[1] + screen[10] * centre[2] + screen[11] - radius;
    depthOf.set(item, Math.min(depth, depthOf.get(item) ?? Infinity));
  }
  const key = (part: StagePart) => depthOf.get(part.item) ?? 0;
  return [...parts].sort((a, b) => key(a) - key(b) || a.item - b.item || a.index - b.index);
}

/** Corners are rounded on screen by less than this, pixels. */
const ROUNDING_PIXELS = 1;

/** Five numbers for each of four planes and one more: what a place is before the plane by, and the length of the normal. */
const PLANE = 5;

/** Whether all corners of a box lie beyond one and the same of some planes. */
function isBoxBeyond(corners: readonly Vec3[], planes: Float64Array): boolean {
  for (let k = 0; k < planes.length; k += PLANE) {
    let isBeyond = true;
    for (let c = 0; c < corners.length && isBeyond; c += 1) {
      const corner = corners[c];
      const height = planes[k] * corner[0] + planes[k + 1] * corner[1] + planes[k + 2] * corner[2];
      isBeyond = height + planes[k + 3] < 0;
    }
    if (isBeyond) return true;
  }
  return false;
}

/** The sides of a rectangle as planes through the pupil, inwards; their normals come from the rows of the matrix. */
function planesOf(screen: ScreenMatrix, { left, top, right, bottom }: PixelRect): Float64Array {
  const planes = new Float64Array(4 * PLANE);
  for (const [side, bound] of [left, right, top, bottom].entries()) {
    const row = side < 2 ? 0 : 4;
    const sign = side % 2 === 0 ? 1 : -1;
    const a = sign * (screen[row] - bound * screen[8]);
    const b = sign * (screen[row + 1] - bound * screen[9]);
    const c = sign * (screen[row + 2] - bound * screen[10]);
    const d = sign * (screen[row + 3] - bound * screen[11]);
    planes.set([a, b, c, d, Math.sqrt(a * a + b * b + c * c)], PLANE * side);
  }
  return planes;
}

/**
 * Whether a part can touch the rectangle at all, by the ball and the box around it, conservative; for all parts that are
 * asked of one rectangle.
 */
export function touching(screen: ScreenMatrix, rect: PixelRect): (part: StagePart) => boolean {
  const planes = planesOf(screen, rect);
  const around = planesOf(screen, {
    left: rect.left - ROUNDING_PIXELS,
    top: rect.top - ROUNDING_PIXELS,
    right: rect.right + ROUNDING_PIXELS,
    bottom: rect.bottom + ROUNDING_PIXELS,
  });
  const [forwardX, forwardY, forwardZ, back] = [screen[8], screen[9], screen[10], screen[11]];
  return (part) => {
    const { centre, radius } = part;
    const x = centre[0];
    const y = centre[1];
    const z = centre[2];
    for (let k = 0; k < planes.length; k += PLANE) {
      const height = planes[k] * x + planes[k + 1] * y + planes[k + 2] * z + planes[k + 3];
      if (height < -radius * planes[k + 4]) return false;
    }
    if (forwardX * x + forwardY * y + forwardZ * z + back <= -radius) return false;
    return !isBoxBeyond(cornersOf(part), around);
  };
}
