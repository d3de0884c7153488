import * as v from 'valibot';

/** Values in a row, as what was expected: `A, B or C`. */
export const anyOf = (values: readonly (string | number)[]): string =>
  `${values.slice(0, -1).join(', ')} or ${values.at(-1)}`;

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

/** A setup in which an item may be seen against its wish, and why it may. */
const shown = v.strictObject({
  setup: id,
  reason: v.pipe(
    v.string('a reason'),
    v.minLength(1, 'a reason of at least one character'),
    v.maxLength(200, 'a reason of at most 200 characters'),
  ),
});
export type Shown = v.InferOutput<typeof shown>;

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
  /** Findings that were accepted: the report still has them, with the reason. */
  shows: v.optional(v.pipe(v.array(shown), v.maxLength(200, 'at most 200 accepted findings'))),
};

/** What every piece of gear carries. */
export const gearCommon = {
  ...itemCommon,
  /** Under black tape or cloth, all but what glows and the cloths that give on light. */
  blacked: v.optional(v.literal(true, 'true, or left out')),
};
