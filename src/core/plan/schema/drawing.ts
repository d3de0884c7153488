import * as v from 'valibot';
import { asset } from './asset';
import { headingDegrees, share, spot, wholeCount, within } from './numbers';
import { id } from './texts';

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

export type Tape = v.InferOutput<typeof tape>;
export type Underlay = v.InferOutput<typeof underlay>;
