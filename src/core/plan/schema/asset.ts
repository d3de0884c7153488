import * as v from 'valibot';
import { wholeCount } from './numbers';
import { label } from './texts';

/** The largest file that is kept beside a plan: half a gigabyte. */
export const LARGEST_ASSET_BYTES = 512 * 1024 * 1024;

/** A file that belongs to a plan but does not lie in it, known by its contents. */
export const asset = v.strictObject({
  sha256: v.pipe(
    v.string('the SHA-256 of a file'),
    v.regex(/^[0-9a-f]{64}$/, 'the SHA-256 of a file as 64 hexadecimal digits'),
  ),
  /** What the file was called. */
  name: label,
  bytes: wholeCount(1, LARGEST_ASSET_BYTES),
});

export type Asset = v.InferOutput<typeof asset>;
