import { moved, turned } from '../form/build/placement';
import { dot, scale, subtract, type Vec3 } from '../form/build/vector';
import { type ItemBuffer, type Mask, SolidSink } from './buffer';
import { facingOf, nearestFirst, partScreen, touching } from './facing';
import type { PixelRect } from './filling';
import type { Found } from './found';
import type { Grid } from './grid';
import { PorousSink } from './layers';
import { drawShape, type HalfSpace } from './scan';
import type { ScreenMatrix } from './screenFromWorld';
import { type StagePart, turnedInto, worldOf } from './stage';
import type { Tags } from './tags';

/** The plane of a mirror in the world: unit normal, out of its face, and a point on it. */
export interface Mirror {
  readonly normal: Vec3;
  readonly point: Vec3;
}

/** A mirror and the part whose face it is: only there is anything seen in it. */
export interface FacedMirror extends Mirror {
  readonly part: StagePart;
}

/** A mirror that is in frame, and screen from reflected world. */
export interface MirrorView extends FacedMirror {
  readonly screen: ScreenMatrix;
  /** Part number + 1 at every pixel where the mirror's face is in view. */
  readonly face: Tags;
  /** Where the eye is behind the mirror. */
  readonly image: Vec3;
}

/** The mirror that a part is, in the world; null when it is none. */
export function mirrorOf(part: StagePart): Mirror | null {
  const { mirror } = part.shape;
  const m = part.worldFromPart;
  if (!mirror || !m) return mirror;
  return { normal: turned(m, mirror.normal), point: moved(m, mirror.point) };
}

/** How far a place is before a mirror's plane, metres; negative behind it. */
export const heightOver = ({ normal, point }: Mirror, place: Vec3): number =>
  dot(normal, subtract(place, point));

/** Where the image of a place lies. */
export const reflected = (place: Vec3, mirror: Mirror): Vec3 =>
  subtract(place, scale(mirror.normal, 2 * heightOver(mirror, place)));

/** The positive side of a mirror in a part's own coordinates. */
export function halfSpaceFor(part: StagePart, { normal, point }: Mirror): HalfSpace {
  return {
    normal: turnedInto(part, normal),
    offset: dot(normal, point) - dot(normal, worldOf(part, [0, 0, 0])),
  };
}

/** Draws into `buffer` what the mirror shows: of some parts what is before it, reflected, where its face is in view. */
export function drawMirror(
  parts: readonly StagePart[],
  view: MirrorView,
  rect: PixelRect,
  grid: Grid,
  buffer: ItemBuffer,
  itemOfPart: Int32Array,
  found: Found,
): void {
  const mask: Mask = { owner: view.face, part: view.part.index };
  const mayTouch = touching(view.screen, rect);
  const reflected = nearestFirst(
    parts.filter((part) => part !== view.part && mayTouch(part)),
    view.screen,
  );
  const solid = new SolidSink(buffer, grid, mask);
  for (const part of reflected) {
    if (part.shape.openness !== null) continue;
    solid.part = part.index;
    drawShape(
      part.shape,
      partScreen(view.screen, part),
      rect,
      halfSpaceFor(part, view),
      facingOf(part, view.image, 'mirrored front'),
      solid,
    );
  }
  const layers = reflected.filter((part) => part.shape.openness !== null);
  if (layers.length === 0) return;
  const sink = new PorousSink(buffer, grid.weights, mask, itemOfPart, found);
  for (const part of layers) {
    sink.part = part.index;
    sink.item = part.item;
    drawShape(part.shape, partScreen(view.screen, part), rect, halfSpaceFor(part, view), 'both', sink);
  }
}
