/** Spans are exact to this: one frame at 24 frames per second. */
export const FRAMES_PER_SECOND = 24;

/**
 * The instants of a span at which sight is asked: every 1/24 s from its start, and its end.
 * One instant when the span has no length.
 */
export function instantsOf(from: number, to: number): Float64Array {
  const whole = Math.floor((to - from) * FRAMES_PER_SECOND + 1e-9);
  const last = from + whole / FRAMES_PER_SECOND;
  const hasTail = to - last > 1e-6;
  const instants = new Float64Array(whole + 1 + (hasTail ? 1 : 0));
  for (let k = 0; k <= whole; k += 1) instants[k] = from + k / FRAMES_PER_SECOND;
  if (hasTail) instants[whole + 1] = to;
  return instants;
}

/** Runs of set flags as [first, last] frame numbers. */
export function runsOf(flags: Uint8Array): [number, number][] {
  const runs: [number, number][] = [];
  for (let k = 0; k < flags.length; k += 1) {
    if (!flags[k]) continue;
    const from = k;
    while (k + 1 < flags.length && flags[k + 1]) k += 1;
    runs.push([from, k]);
  }
  return runs;
}
