import { FARTHEST_METRES, type Point, type Spot } from '../schema/numbers';

const PER_METRE = 1e6;
const PER_DEGREE = 1e6;

/** Rounds to a micrometre, so that sums leave no binary noise in the file. */
export const tidyMetres = (metres: number): number => Math.round(metres * PER_METRE) / PER_METRE + 0;

/** A heading in 0 ≤ h < 360, rounded to a millionth of a degree. */
export function tidyHeading(degrees: number): number {
  const turned = Math.round((((degrees % 360) + 360) % 360) * PER_DEGREE) / PER_DEGREE;
  return turned === 360 ? 0 : turned + 0;
}

/** The nearest value within two bounds. */
export const kept = (value: number, lowest: number, highest: number): number =>
  Math.min(Math.max(value, lowest), highest);

/** A coordinate rounded to a micrometre and held within what a plan may have: 5 km from the middle of the roof. */
export const tidyCoordinate = (metres: number): number =>
  tidyMetres(kept(metres, -FARTHEST_METRES, FARTHEST_METRES));

/** A place with both coordinates tidied. */
export const tidySpot = ([x, z]: Spot | readonly [number, number]): Spot => [
  tidyCoordinate(x),
  tidyCoordinate(z),
];

/** A point with all three coordinates tidied. */
export const tidyPoint = ([x, y, z]: Point | readonly [number, number, number]): Point => [
  tidyCoordinate(x),
  tidyCoordinate(y),
  tidyCoordinate(z),
];

/** Whether two places are the same one. */
export const sameSpot = (a: Spot, b: Spot): boolean => a[0] === b[0] && a[1] === b[1];
