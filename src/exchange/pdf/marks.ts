import type { Weight } from './lettering';

/** A place on a sheet: points from its left and from its top. */
export type At = readonly [number, number];
/** [left, top, right, bottom] on a sheet, points. */
export type Box = readonly [number, number, number, number];
/** A grey from 0, ink, to 1, paper. */
export type Grey = number;

/** How a shape is drawn; what is left out is not there. */
export interface Pen {
  readonly line?: Grey;
  /** Points. */
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly fill?: Grey;
}

/** How text is set. */
export interface Setting {
  readonly size?: number;
  readonly weight?: Weight;
  readonly grey?: Grey;
  readonly align?: 'left' | 'right' | 'middle';
}
