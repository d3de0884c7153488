/** 0 to 1 with an even start and stop; 0 and 1 beyond the ends. */
export const smooth = (share: number): number => {
  const inside = Math.min(1, Math.max(0, share));
  return inside * inside * (3 - 2 * inside);
};

/** The short way round from one heading to another, −180 to 180 degrees. */
export const turnBetween = (from: number, to: number): number =>
  ((((to - from + 180) % 360) + 360) % 360) - 180;

/** Frames at which a heading that follows somebody is worked out. */
const FRAMES_PER_SECOND = 24;
/** Nobody turns faster to follow somebody or something; common practice, no source. */
export const FASTEST_TURN_DEGREES_PER_SECOND = 360;

/** A heading over time, degrees; `steady` where it is the same at every instant. */
export interface HeadingLine {
  readonly at: (seconds: number) => number;
  readonly steady: boolean;
}

/** A heading that never changes. */
export const steadyHeading = (headingDegrees: number): HeadingLine => ({
  at: () => headingDegrees,
  steady: true,
});

/**
 * A heading that follows `wanted` between two instants and stays as at the nearer of them beyond. Where `wanted` turns
 * faster than anybody does, as when somebody comes past within a hand's breadth, the heading falls behind and catches
 * up. What is wanted at `fromSeconds` is there at once. Judged from frame to frame, counted from `fromSeconds`.
 */
export function followed(
  wanted: (seconds: number) => number,
  fromSeconds: number,
  untilSeconds: number,
): HeadingLine {
  const inside = (seconds: number) => Math.min(untilSeconds, Math.max(fromSeconds, seconds));
  const frames = Math.ceil((untilSeconds - fromSeconds) * FRAMES_PER_SECOND);
  const most = FASTEST_TURN_DEGREES_PER_SECOND / FRAMES_PER_SECOND;
  const headings = new Float64Array(frames + 1);
  headings[0] = wanted(fromSeconds);
  let isHurried = false;
  for (let k = 1; k <= frames; k += 1) {
    const turn = turnBetween(headings[k - 1], wanted(inside(fromSeconds + k / FRAMES_PER_SECOND)));
    if (Math.abs(turn) > most) isHurried = true;
    headings[k] = headings[k - 1] + Math.min(most, Math.max(-most, turn));
  }
  if (!isHurried) return { at: (seconds) => wanted(inside(seconds)), steady: false };
  const at = (seconds: number): number => {
    const frame = (inside(seconds) - fromSeconds) * FRAMES_PER_SECOND;
    const before = Math.min(frames, Math.floor(frame));
    const after = Math.min(frames, before + 1);
    return headings[before] + (headings[after] - headings[before]) * (frame - before);
  };
  return { at, steady: false };
}
