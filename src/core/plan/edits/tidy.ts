const PER_METRE = 1e6;
const PER_DEGREE = 1e6;

/** Rounds to a micrometre, so that sums leave no binary noise in the file. */
export const tidyMetres = (metres: number): number => Math.round(metres * PER_METRE) / PER_METRE + 0;

/** A heading in 0 ≤ h < 360, rounded to a millionth of a degree. */
export function tidyHeading(degrees: number): number {
  const turned = Math.round((((degrees % 360) + 360) % 360) * PER_DEGREE) / PER_DEGREE;
  return turned === 360 ? 0 : turned;
}
