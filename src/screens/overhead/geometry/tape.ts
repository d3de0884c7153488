import { type Spot, standing } from './spots';

/** Tape of two inches laid in a T of a foot either way: common practice, no source. Metres. */
const TAPE = 0.05;
const ARM = 0.3;
/** The bar lies under the toes: so far ahead of the middle between the feet, to its own middle. */
const TOES = 0.13;

/** A taped T around the place between the feet of who stands on it and faces up the sheet: the bar under the toes, the stem towards the heels. */
export const TAPE_OUTLINE: readonly Spot[] = ((): Spot[] => {
  const [half, tape] = [ARM / 2, TAPE / 2];
  const [front, back, end] = [-TOES - tape, -TOES + tape, -TOES - tape + ARM];
  return [
    [-half, front],
    [half, front],
    [half, back],
    [tape, back],
    [tape, end],
    [-tape, end],
    [-tape, back],
    [-half, back],
  ];
})();

/** The same where a mark lies, turned to its heading. */
export const tapeAt = (at: Spot, headingDegrees: number): readonly Spot[] =>
  TAPE_OUTLINE.map((spot) => standing(at, headingDegrees, spot));
