import * as v from 'valibot';
import { asset } from './asset';
import { headingDegrees, share, spot, wholeCount, within } from './numbers';
import { id, label } from './texts';

/** A tape measure laid on the roof, to stay there. */
export const tape = v.strictObject({ id, from: spot, to: spot });

/** A photo or a drawing of the roof that lies under the overhead. */
export const underlay = v.strictObject({
  asset,
  /** [width, height]. */
  pixels: v.strictTuple([wholeCount(1, 32768), wholeCount(1, 32768)], '[width, height] in pixels'),
  /** Where the middle of the picture lies. */
  at: spot,
  /** Which way its upper edge faces. */
  headingDegrees,
  metresPerPixel: within(1e-6, 100, 'metres'),
  /** How strongly it shows. */
  strength: share,
});

/** A frame line of somebody's own, over every setup's picture. */
export const frameLine = v.strictObject({
  id,
  label,
  /** In 0..1 of the delivered frame from its left and top edges. */
  rect: v.pipe(
    v.strictTuple([share, share, share, share], '[left, top, right, bottom] in 0..1 of the frame'),
    v.check(
      ([left, top, right, bottom]) => right > left && bottom > top,
      'a rectangle whose right is right of its left and whose bottom is below its top',
    ),
  ),
});

export type FrameLine = v.InferOutput<typeof frameLine>;
export type Tape = v.InferOutput<typeof tape>;
export type Underlay = v.InferOutput<typeof underlay>;
