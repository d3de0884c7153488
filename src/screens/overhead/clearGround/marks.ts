import { GROUND_STATES, type GroundSquares, type GroundState } from '../../../core/clearance/ground/types';
import { USEFUL_STATES, type UsefulGround } from '../../../core/clearance/useful/types';

/** Marks nearer to one another than this are a tint and no marks any more, CSS pixels. */
const LEAST_PIXELS = 6.4;
/** Half of a mark's size, CSS pixels. */
const HALF_PIXELS = 1.9;

const figure = (metres: number): string => metres.toFixed(3);

/** How many squares to each side share one mark. */
export const sharing = (stepMetres: number, perMetre: number): number =>
  Math.max(1, Math.ceil(LEAST_PIXELS / (stepMetres * perMetre) - 1e-9));

/** The signs by state, each a shape of its own; what shows has none. */
const SIGNS: Readonly<Partial<Record<GroundState, (x: number, z: number, half: number) => string>>> = {
  clear: (x, z) => `M${figure(x)} ${figure(z)}h0`,
  close: (x, z, half) => `M${figure(x)} ${figure(z - half)}v${figure(2 * half)}`,
  covered: (x, z, half) =>
    `M${figure(x - half)} ${figure(z - half)}h${figure(2 * half)}v${figure(2 * half)}h${figure(-2 * half)}z`,
  mirrored: (x, z, half) =>
    `M${figure(x - half)} ${figure(z - half / 2)}h${figure(2 * half)}M${figure(x - half)} ${figure(z + half / 2)}h${figure(2 * half)}`,
};

/** The states that have a sign, in the order of the legend. */
export const SIGNED = ['clear', 'close', 'covered', 'mirrored'] as const satisfies readonly GroundState[];
export type Signed = (typeof SIGNED)[number];

/**
 * All signs of each state as one path, in metres. Squares that would lie too near to one another on the sheet share a
 * sign, that of the worst of them; any of them beside the decks does not count.
 */
export function signPaths(
  { columns, rows, corner, stepMetres }: GroundSquares,
  states: ArrayLike<number>,
  perMetre: number,
): Readonly<Record<Signed, string>> {
  const paths: Record<Signed, string> = { clear: '', close: '', covered: '', mirrored: '' };
  const each = sharing(stepMetres, perMetre);
  const half = HALF_PIXELS / perMetre;
  for (let top = 0; top < rows; top += each) {
    for (let left = 0; left < columns; left += each) {
      const [down, across] = [Math.min(each, rows - top), Math.min(each, columns - left)];
      let worst = 0;
      for (let row = top; row < top + down; row += 1)
        for (let column = left; column < left + across; column += 1)
          worst = Math.max(worst, states[row * columns + column]);
      const state = GROUND_STATES[worst];
      if (state === 'no deck' || state === 'showing') continue;
      const x = corner[0] + (left + across / 2) * stepMetres;
      const z = corner[1] + (top + down / 2) * stepMetres;
      paths[state] += SIGNS[state]?.(x, z, half) ?? '';
    }
  }
  return paths;
}

const USEFUL = USEFUL_STATES.indexOf('useful');

/** Points of useful ground lie about so far apart, CSS pixels: denser than those of clear ground. */
const DENSE_PIXELS = 3.4;

/** The edge of useful ground, and the points within it, in metres. */
export function usefulPaths(
  { columns, rows, corner, stepMetres, states }: UsefulGround,
  perMetre: number,
): { readonly edge: string; readonly points: string } {
  const isUseful = (row: number, column: number): boolean =>
    row >= 0 && row < rows && column >= 0 && column < columns && states[row * columns + column] === USEFUL;
  const across = Math.max(1, Math.round((stepMetres * perMetre) / DENSE_PIXELS));
  const places = Array.from({ length: across }, (_, k) => (k + 0.5) / across);
  let [edge, points] = ['', ''];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      if (!isUseful(row, column)) continue;
      const [x, z] = [corner[0] + column * stepMetres, corner[1] + row * stepMetres];
      const [right, bottom] = [x + stepMetres, z + stepMetres];
      if (!isUseful(row - 1, column)) edge += `M${figure(x)} ${figure(z)}H${figure(right)}`;
      if (!isUseful(row + 1, column)) edge += `M${figure(x)} ${figure(bottom)}H${figure(right)}`;
      if (!isUseful(row, column - 1)) edge += `M${figure(x)} ${figure(z)}V${figure(bottom)}`;
      if (!isUseful(row, column + 1)) edge += `M${figure(right)} ${figure(z)}V${figure(bottom)}`;
      for (const down of places)
        for (const along of places)
          points += `M${figure(x + along * stepMetres)} ${figure(z + down * stepMetres)}h0`;
    }
  }
  return { edge, points };
}
