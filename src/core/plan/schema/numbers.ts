import * as v from 'valibot';

/**
 * A finite number within [lowest, highest]; the unit is part of the message, so that a person can act on it.
 * JSON's `1e999` parses to Infinity, which plain number schemas accept: hence the explicit finite check.
 */
export const within = (lowest: number, highest: number, unit: string) =>
  v.pipe(
    v.number(`a number${unit ? ` of ${unit}` : ''}`),
    v.finite('a finite number'),
    v.minValue(lowest, `${lowest} to ${highest}${unit ? ` ${unit}` : ''}`),
    v.maxValue(highest, `${lowest} to ${highest}${unit ? ` ${unit}` : ''}`),
    // JSON writes −0 as 0: without this a plan would not come back as it went.
    v.transform((value) => value + 0),
  );

/** How far from the middle of the roof anything may lie, in metres: a skyline fits, a slip of the keyboard does not. */
export const FARTHEST_METRES = 5000;

/** Metres from the middle of the roof, or above its deck. */
export const coordinate = within(-FARTHEST_METRES, FARTHEST_METRES, 'metres');
/** How large anything on a roof may be, metres. */
export const LARGEST_METRES = 500;
/** A size that something has: more than nothing, at most 500 m. */
export const sizeMetres = within(0.001, LARGEST_METRES, 'metres');
/** A size that may be nothing. */
export const lengthMetres = within(0, LARGEST_METRES, 'metres');
/** A compass heading, clockwise from −z seen from above. */
export const headingDegrees = within(-360, 360, 'degrees');
/** Up-positive. */
export const tiltDegrees = within(-90, 90, 'degrees');
/** 0 for nothing, 1 for all. */
export const share = within(0, 1, '');
/** A whole number between two, both included. */
export const wholeCount = (lowest: number, highest: number) =>
  v.pipe(within(lowest, highest, ''), v.integer('a whole number'));

/** A point in the world: [x to the right, y up, z towards the reader], metres. */
export const point = v.strictTuple([coordinate, coordinate, coordinate], 'a point [x, y, z] in metres');
/** A place on the deck as drawn: [x, z], metres. */
export const spot = v.strictTuple([coordinate, coordinate], 'a place [x, z] in metres');
/** [width, height, depth], metres. */
export const boxSize = v.strictTuple(
  [sizeMetres, sizeMetres, sizeMetres],
  '[width, height, depth] in metres',
);
/** [width, height], metres. */
export const clothSize = v.strictTuple([sizeMetres, sizeMetres], '[width, height] in metres');

export type Point = v.InferOutput<typeof point>;
export type Spot = v.InferOutput<typeof spot>;
