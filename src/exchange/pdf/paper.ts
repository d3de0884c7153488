import { METRES_PER_INCH } from '../../core/units/lengths';

/** The papers that a pack can be printed on, upright, by name. */
export type PaperName = 'a4' | 'letter';

/** Points in an inch, as PDF counts. Source: [pdf] */
const POINTS_PER_INCH = 72;

/** Points in a metre of paper. */
export const POINTS_PER_METRE = POINTS_PER_INCH / METRES_PER_INCH;

/** Width and height of an upright sheet, points: 210 mm by 297 mm and 8.5 in by 11 in. Source: [paper-sizes] */
export const PAPERS: Readonly<Record<PaperName, readonly [number, number]>> = {
  a4: [0.21 * POINTS_PER_METRE, 0.297 * POINTS_PER_METRE],
  letter: [8.5 * POINTS_PER_INCH, 11 * POINTS_PER_INCH],
};
