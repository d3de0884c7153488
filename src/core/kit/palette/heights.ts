import { tidyCoordinate, tidyPoint, tidySpot } from '../../plan/edits/tidy';
import { spotFrom } from '../../plan/runs';
import type { Point, Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { surfaceUnder } from '../../plan/surfaces';
import type { Making } from './entry';

/** How high over the floor light is metered for the face of somebody who stands. Source: common practice, no source */
export const STANDING_FACE_METRES = 1.6;

/** A line that ends this near to a post is tied to it, metres. Source: common practice, no source */
const POST_REACH_METRES = 0.3;
/** So far below the top of the post. Source: common practice, no source */
const BELOW_TOP_METRES = 0.05;

/** The point on whatever one stands on at a place, and so much above it. */
export function onSurface(plan: Plan, [x, z]: Spot, aboveMetres = 0): Point {
  return tidyPoint([x, surfaceUnder(plan, [x, z]).metres + aboveMetres, z]);
}

/** Height of the first corner under which there is something to stand on, metres; 0 where there is nothing. */
export function baseOf(plan: Plan, spots: readonly Spot[]): number {
  const found = spots.map((spot) => surfaceUnder(plan, spot)).find(({ id }) => id !== null);
  return tidyCoordinate(found?.metres ?? 0);
}

/** Where the end of a line is tied: near the top of a post that stands there, else so far above the surface. */
export function tiedAt(plan: Plan, spot: Spot, aboveMetres: number): Point {
  const post = plan.pieces.find(
    (piece) =>
      piece.kind === 'post' &&
      Math.abs(piece.at[0] - spot[0]) <= POST_REACH_METRES &&
      Math.abs(piece.at[2] - spot[1]) <= POST_REACH_METRES,
  );
  if (post?.kind !== 'post') return onSurface(plan, spot, aboveMetres);
  const metres = post.at[1] + post.heightMetres - Math.min(BELOW_TOP_METRES, post.heightMetres);
  return tidyPoint([post.at[0], metres, post.at[2]]);
}

/** Length of what was put with one place alone, metres. Source: common practice, no source */
const END_METRES = 3;

/** The two ends of what is put by its ends; one place alone gets the other end along the heading. */
export function endsOf({ spots, headingDegrees }: Making): readonly [Spot, Spot] {
  const from = spots[0];
  return [from, spots[1] ?? tidySpot(spotFrom(from, headingDegrees, END_METRES))];
}
