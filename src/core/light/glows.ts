import type { Glow } from '../plan/schema/sky';
import { pow } from '../units/steadyMath';

/** Linear Rec. 709 red, green, blue. */
export type Colour = readonly [number, number, number];

/** Luminance of a linear colour: the middle row of the Rec. 709 matrix to XYZ, from memory. */
export const luminanceOf = ([red, green, blue]: Colour): number =>
  0.2126 * red + 0.7152 * green + 0.0722 * blue;

/** The night all round, by colour: cd/m² of what is seen, lux of what arrives. */
export interface Night {
  readonly zenith: Colour;
  readonly horizon: Colour;
  readonly ground: Colour;
  /** On level ground from the sky, and on the underside of things from the streets. */
  readonly above: Colour;
  readonly below: Colour;
}

export const times = (colour: Colour, by: number): Colour => [colour[0] * by, colour[1] * by, colour[2] * by];
export const plus = (a: Colour, b: Colour): Colour => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

/**
 * The night over a town: low cloud lit from below, brightest near the horizon, and what the streets send up. Estimates
 * of the size that is common over large towns under cloud. Source: common practice, no source.
 */
const CLOUD: Night = {
  zenith: [0.055, 0.06, 0.105],
  horizon: [0.55, 0.42, 0.42],
  ground: [0.1, 0.075, 0.055],
  above: [0.55, 0.6, 0.85],
  below: [0.7, 0.5, 0.32],
};

/** How many times as bright as a clear one an overcast sky over a town is. Source: [cloud-amplifies] */
const CLOUD_OVER_CLEAR = 10.1;

/** Luminance of a sky of so many magnitudes to the square second of arc, cd/m². Source: [sky-units] */
export const luminanceOfMagnitudes = (magnitudes: number): number => 108000 * pow(10, -0.4 * magnitudes);

/** The glow of the sky so many times as strong, and the streets. */
const weaker = (sky: number, streets: number): Night => ({
  zenith: times(CLOUD.zenith, sky),
  horizon: times(CLOUD.horizon, sky),
  ground: times(CLOUD.ground, streets),
  above: times(CLOUD.above, sky),
  below: times(CLOUD.below, streets),
});

/** A sky of so many magnitudes overhead, as a share of the cloud's. */
const asDarkAs = (magnitudes: number): number =>
  luminanceOfMagnitudes(magnitudes) / luminanceOf(CLOUD.zenith);

/** A small town's streets against a large one's, and what a field gives back. Source: common practice, no source. */
const SMALL_STREETS = 0.25;
const FIELD = 0.01;

/**
 * What each glow is. Clear over a large town the sky has a tenth of what it has under cloud, its streets the same; over
 * a small town it has 20 magnitudes to the square second of arc overhead, from memory; in the country 21.5, as it was
 * metered there.
 *
 * Source: [cloud-amplifies], [sky-units], [country-sky]
 */
export const NIGHTS: Readonly<Record<Glow, Night>> = {
  'cloud over a large town': CLOUD,
  'clear over a large town': weaker(1 / CLOUD_OVER_CLEAR, 1),
  'clear over a small town': weaker(asDarkAs(20), SMALL_STREETS),
  'clear in the country': weaker(asDarkAs(21.5), FIELD),
};
