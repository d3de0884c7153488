import { backdropOf } from './backdrop';
import { wipeStamps } from './buffer';
import { facingOf, partScreen, touching } from './facing';
import type { Instant } from './instant';
import { CoverSink } from './layers';
import type { Scratch } from './look';
import type { Raster } from './raster';
import type { Group } from './rects';
import { drawShape } from './scan';
import { screenFromWorld } from './screenFromWorld';
import { numbersOf } from './stage';

/** Another item's pixels before an item. */
export interface Coverer {
  readonly item: number;
  readonly pixels: number;
}

/**
 * Who stands before an item in a look, or before a backdrop of all parts whose stamps are wiped: largest first. Only
 * while the buffer holds.
 */
export function coverersOf({ stage, buffer, grid, rect, camera }: Raster, item: number): readonly Coverer[] {
  const screen = screenFromWorld(camera.pose, grid);
  const count = stage.forms.length;
  const sink = new CoverSink(buffer, grid.weights, numbersOf(stage).itemOfPart, new Float64Array(count));
  sink.mark = count + 1 + item;
  sink.item = item;
  const own = stage.parts
    .slice(stage.firstPart[item], stage.firstPart[item + 1])
    .filter(touching(screen, rect));
  for (const porous of [true, false]) {
    sink.porous = porous;
    for (const part of own) {
      if ((part.shape.openness !== null) !== porous) continue;
      const facing = porous ? 'both' : facingOf(part, camera.pose.position, 'front');
      drawShape(part.shape, partScreen(screen, part), rect, null, facing, sink);
    }
  }
  return Array.from(sink.coverers, (pixels, before) => ({ item: before, pixels }))
    .filter(({ pixels }) => pixels > 0)
    .sort((a, b) => b.pixels - a.pixels || a.item - b.item);
}

/** Who stands before each item of a group at an instant, without a look: as `coverersOf`. */
export function coverersIn(
  { items, rect }: Group,
  { stage, camera }: Instant,
  scratch: Scratch,
): ReadonlyMap<number, readonly Coverer[]> {
  const backdrop = backdropOf(stage, camera, scratch, rect, stage.parts, []);
  wipeStamps(scratch.buffer, rect);
  return new Map(Array.from(items, (item) => [item, coverersOf(backdrop, item)]));
}
