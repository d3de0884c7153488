import type { Beat } from '../../core/plan/schema/cast';

/** A frame at 24 a second: what one press of a key steps. */
export const FRAME_SECONDS = 1 / 24;
/** A whole second catches from nearer than this, however small the scale. */
const FARTHEST_FROM_SECOND = 0.45;

/** What a moment under a hand has caught on. */
export type Caught = { readonly on: 'beat'; readonly beatId: string } | { readonly on: 'second' };

/** A moment as a plan keeps it, seconds. */
export const tidySeconds = (seconds: number): number => Math.round(seconds * 1e4) / 1e4 + 0;

/** The nearest frame of the clock, seconds. */
export const toFrame = (seconds: number): number =>
  tidySeconds(Math.round(seconds / FRAME_SECONDS) * FRAME_SECONDS);

/** The beat that lies nearest to a moment; null without any. Of two as near, the earlier. */
export function nearestBeat(beats: readonly Beat[], seconds: number): Beat | null {
  let found: Beat | null = null;
  for (const beat of beats) {
    const isNearer = !found || Math.abs(beat.atSeconds - seconds) < Math.abs(found.atSeconds - seconds);
    if (isNearer) found = beat;
  }
  return found;
}

/**
 * Where a moment under a hand comes to: on a beat or a whole second within reach, the beat first, else on a frame.
 * @param reachSeconds how near catches; less than 0 for nowhere
 */
export function snapTime(
  seconds: number,
  beats: readonly Beat[],
  reachSeconds: number,
): { readonly seconds: number; readonly caught: Caught | null } {
  const beat = nearestBeat(beats, seconds);
  if (beat && Math.abs(beat.atSeconds - seconds) <= reachSeconds)
    return { seconds: beat.atSeconds, caught: { on: 'beat', beatId: beat.id } };
  const whole = Math.round(seconds);
  if (Math.abs(whole - seconds) <= Math.min(reachSeconds, FARTHEST_FROM_SECOND))
    return { seconds: whole, caught: { on: 'second' } };
  return { seconds: toFrame(seconds), caught: null };
}
