import { legsOf, mitresOf, tidyPath } from '../../../core/form/pieces/making/path';
import type { Spot } from './spots';

/** A run with a thickness: its two long sides, in the order of the path. */
export interface Band {
  readonly left: readonly Spot[];
  readonly right: readonly Spot[];
  readonly closed: boolean;
}

const copied = (path: readonly Spot[]): [number, number][] => path.map(([x, z]) => [x, z]);

/** The sides of a run along the middle line `path`, mitred as the form of the run is. */
export function bandOf(path: readonly Spot[], closed: boolean, thickness: number): Band {
  const run = tidyPath(copied(path), closed);
  const mitres = mitresOf(run.corners, run.closed);
  const side = (by: number): Spot[] =>
    mitres.map(({ at, right }) => [at[0] + right[0] * by, at[1] + right[1] * by]);
  return { left: side(-thickness / 2), right: side(thickness / 2), closed: run.closed };
}

/** Segments of a run, the closing one included. */
export function segmentsOf(
  path: readonly Spot[],
  closed: boolean,
): readonly { readonly from: Spot; readonly to: Spot }[] {
  const run = tidyPath(copied(path), closed);
  return legsOf(run.corners, run.closed);
}
