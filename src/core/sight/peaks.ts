import type { Look } from './look';

/** Less than this more of the frame is not worth a closer look for: at the least, and at the most. */
const LEAST_GAIN = 0.0001;
const MOST_GAIN = 0.0004;
/** And in between, this share of what is known already. */
const GAIN_SHARE = 0.02;
/** Of what is covered only who covers it is told, at about its most. */
const COVERED_GAIN = 0.001;

/** Where in a list of shares what stands: all that shows, all that mirrors show, what is covered, the outline. */
const [SHOWN, IN_MIRRORS, COVERED, OUTLINE, FIRST_PART] = [0, 1, 2, 3, 4];

/**
 * What one item takes up at the frames that were looked at in full, as shares of the frame: what shows of it, what
 * mirrors show, what is covered, its outline were nothing before it; then what shows of each of its parts, and what
 * mirrors show of each. Null where there is nothing of it.
 */
export type Course = (Float64Array | null)[];

/** One item's shares in a look; null where there is nothing of it. */
export function sharesIn({ direct, mirrored, alone, grid, stage }: Look, item: number): Float64Array | null {
  const shows = direct.itemPixels[item];
  const inMirrors = mirrored.itemPixels[item];
  if (shows === 0 && inMirrors === 0 && alone[item] === 0) return null;
  const [from, to] = [stage.firstPart[item], stage.firstPart[item + 1]];
  const shares = new Float64Array(FIRST_PART + 2 * (to - from));
  shares[SHOWN] = shows;
  shares[IN_MIRRORS] = inMirrors;
  shares[COVERED] = Math.max(0, alone[item] - shows);
  shares[OUTLINE] = Math.max(alone[item], shows);
  shares.set(direct.partPixels.subarray(from, to), FIRST_PART);
  shares.set(mirrored.partPixels.subarray(from, to), FIRST_PART + to - from);
  for (let k = 0; k < shares.length; k += 1) shares[k] /= grid.framePixels;
  return shares;
}

const gainFor = (kind: number, peak: number): number =>
  kind === COVERED ? COVERED_GAIN : Math.min(MOST_GAIN, Math.max(LEAST_GAIN, peak * GAIN_SHARE));

/**
 * The intervals of a course, by the number of the frame that each begins with, in which a share may get noticeably
 * larger than at any frame of the course: it changes there, or next to there, so fast that as much again on top of the
 * larger end would be more than is known, and the outline leaves room for it.
 */
export function intervalsWithPeaks(course: Course): readonly number[] {
  const most = new Float64Array(course.reduce((size, shares) => Math.max(size, shares?.length ?? 0), 0));
  for (const shares of course)
    shares?.forEach((value, k) => {
      most[k] = Math.max(most[k], value);
    });
  const found: number[] = [];
  const at = (index: number, k: number): number => course[index]?.[k] ?? 0;
  for (let index = 0; index + 1 < course.length; index += 1) {
    if (!course[index] && !course[index + 1]) continue;
    const outline = Math.max(at(index, OUTLINE), at(index + 1, OUTLINE));
    for (let k = 0; k < most.length; k += 1) {
      if (k === OUTLINE) continue;
      const [from, to] = [at(index, k), at(index + 1, k)];
      const before = index > 0 ? Math.abs(from - at(index - 1, k)) : 0;
      const after = index + 2 < course.length ? Math.abs(at(index + 2, k) - to) : 0;
      const may = Math.max(from, to) + Math.max(before, Math.abs(to - from), after);
      const worthwhile = most[k] + gainFor(k, most[k]);
      const isBound = k === SHOWN && worthwhile > outline;
      if (isBound || may <= worthwhile) continue;
      found.push(index);
      break;
    }
  }
  return found;
}
