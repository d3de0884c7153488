import type { Vec3 } from '../form/build/vector';
import { Blocks, eyesOf } from './blocks';
import { entersFrame } from './entering';
import type { Grid } from './grid';
import type { Instant } from './instant';
import type { Look } from './look';
import type { Mirror } from './mirrors';
import { partRectsOf, rectAround } from './rects';
import type { PixelRect } from './scan';
import { INSIDE, MIRRORED, SHOWS } from './tally';
import { isSeenAgain, type Witness, witnessOf } from './witness';

/** Where a look saw an item, directly and in a mirror. */
export interface Sighting {
  readonly direct: Witness | null;
  readonly mirrored: Witness | null;
}

/** Fewer pixels of an image come and go with the samples: a ray that meets it again does not make it count again. */
const LEAST_IMAGE_PIXELS = 8;

/** Where a look saw an item, while the look's buffers still hold. */
export const sightingOf = (seen: Look, item: number): Sighting => ({
  direct: witnessOf(seen, item, 'direct'),
  mirrored: seen.mirrored.itemPixels[item] >= LEAST_IMAGE_PIXELS ? witnessOf(seen, item, 'mirrored') : null,
});

/** An instant with the raster of its frame and the mirrors that may be in it. */
export interface Asking extends Instant {
  readonly grid: Grid;
  readonly mirrors: readonly Mirror[];
}

/** What is known of an item at one instant: its state, as far as `open` is empty, else where a look has to be taken. */
export interface Known {
  readonly state: number;
  readonly open: readonly PixelRect[];
  /** Whether it was not seen, in what is open, a little before and after. */
  readonly isLikelyHidden: boolean;
}

/** Settles what an item does between two instants at which it was looked at, as far as that goes without a look. */
export class Settler {
  /** Whole boxes only: to ask more finely what blocks hide takes longer than to look at what they leave. */
  private readonly direct = new Blocks(0);
  private readonly mirrored = new Blocks(0);

  /**
   * An item's state at an instant. It shows, where a place at which it was seen a little before or after is seen again;
   * it does not, where its boxes lie outside the frame or behind blocks; and the same in the mirrors.
   * `isInside`: it is known to be inside the frame before or after, so that here only matters whether it shows.
   */
  known(item: number, asking: Asking, sightings: readonly Sighting[], isInside: boolean): Known {
    const { stage, camera, grid, mirrors } = asking;
    const witnesses = (way: keyof Sighting): readonly Witness[] =>
      sightings.flatMap((each) => each[way] ?? []);
    const isSeen = (way: keyof Sighting): boolean =>
      witnesses(way).some((witness) => isSeenAgain(witness, asking, grid));
    const pixelTangent = 1 / Math.min(grid.perTangentX, grid.perTangentY);
    const [eye, ...images] = eyesOf(camera.pose.position, mirrors, pixelTangent);
    const around = (boxes: readonly (readonly Vec3[])[]): readonly PixelRect[] =>
      boxes.flatMap((corners) => rectAround(corners, camera, grid) ?? []);
    let state = isInside ? INSIDE : 0;
    let direct: readonly PixelRect[] = [];
    if (isSeen('direct')) state |= SHOWS | INSIDE;
    else if (isInside) direct = around(this.direct.open(stage, item, [eye]));
    else if (camera.frame.distortion || entersFrame(stage, item, camera))
      direct = partRectsOf(stage, item, camera, grid);
    let mirrored: readonly PixelRect[] = [];
    if (mirrors.length > 0 && isSeen('mirrored')) state |= MIRRORED;
    else if (mirrors.length > 0) mirrored = around(this.mirrored.open(stage, item, images));
    return {
      state,
      open: [...direct, ...mirrored],
      isLikelyHidden:
        (direct.length === 0 || witnesses('direct').length === 0) &&
        (mirrored.length === 0 || witnesses('mirrored').length === 0),
    };
  }
}
