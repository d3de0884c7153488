/** The largest number that a ratio is written with. */
const LARGEST = 10000;
/** A ratio as near as this is the same. */
const SAME = 1e-9;

/**
 * A ratio of whole numbers for a number above 0: the first of its continued fraction's that is as good as equal, else
 * the nearest of them with numbers up to 10,000. So 1.85 is 37 to 20, 2.39 is 239 to 100 and 16 ÷ 9 is 16 to 9.
 */
export function wholeRatio(value: number): readonly [width: number, height: number] {
  let [lastWidth, lastHeight, width, height] = [0, 1, 1, 0];
  let rest = value;
  for (;;) {
    const whole = Math.floor(rest);
    const [nextWidth, nextHeight] = [whole * width + lastWidth, whole * height + lastHeight];
    if (nextWidth > LARGEST || nextHeight > LARGEST) break;
    [lastWidth, lastHeight, width, height] = [width, height, nextWidth, nextHeight];
    if (width > 0 && Math.abs(width / height - value) < SAME * value) break;
    if (rest === whole) break;
    rest = 1 / (rest - whole);
  }
  // Beyond what such numbers can say, the nearest that they can.
  if (width === 0) return [1, LARGEST];
  return height === 0 ? [LARGEST, 1] : [width, height];
}
