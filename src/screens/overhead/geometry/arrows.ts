import type { Spot } from './spots';

/** Which way an arrow key moves what is on the sheet: right and down. */
export const ARROWS: Readonly<Record<string, Spot>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
