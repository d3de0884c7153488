import type { Setup } from '../../core/plan/schema/setup';
import { drawnWith } from './drawnWith';
import type { Moment } from './stageDriver';
import type { ThumbSize } from './thumbs';

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
export const thumbInputs = (moment: Moment, { setup, seconds, canvas, size }: Thumb): readonly unknown[] => [
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
