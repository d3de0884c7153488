import type { Vec3 } from '../form/build/vector';
import { cameraFromWorld } from '../optics/project';
import type { Camera } from '../optics/types';
import { type ItemBuffer, makeRoomFor, paneSink, SolidSink, wipeOwners, wipeStamps } from './buffer';
import { NEAREST_METRES } from './clip';
import { drawSolid, nearestFirst, partScreen, touching } from './facing';
import type { Grid } from './grid';
import type { Scratch } from './look';
import { meetingOf, rectAround } from './rects';
import { drawShape, type PixelRect } from './scan';
import { screenFromWorld } from './screenFromWorld';
import type { SightStage, StagePart } from './stage';
import { CLEARLY_NEARER } from './ways';

/** Some solids as a camera sees them in a rectangle: who is nearest at each pixel, and nothing else. */
export interface Backdrop {
  readonly stage: SightStage;
  readonly camera: Camera;
  readonly grid: Grid;
  readonly rect: PixelRect;
  /** Its stamps say where a pane is seen, if there are panes. */
  readonly buffer: ItemBuffer;
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
  for (const pane of panes)
    drawShape(
      pane.shape,
      partScreen(screen, pane),
      rect,
      null,
      'both',
      paneSink(buffer, buffer.stamp, pane.index),
    );
  return { stage, camera, grid, rect, buffer, hasPanes: panes.length > 0 };
}

/**
 * The one part, a solid without tubes, that all of the upright rectangle around a box's picture lies behind: then every
 * place in the box is hidden, and none has to be asked. Its number; `out` where the box is out of the rectangle, null
 * where there is no such part. The box by its corners.
 */
export function hiderOf(
  { stage, camera, grid, rect, buffer: { owner, nearness } }: Omit<Backdrop, 'hasPanes'>,
  corners: readonly Vec3[],
): number | 'out' | null {
  const around = rectAround(corners, camera, grid);
  const both = around && meetingOf(around, rect);
  if (!both) return 'out';
  const depth = Math.min(...corners.map((corner) => cameraFromWorld(camera.pose, corner)[2]));
  if (!(depth > NEAREST_METRES)) return null;
  const first = owner[both.left * grid.height + both.top];
  if (first === 0 || stage.parts[first - 1].shape.tubes.length > 0) return null;
  const limit = CLEARLY_NEARER / depth;
  for (let column = both.left; column < both.right; column += 1)
    for (let at = column * grid.height + both.top; at < column * grid.height + both.bottom; at += 1)
      if (owner[at] !== first || !(nearness[at] > limit)) return null;
  return first - 1;
}

/** The numbers of the parts that are nearest anywhere in some rectangles. */
export function ownersIn({ grid, rect, buffer }: Backdrop, rects: readonly PixelRect[]): ReadonlySet<number> {
  const owners = new Set<number>();
  let latest = 0;
  for (const each of rects) {
    const both = meetingOf(each, rect);
    if (!both) continue;
    for (let column = both.left; column < both.right; column += 1)
      for (let at = column * grid.height + both.top; at < column * grid.height + both.bottom; at += 1) {
        const tag = buffer.owner[at];
        if (tag === latest || tag === 0) continue;
        latest = tag;
        owners.add(tag - 1);
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
