import * as v from 'valibot';
import { share, wholeCount, within } from './numbers';

/** What gel, diffusion and scrims may be, lowest and highest. */
export const BEFORE_LIMITS = {
  mired: [-300, 300],
  density: [0, 4],
  spreadDegrees: [0, 120],
  scrims: [0, 4],
} as const;

const gel = {
  /** How far a gel moves the white, in mired (1,000,000 ÷ K): negative is blue, positive is amber. */
  mired: v.optional(within(...BEFORE_LIMITS.mired, 'mired')),
  /** Neutral gel: lets through 10 to the minus density. */
  density: v.optional(within(...BEFORE_LIMITS.density, 'of density')),
};

/** Gel around a lamp of the place. What glows in a tint of its own keeps it; the gel takes its light all the same. */
export const gelled = v.strictObject(gel);

/** A sheet close before the lamp: what it lets through, and the full angle between half peaks of a ray that comes through. */
const diffusion = v.strictObject({
  transmission: share,
  /** An even diffuser has 120, from where a half is the cosine's. */
  spreadDegrees: within(...BEFORE_LIMITS.spreadDegrees, 'degrees'),
});

const scrims = v.optional(wholeCount(...BEFORE_LIMITS.scrims));

/** What is put before a head: gel, diffusion, wire scrims. */
export const before = v.strictObject({
  ...gel,
  diffusion: v.optional(diffusion),
  doubles: scrims,
  singles: scrims,
});

export type Before = v.InferOutput<typeof before>;
export type Diffusion = v.InferOutput<typeof diffusion>;
