import * as v from 'valibot';

/** An id: short, unique within the plan, stable; letters, digits and hyphens. */
export const id = v.pipe(
  v.string('an id'),
  v.regex(
    /^[A-Za-z0-9](?:[A-Za-z0-9-]{0,38}[A-Za-z0-9])?$/,
    'an id of 1 to 40 letters, digits and hyphens, with no hyphen at its ends',
  ),
);

/** What a person calls a thing: one line. */
export const label = v.pipe(
  v.string('a name'),
  v.minLength(1, 'a name of at least one character'),
  v.maxLength(80, 'a name of at most 80 characters'),
);

/** Notes and the like: lines as they come. */
export const longText = v.pipe(v.string('a text'), v.maxLength(20000, 'a text of at most 20,000 characters'));

/** A colour as `#rrggbb`. */
export const colour = v.pipe(v.string('a colour'), v.regex(/^#[0-9a-f]{6}$/, 'a colour such as #8a5200'));

/** What an item should do in frame. Where a plan leaves it out, gear keeps out and the rest may do either. */
export const wish = v.picklist(['keep out', 'either', 'must show'], 'keep out, either or must show');
export type Wish = v.InferOutput<typeof wish>;

/** What every item carries beside the fields of its kind. */
export const itemCommon = {
  id,
  label,
  wish: v.optional(wish),
  /** Items with the same word here are chosen and moved together. */
  group: v.optional(id),
  /** A locked item stays where it is under a hand. */
  locked: v.optional(v.boolean('true or false')),
  /** Left out of the roof's drawings while somebody works on what lies under it; the frame and the report still have it. */
  hidden: v.optional(v.boolean('true or false')),
};
