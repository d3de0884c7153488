import type { At, Box } from '../marks';
import { POINTS_PER_METRE } from '../paper';

/** [left, top, right, bottom] on the roof, [x, z] in metres. */
export type Ground = readonly [number, number, number, number];

/** One to how many: those of a scale rule, and their tens. Common practice, no source. */
const SCALES = [
  20, 25, 50, 75, 100, 125, 200, 250, 300, 400, 500, 1000, 1250, 2000, 2500, 5000, 10_000, 20_000, 50_000,
] as const;

/** The roof on paper: 1 to `oneTo`, the ground in the middle of a box. */
export interface SheetScale {
  readonly oneTo: number;
  readonly pointsPerMetre: number;
  readonly box: Box;
  /** Where a place of the roof comes to lie. */
  readonly at: (spot: readonly [number, number]) => At;
}

/** The largest scale of a rule at which the ground fits into so much room, points. */
export function scaleFor([left, top, right, bottom]: Ground, width: number, height: number): number {
  const fits = SCALES.find((oneTo) => {
    const points = POINTS_PER_METRE / oneTo;
    return (right - left) * points <= width && (bottom - top) * points <= height;
  });
  return fits ?? SCALES[SCALES.length - 1];
}

/** The ground in the middle of a box at the largest scale that fits. */
export function onSheet(ground: Ground, box: Box): SheetScale {
  const oneTo = scaleFor(ground, box[2] - box[0], box[3] - box[1]);
  const pointsPerMetre = POINTS_PER_METRE / oneTo;
  const middle: At = [(box[0] + box[2]) / 2, (box[1] + box[3]) / 2];
  const [x, z] = [(ground[0] + ground[2]) / 2, (ground[1] + ground[3]) / 2];
  return {
    oneTo,
    pointsPerMetre,
    box,
    at: (spot) => [middle[0] + (spot[0] - x) * pointsPerMetre, middle[1] + (spot[1] - z) * pointsPerMetre],
  };
}
