import * as v from 'valibot';
import { headingDegrees, point, tiltDegrees, within } from './numbers';
import { anyOf, id, label } from './texts';

/** A time by the clock of the place; before noon it is the morning after the plan's date. */
export const clockTime = v.pipe(
  v.string('a time by the clock'),
  v.regex(/^(?:[01][0-9]|2[0-3]):[0-5][0-9]$/, 'a time by the clock such as 22:30'),
);
/** Hours that a clock is ahead of universal time, daylight saving included. */
export const utcOffsetHours = within(-14, 14, 'hours');

/** What glows over the roof. Where a plan has no sky of its own, it is cloud over a large town. */
export const GLOWS = [
  'cloud over a large town',
  'clear over a large town',
  'clear over a small town',
  'clear in the country',
] as const;

/** What the sky over the night's action gives. */
export const sky = v.strictObject({
  glow: v.picklist(GLOWS, anyOf(GLOWS)),
  /** When the action is lit. */
  clock: v.optional(
    v.strictObject({
      time: clockTime,
      utcOffsetHours,
    }),
  ),
  /** Whether the moon shines on the action, where that clock has it up; without it, it is behind cloud or a building. */
  moon: v.optional(v.boolean('true or false')),
});

/** A place where light is metered. */
export const probe = v.strictObject({
  id,
  label,
  at: point,
  /** What the cell faces: the strongest light there, straight up, or [heading, tilt] in degrees. */
  normal: v.union(
    [v.picklist(['key', 'up']), v.strictTuple([headingDegrees, tiltDegrees], '[heading, tilt] in degrees')],
    'key, up or [heading, tilt] in degrees',
  ),
});

export type Sky = v.InferOutput<typeof sky>;
export type Glow = Sky['glow'];
export type ProbeRecord = v.InferOutput<typeof probe>;
