import type { At, Box, Pen, Setting } from '../marks';

/** What the roof is drawn with: a page of paper, or a picture in a file for a screen. */
export interface Drawing {
  /** A shape through points, closed where it is filled or said to be. */
  shape(points: readonly At[], pen: Pen, closed?: boolean): void;
  /** Draws with nothing to be seen outside of a box. */
  within(box: Box, draw: () => void): void;
  /** One line of text whose top is at a place. */
  line(text: string, at: At, setting?: Setting): void;
  widthOf(text: string, setting?: Setting): number;
  /** Height of a line of text. */
  leading(setting?: Setting): number;
}
