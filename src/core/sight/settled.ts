import { Blocks } from './blocks';
import { entersFrame } from './entering';
import type { Eye } from './eyes';
import type { PixelRect } from './filling';
import type { Grid } from './grid';
import type { Instant } from './instant';
import type { Look } from './look';
import { partRectsOf } from './rects';
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

/** An instant with the raster of its frame, the eye, and its images behind the mirrors that may be in frame. */
export interface Asking extends Instant {
  readonly grid: Grid;
  readonly eye: Eye;
  readonly images: readonly Eye[];
}

/** What is known of an item at one instant: its state, as far as nothing is open, else where a look has to be taken. */
export interface Known {
  readonly state: number;
  /** Pixels in which it may show, and in which mirrors may show it. */
  readonly direct: readonly PixelRect[];
  readonly mirrored: readonly PixelRect[];
  /** Whether it was not seen, in what is open, a little before and after. */
  readonly isLikelyHidden: boolean;
}

/** Settles what an item does between two instants at which it was looked at, as far as that goes without a look. */
export class Settler {
  /** Whole boxes only: to ask more finely what blocks hide takes longer than to look at what they leave. */
  private readonly blocks = new Blocks(0);

  /**
   * An item's state at an instant. It shows, where a place at which it was seen a little before or after is seen again;
   * it does not, where its boxes lie outside the frame or behind blocks; and the same in the mirrors.
   * `isInside`: it is known to be inside the frame before or after, so that here only matters whether it shows.
   */
  known(item: number, asking: Asking, sightings: readonly Sighting[], isInside: boolean): Known {
    const { stage, camera, grid, eye, images } = asking;
    const witnesses = (way: keyof Sighting): readonly Witness[] =>
      sightings.flatMap((each) => each[way] ?? []);
    const isSeen = (way: keyof Sighting): boolean =>
      witnesses(way).some((witness) => isSeenAgain(witness, asking, grid));
    let state = isInside ? INSIDE : 0;
    let direct: readonly PixelRect[] = [];
    if (isSeen('direct')) state |= SHOWS | INSIDE;
    else if (isInside) direct = this.blocks.open(stage, item, [eye], camera, grid);
    else if (camera.frame.distortion || entersFrame(stage, item, camera))
      direct = partRectsOf(stage, item, camera, grid);
    let mirrored: readonly PixelRect[] = [];
    if (images.length > 0 && isSeen('mirrored')) state |= MIRRORED;
    else if (images.length > 0) mirrored = this.blocks.open(stage, item, images, camera, grid);
    return {
      state,
      direct,
      mirrored,
      isLikelyHidden:
        (direct.length === 0 || witnesses('direct').length === 0) &&
        (mirrored.length === 0 || witnesses('mirrored').length === 0),
    };
  }
}
