import { type ItemBuffer, type Mask, SolidSink } from './buffer';
import { facingOf, mayTouch, nearestFirst, partScreen } from './facing';
import type { Found } from './found';
import { PorousSink } from './layers';
import { drawShape, type HalfSpace, type PixelRect } from './scan';
import type { ScreenMatrix } from './screenFromWorld';
import type { SightStage, StagePart } from './stage';

/** The plane of a mirror in the world: unit normal, out of its face, and a point on it. */
export interface Mirror {
  readonly normal: readonly number[];
  readonly point: readonly number[];
}

/** A mirror that is in frame: the part, and screen from reflected world. */
export interface MirrorView extends Mirror {
  readonly part: StagePart;
  readonly screen: ScreenMatrix;
  /** Part number + 1 at every pixel where the mirror's face is in view. */
  readonly face: Int32Array;
  /** Where the eye is behind the mirror. */
  readonly image: readonly number[];
}

/** The mirror that a part is, in the world; null when it is none. */
export function mirrorOf(part: StagePart): Mirror | null {
  const { mirror } = part.shape;
  const m = part.worldFromPart;
  if (!mirror || !m) return mirror;
  const turn = (v: readonly number[], share: number) =>
    [0, 4, 8].map((row) => m[row] * v[0] + m[row + 1] * v[1] + m[row + 2] * v[2] + share * m[row + 3]);
  return { normal: turn(mirror.normal, 0), point: turn(mirror.point, 1) };
}

/** Where the image of a place lies. */
export function reflected(
  place: readonly [number, number, number],
  { normal, point }: Mirror,
): readonly [number, number, number] {
  const [a, b, c] = normal;
  const height = a * (place[0] - point[0]) + b * (place[1] - point[1]) + c * (place[2] - point[2]);
  return [place[0] - 2 * height * a, place[1] - 2 * height * b, place[2] - 2 * height * c];
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

/** Draws into `buffer` what the mirror shows: everything before it, reflected, where its face is in view. */
export function drawMirror(
  stage: SightStage,
  view: MirrorView,
  rect: PixelRect,
  weights: Uint16Array,
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
