import { dotFrom, type Vec3 } from '../form/build/vector';
import type { Camera } from '../optics/types';
import { makeRoomFor, paneSink, SolidSink, wipeOwners, wipeStamps } from './buffer';
import { NEAREST_METRES } from './clip';
import { drawSolid, nearestFirst, partScreen, touching } from './facing';
import type { PixelRect } from './filling';
import type { Scratch } from './look';
import { nearerThan, type Raster } from './raster';
import { meetingOf, rectAround } from './rects';
import { drawShape } from './scan';
import { type ScreenMatrix, screenFromWorld } from './screenFromWorld';
import type { SightStage, StagePart } from './stage';
import { endOfRun } from './tags';

/** Some solids as a camera sees them in a rectangle: who is nearest at each pixel, and nothing else. */
export interface Backdrop extends Raster {
  readonly screen: ScreenMatrix;
  /** Whether the buffer's stamps say where panes are seen. */
  readonly hasPanes: boolean;
}

/** Draws the solids among some parts, and what can be seen of some panes of glass, into the scratch's buffer. */
export function backdropOf(
  stage: SightStage,
  camera: Camera,
  { grid, buffer }: Scratch,
  rect: PixelRect,
  parts: readonly StagePart[],
  panes: readonly StagePart[],
): Backdrop {
  makeRoomFor(buffer, stage);
  const screen = screenFromWorld(camera.pose, grid);
  const mayTouch = touching(screen, rect);
  const sink = new SolidSink(buffer, grid, null);
  sink.counts = false;
  wipeOwners(buffer, rect);
  const solids = parts.filter((part) => part.shape.openness === null && mayTouch(part));
  for (const part of nearestFirst(solids, screen)) {
    sink.part = part.index;
    drawSolid(part, screen, rect, camera.pose.position, sink);
  }
  if (panes.length > 0) wipeStamps(buffer, rect);
  let hasPanes = false;
  for (const pane of panes) {
    const paned = paneSink(buffer, buffer.stamp, pane.index);
    drawShape(pane.shape, partScreen(screen, pane), rect, null, 'both', paned);
    hasPanes ||= paned.hasMet;
  }
  return { stage, camera, grid, rect, screen, buffer, hasPanes };
}

/**
 * What all of the upright rectangle around a box's picture lies behind. One part, a solid without tubes, by its number:
 * then every place in the box is hidden, and none has to be asked. `several`: nowhere is the box seen by a sample, but
 * between parts or tubes a gap finer than a pixel may be. `out`: the box is out of the rectangle. Null: none of these.
 * The box by its corners.
 */
export function hiderOf(raster: Raster, corners: readonly Vec3[]): number | 'several' | 'out' | null {
  const { camera, grid, rect } = raster;
  const around = rectAround(corners, camera, grid);
  const both = around && meetingOf(around, rect);
  if (!both) return 'out';
  const { position, forward } = camera.pose;
  let depth = Infinity;
  for (const corner of corners) depth = Math.min(depth, dotFrom(position, corner, forward));
  return depth > NEAREST_METRES ? nearerThan(raster, both, 1 / depth) : null;
}

/** 1 over the depth of what of a box is farthest away; 0 where some of it is as near as the lens. */
export function leastNearness(corners: readonly Vec3[], { pose: { position, forward } }: Camera): number {
  let farthest = 0;
  for (const corner of corners) {
    const depth = dotFrom(position, corner, forward);
    if (depth < NEAREST_METRES) return 0;
    farthest = Math.max(farthest, depth);
  }
  return 1 / farthest;
}

/**
 * The numbers of the parts that are nearest anywhere in some rectangles, as far as they are nearer there than something
 * of this nearness, 1 over its depth: what is farther away does not hide it.
 */
export function ownersIn(
  { grid, rect, buffer }: Raster,
  rects: readonly PixelRect[],
  nearness: number,
): ReadonlySet<number> {
  const owners = new Set<number>();
  const { owner, ownerPairs, nearness: nearest } = buffer;
  let latest = 0;
  for (const each of rects) {
    const both = meetingOf(each, rect);
    if (!both) continue;
    for (let column = both.left; column < both.right; column += 1) {
      const end = column * grid.height + both.bottom;
      let at = column * grid.height + both.top;
      while (at < end) {
        const tag = owner[at];
        const after = endOfRun(owner, ownerPairs, at, end);
        if (tag !== latest && tag !== 0) {
          while (at < after && !(nearest[at] > nearness)) at += 1;
          if (at < after) {
            latest = tag;
            owners.add(tag - 1);
          }
        }
        at = after;
      }
    }
  }
  return owners;
}

/** Whether a pane of glass is seen anywhere in some rectangles. */
export function showsPane({ grid, rect, buffer, hasPanes }: Backdrop, rects: readonly PixelRect[]): boolean {
  if (!hasPanes) return false;
  return rects.some((each) => {
    const both = meetingOf(each, rect);
    if (!both) return false;
    for (let column = both.left; column < both.right; column += 1)
      for (let at = column * grid.height + both.top; at < column * grid.height + both.bottom; at += 1)
        if (buffer.stamp[at] !== 0) return true;
    return false;
  });
}
