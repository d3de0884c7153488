import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import type { PictureShows } from '../../desk/pictureShows';
import { drawnWith } from './drawnWith';
import type { Quality } from './quality';
import type { ThumbSize } from './thumbs';

/** What thumbnails are drawn from at one moment. */
interface ThumbMoment {
  readonly plan: Plan;
  readonly quality: Quality;
  readonly shows: PictureShows;
  /** The number of the frame while a move plays; null at rest. */
  readonly turn: number | null;
}

interface Thumb {
  readonly setup: Setup;
  /** Within the span that the setup covers. */
  readonly seconds: number;
  /** What it is printed on; by identity. */
  readonly canvas: object;
  readonly size: ThumbSize;
}

/**
 * All that a setup's thumbnail depends on: as long as none of it differs, it is not printed again. One that was printed
 * while a move played, with shadows that take turns, or less well since frames came late, differs from the same at rest.
 */
export const thumbInputs = (
  moment: ThumbMoment,
  { setup, seconds, canvas, size }: Thumb,
): readonly unknown[] => [
  moment.plan,
  seconds,
  setup,
  moment.quality,
  moment.shows,
  moment.turn === null,
  canvas,
  size.width,
  size.height,
  ...drawnWith(),
];
