import type { Filter } from '../plan/schema/setup';
import { pow } from '../units/steadyMath';

/** One part of a kernel that light is spread by: a Gaussian, as wide as this share of the delivered frame's height. */
export interface Spread {
  /** Standard deviation over the height of the frame. */
  readonly sigma: number;
  /** Share of the spread light; those of a kernel add up to 1. */
  readonly weight: number;
}

/** Shares of the light, red, green and blue. */
export type Shares = readonly [number, number, number];

/** Share of the light that any lens scatters over its picture; common practice, no source. */
export const LENS_GLOW = 0.03;
export const LENS_SPREAD: readonly Spread[] = [
  { sigma: 0.015, weight: 0.5 },
  { sigma: 0.03, weight: 0.3 },
  { sigma: 0.12, weight: 0.2 },
];

/** What a mist of strength 1 takes out of the straight light; each more takes as much of what is left. */
const MIST_SHARE = 0.2;
/**
 * The mist's kernel: five octaves, each spreading 0.75 of the one before it over twice the width, so that its density
 * falls about as 1/r^2.4. Our own choice for want of measured ones; no source.
 */
export const MIST_SPREAD: readonly Spread[] = [
  { sigma: 0.012, weight: 0.3278 },
  { sigma: 0.024, weight: 0.2458 },
  { sigma: 0.048, weight: 0.1844 },
  { sigma: 0.096, weight: 0.1383 },
  { sigma: 0.192, weight: 0.1037 },
];

/** Share of the light that a mist filter scatters: 1 − 0.8^strength, so two of strength 1 do as much as one of 2. */
export const mistShare = (strength: number): number => 1 - pow(1 - MIST_SHARE, strength);

/** What of each colour comes back from the base at strength 1: red goes deepest, blue hardly gets there; no source. */
const HALATION_SHARES: Shares = [0.09, 0.02, 0.004];
/** Share of each colour that goes through the film, comes back from its base and exposes it anew around where it fell. */
export const halationShares = (strength: number): Shares => {
  const [red, green, blue] = HALATION_SHARES.map((share) => 1 - pow(1 - share, strength));
  return [red, green, blue];
};

/** Thickness of a film's base, millimetres, and its refractive index. */
const BASE_MM = 0.13;
const BASE_INDEX = 1.48;
/**
 * Where on the film the ring lies around the highlight, millimetres: light is thrown back whole from the far side of
 * the base from the critical angle on, sin θ = 1/n, and gets 2 t tan θ away.
 *
 * Source: [film-base]
 */
export const HALATION_RADIUS_MM = (2 * BASE_MM) / Math.sqrt(BASE_INDEX * BASE_INDEX - 1);

/** Share of a light that the front of a squeezed lens draws out into a level streak; no source. */
const STREAK_SHARE = 0.0004;
/** Where the streak has fallen to a quarter, over the frame's width; and its thickness (σ) over the frame's height. */
export const STREAK_FALL = 0.02;
export const STREAK_THICKNESS = 0.0016;
/** A streak is drawn as far as it is brighter than this share of middle grey. */
export const STREAK_FLOOR = 0.1;
const ROOT_OF_TURN = 2.5066282746310002;

/**
 * Luminance of a streak at its light, cd/m²: the share of the light, `lux` at the lens, over the streak's area in the
 * picture. Its luminance falls as 1/(1 + x/w)² to either side, w being {@link STREAK_FALL} of the frame's width, so that
 * its area is 2w times its height; all as tangents. An approximation of a squeezed front's flare, none for others.
 */
export function streakPeak(
  lux: number,
  frame: { readonly tanHalfWidth: number; readonly tanHalfHeight: number },
): number {
  const fall = STREAK_FALL * 2 * frame.tanHalfWidth;
  const height = ROOT_OF_TURN * STREAK_THICKNESS * 2 * frame.tanHalfHeight;
  return (STREAK_SHARE * lux) / (2 * fall * height);
}

/** How far a streak is seen to either side, in widths of the frame; 0 where it never gets above the floor. */
export function streakReach(peak: number, greyLuminance: number): number {
  const floor = STREAK_FLOOR * greyLuminance;
  return peak <= floor ? 0 : STREAK_FALL * (Math.sqrt(peak / floor) - 1);
}

/** What a filter does to the light: what stays where it fell, what a mist spreads, what a film's base sends around. */
export interface FilterShares {
  readonly mist: number;
  readonly halation: Shares;
}

export function filterShares(filter: Filter | null | undefined): FilterShares {
  const none = { mist: 0, halation: [0, 0, 0] as const };
  if (!filter || filter.strength === 0) return none;
  return filter.kind === 'mist'
    ? { ...none, mist: mistShare(filter.strength) }
    : { ...none, halation: halationShares(filter.strength) };
}
