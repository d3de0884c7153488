import type { Camera } from '../optics/types';
import type { ItemBuffer } from './buffer';
import type { PixelRect } from './filling';
import type { Grid } from './grid';
import type { SightStage } from './stage';

/** How much nearer, as a share, a buffer has to be before a place counts as hidden without a ray. */
export const CLEARLY_NEARER = 1.0005;

/** What a camera sees in a rectangle, as far as a buffer says who is nearest at each pixel. */
export interface Raster {
  readonly stage: SightStage;
  readonly camera: Camera;
  readonly grid: Grid;
  readonly rect: PixelRect;
  readonly buffer: ItemBuffer;
}

/** What a raster says with one of its buffers, always as an object of one make: what asks it is compiled once. */
export const rasterOf = (
  { stage, camera, grid, rect }: Omit<Raster, 'buffer'>,
  buffer: ItemBuffer,
): Raster => ({ stage, camera, grid, rect, buffer });

/**
 * What is clearly nearer than a place at all pixels of a rectangle: one part, a solid without tubes, by its number;
 * `several` where there is more than one, or tubes; null where some pixel shows nothing so near. `nearness` is 1 over
 * the depth of the place.
 */
export function nearerThan(
  { stage, grid, buffer: { owner, nearness: nearest } }: Raster,
  { left, top, right, bottom }: PixelRect,
  nearness: number,
): number | 'several' | null {
  const limit = nearness * CLEARLY_NEARER;
  const first = owner[left * grid.height + top];
  if (first === 0) return null;
  let isOne = stage.parts[first - 1].shape.tubes.length === 0;
  for (let column = left; column < right; column += 1)
    for (let at = column * grid.height + top; at < column * grid.height + bottom; at += 1) {
      if (!(nearest[at] > limit)) return null;
      if (owner[at] !== first) isOne = false;
    }
  return isOne ? first - 1 : 'several';
}
